import * as fc from "fast-check"
import { describe, expect, it } from "vitest"
import { addDays, dayNumber } from "../../engine/calendar.js"
import type { Course } from "../../engine/course.js"
import { dataDictionary } from "./data-dictionary.js"
import { instrumentCode, studyChild } from "./deidentified.js"
import { researchTable } from "./research-table.js"
import { researchZip } from "./research-zip.js"
import { smallCells } from "./small-cells.js"
import { STUDY_COLUMNS } from "./study-columns.js"

const course: Course = {
  lengthwise: 1,
  child: { id: "MIRA-17", born: "2016-05-04", sex: "female", ancestry: "european", myopicParents: 2 },
  visits: [
    {
      date: "2025-01-10",
      right: {
        axialLength: { mm: 24.12, readings: 5, device: "Model 1 SN-0001" },
        refraction: { sphere: -2.25, cylinder: -0.5, axis: 180, cycloplegic: true },
      },
      left: { axialLength: { mm: 24.04 } },
      answers: [{ question: "CD-001", answer: "yes", note: "saw Aunt Bea" }],
    },
    { date: "2025-07-10", right: { axialLength: { mm: 24.2 } }, from: "Practice at the Mill" },
  ],
  treatments: [{ from: "2025-01-10", kind: "atropine", concentrationPercent: 0.05 }],
  supplies: [{ dispensed: "2025-01-10", opened: "2025-01-10", concentrationPercent: 0.05, lot: "LOT-99" }],
}
const secret = "a secret of the tests"
const childOf = (id: string, change: Partial<Course["child"]> = {}) => ({
  id,
  course: { ...course, child: { ...course.child, id, ...change } },
})
const table = researchTable([{ id: "MIRA-17", course }], { secret })
const textOf = (name: string) => table.files.find((file) => file.name === name)?.text ?? ""
const [header, ...rows] = textOf("measurements.csv")
  .trim()
  .split("\r\n")
  .map((line) => line.split(","))
const cell = (row: number, column: string) => rows[row]?.[header?.indexOf(column) ?? -1]

describe("the table for research", () => {
  it("has a row for each eye that was examined", () => {
    expect(rows).toHaveLength(3)
    expect(rows.map((_, row) => cell(row, "axial_length_mm"))).toEqual(["24.12", "24.04", "24.2"])
  })

  it("says how old the child was, by the unmoved days", () => {
    expect(cell(0, "age_years")).toBe("8.69")
  })

  it("says what an eye was treated with before the visit, not what the visit began", () => {
    expect([cell(0, "treatment"), cell(2, "treatment")]).toEqual(["none", "atropine"])
    expect(cell(2, "months_treated")).toBe("5.9")
    expect(cell(2, "concentration_percent")).toBe("0.05")
  })

  it("works out the spherical equivalent", () => {
    expect(cell(0, "spherical_equivalent_d")).toBe("-2.5")
  })

  it.each(["MIRA-17", "2016-05-04", "2025-01-10", "2025-07-10", "SN-0001", "LOT-99", "Aunt Bea", "Mill"])(
    "does not hold %s anywhere",
    (text) => {
      for (const file of table.files) expect(file.text).not.toContain(text)
    },
  )

  it("is the same again with the same secret, and has other ids and days with another", () => {
    expect(researchTable([{ id: "MIRA-17", course }], { secret })).toEqual(table)
    const other = researchTable([{ id: "MIRA-17", course }], { secret: "another" })
    expect(other.files[1]?.text).not.toBe(table.files[1]?.text)
  })

  it("does not tell by its order who came first", () => {
    const children = ["a", "b", "c", "d", "e", "f"].map((id) => childOf(id))
    const forwards = researchTable(children, { secret })
    expect(researchTable(children.toReversed(), { secret })).toEqual(forwards)
  })

  it("is the same .zip again", async () => {
    expect(await researchZip(table)).toEqual(await researchZip(table))
  })
})

describe("a child without its name", () => {
  it("keeps every interval, is never unmoved, and moves by half a year at most", () => {
    fc.assert(
      fc.property(
        fc.string({ minLength: 1 }),
        fc.string(),
        fc.integer({ min: 0, max: 7000 }),
        (child, key, days) => {
          const { moved } = studyChild({ secret: key, child })
          const day = "2008-02-29"
          const shift = dayNumber(moved(day)) - dayNumber(day)
          expect(shift).not.toBe(0)
          expect(Math.abs(shift)).toBeLessThanOrEqual(182)
          expect(dayNumber(moved(addDays(day, days))) - dayNumber(moved(day))).toBe(days)
        },
      ),
    )
  })

  it("uses every shift about as often", () => {
    const shifts = Array.from({ length: 7280 }, (_, index) => {
      const { moved } = studyChild({ secret, child: `child ${index}` })
      return dayNumber(moved("2020-01-01")) - dayNumber("2020-01-01")
    })
    const counts = new Map<number, number>()
    for (const shift of shifts) counts.set(shift, (counts.get(shift) ?? 0) + 1)
    // 364 shifts, 20 each: a Poisson count of 20 lies within 3 and 50 but once in a million shifts.
    expect(counts.size).toBe(364)
    expect(Math.max(...counts.values())).toBeLessThan(50)
  })

  it("has one code for one instrument", () => {
    const device = "Model 1 SN-0001"
    expect(instrumentCode({ secret, device })).toBe(instrumentCode({ secret, device }))
    expect(instrumentCode({ secret, device })).not.toBe(instrumentCode({ secret, device: "Model 2" }))
  })
})

describe("small groups", () => {
  it("are those of fewer than five children alike in sex, ancestry and age", () => {
    const five = ["a", "b", "c", "d", "e"].map((id) => childOf(id).course)
    const two = ["f", "g"].map((id) => childOf(id, { sex: "male" }).course)
    expect(smallCells([...five, ...two])).toEqual([
      { sex: "male", ancestry: "european", ageAtFirstVisit: 8, children: 2 },
    ])
  })

  it("leave out who was never seen", () => {
    expect(smallCells([{ ...course, visits: [] }])).toEqual([])
  })
})

describe("the data dictionary", () => {
  it("tells every column, by the course file's own schema where the field is its own", () => {
    const dictionary = dataDictionary()
    expect(dictionary.map(({ column }) => column)).toEqual(STUDY_COLUMNS.map(({ name }) => name))
    expect(dictionary.find(({ column }) => column === "axial_length_mm")).toEqual({
      column: "axial_length_mm",
      title: "Axial length, mm",
      description: "Mean of the readings of one session.",
      unit: "mm",
      allowed: "15 to 40",
      field: "visits[].right.axialLength.mm",
    })
    for (const { title, description } of dictionary)
      expect(`${title}${description}`.length).toBeGreaterThan(10)
  })

  it("lists the words and ranges that may stand there", () => {
    const allowed = (column: string) => dataDictionary().find((entry) => entry.column === column)?.allowed
    expect(allowed("sex")).toBe("female | male")
    expect(allowed("myopic_parents")).toBe("0 | 1 | 2")
    expect(allowed("refraction_cycloplegic")).toBe("yes | no")
    expect(allowed("concentration_percent")).toBe("above 0 to 1.5")
  })
})
