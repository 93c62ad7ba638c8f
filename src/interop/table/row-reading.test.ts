import { describe, expect, it } from "vitest"
import type { TableMapping } from "../../engine/practice-rules.js"
import { rowReading } from "./row-reading.js"

const mapping = (
  columns: Readonly<Record<string, string>>,
  rest: Partial<TableMapping> = {},
): TableMapping => ({
  id: "m",
  title: "",
  rowIs: "visit",
  dateOrder: "day-month-year",
  decimalSign: ".",
  columns: Object.entries(columns).map(([heading, field]) => ({ heading, field })),
  ...rest,
})

const CHILD = { No: "number", Day: "date" }

/** A row of child 17 on 28 January 2025 with what else it says. */
function read(
  cells: Readonly<Record<string, readonly [field: string, text: string]>>,
  rest: Partial<TableMapping> = {},
) {
  const fields = Object.fromEntries(Object.entries(cells).map(([heading, [field]]) => [heading, field]))
  const all = mapping({ ...CHILD, ...fields }, rest)
  const texts = Object.values(cells).map(([, text]) => text)
  return rowReading({ line: 7, cells: ["17", "28/01/2025", ...texts] }, all, [
    "No",
    "Day",
    ...Object.keys(cells),
  ])
}

const right = (cells: Parameters<typeof read>[0], rest: Partial<TableMapping> = {}) =>
  read(cells, rest).reading?.visits[0]?.right

describe("a row of both eyes", () => {
  it("gives a visit with what it holds; what is not there is absent", () => {
    const { reading, problems } = read({
      AL: ["right.axialLengthMm", "24.12"],
      "AL L": ["left.axialLengthMm", "n/a"],
      IOP: ["left.pressureMmHg", "15"],
    })
    expect(problems).toEqual([])
    expect(reading).toMatchObject({
      line: 7,
      identity: { number: "17" },
      visits: [
        {
          date: "2025-01-28",
          right: { axialLength: { mm: 24.12 } },
          left: { intraocularPressure: { mmHg: 15 } },
        },
      ],
    })
    expect(reading?.visits[0]?.left?.axialLength).toBeUndefined()
  })

  it("takes what is said once for both eyes where an eye has the figure", () => {
    const { reading } = read({
      AL: ["right.axialLengthMm", "24.12"],
      S: ["left.sphere", "-2"],
      How: ["lengthMethod", "optical"],
      Cyclo: ["cycloplegic", "sí"],
    })
    expect(reading?.visits[0]).toMatchObject({
      right: { axialLength: { mm: 24.12, method: "optical-biometry" } },
      left: { refraction: { sphere: -2, cycloplegic: true } },
    })
  })

  it.each([
    ["241", "Did you mean 24.1?"],
    ["24,12", 'It was said that decimals are written with "."'],
    ["24.12 mm", "A figure stands alone in its cell"],
    ["1,024.1", "Thousands are written without a sign"],
    ["twenty", "A figure stands alone in its cell"],
    ["--24", 'not "--24"'],
  ])("refuses a length of %s and leaves it out", (text, hint) => {
    const { reading, problems } = read({ AL: ["right.axialLengthMm", text], S: ["right.sphere", "-1"] })
    expect(problems).toHaveLength(1)
    expect(problems[0]).toMatchObject({
      heading: "AL",
      line: 7,
      value: text,
      allowed: "a number from 15 to 40 mm",
    })
    expect(problems[0]?.message).toContain(hint)
    expect(reading?.visits[0]?.right).toEqual({ refraction: { sphere: -1 } })
  })

  it("reads a minus of typography, a plus, plano, and an axis of 0 as 180", () => {
    expect(
      right({ S: ["right.sphere", "−2.25"], C: ["right.cylinder", "– 0.50"], A: ["right.axis", "0"] })
        ?.refraction,
    ).toEqual({ sphere: -2.25, cylinder: -0.5, axis: 180 })
    expect(right({ S: ["right.sphere", "plano"], C: ["right.cylinder", "DS"] })?.refraction).toEqual({
      sphere: 0,
    })
    expect(right({ S: ["right.sphere", "'+1.00"] })?.refraction).toEqual({ sphere: 1 })
  })

  it("leaves out a cylinder without an axis and an axis that lost its cylinder, with the lens", () => {
    const noAxis = read({ S: ["right.sphere", "-2"], C: ["right.cylinder", "-0.5"], A: ["right.axis", ""] })
    expect(noAxis.problems[0]).toMatchObject({ heading: "A", value: null })
    expect(noAxis.reading?.visits).toEqual([])
    const noCylinder = read({ S: ["right.sphere", "-2"], C: ["right.cylinder", ""], A: ["right.axis", "90"] })
    expect(noCylinder.problems[0]).toMatchObject({ heading: "C", value: null })
  })

  it.each([
    ["-2.25 -0.50 x 180", { sphere: -2.25, cylinder: -0.5, axis: 180 }],
    ["-2,25/-0,50x180", { sphere: -2.25, cylinder: -0.5, axis: 180 }],
    ["-3.00 DS", { sphere: -3 }],
  ])("reads a whole prescription, %s", (text, lens) => {
    expect(right({ Rx: ["right.prescription", text] })?.refraction).toEqual(lens)
  })

  it("takes a spherical equivalent alone as a sphere, and says so", () => {
    const { reading } = read({ SE: ["right.sphericalEquivalent", "-2.5"] })
    expect(reading?.visits[0]?.right?.refraction).toEqual({ sphere: -2.5 })
    expect(reading?.notes).toMatchObject([
      { kind: "sphere-from-equivalent", path: "visits[2025-01-28].right.refraction" },
    ])
  })

  it("turns powers of the cornea into radii only where the column is in dioptres, and says by which index", () => {
    const columns = [
      { heading: "No", field: "number" },
      { heading: "Day", field: "date" },
      { heading: "K1", field: "right.corneaFlatMm", unit: "[diop]" },
      { heading: "K2", field: "right.corneaSteepMm", unit: "[diop]" },
    ]
    const row = { line: 2, cells: ["17", "28/01/2025", "43.50", "44.25"] }
    const headings = ["No", "Day", "K1", "K2"]
    const { reading } = rowReading(row, mapping({}, { columns }), headings)
    // 337.5 / 43.5 = 7.7586, 337.5 / 44.25 = 7.6271
    expect(reading?.visits[0]?.right?.corneaRadius).toEqual({
      flat: 7.759,
      steep: 7.627,
      flatD: 43.5,
      steepD: 44.25,
    })
    expect(reading?.notes[0]?.why).toContain("1.3375")
    const inMm = rowReading(
      row,
      mapping({}, { columns: columns.map(({ unit: _, ...rest }) => rest) }),
      headings,
    )
    expect(inMm.problems.map(({ allowed }) => allowed)).toEqual(Array(2).fill("a number from 5.5 to 10 mm"))
  })

  it("refuses a unit that the field cannot be read from", () => {
    const columns = [...mapping(CHILD).columns, { heading: "AL", field: "right.axialLengthMm", unit: "cm" }]
    const { problems } = rowReading(
      { line: 2, cells: ["17", "28/01/2025", "24"] },
      mapping({}, { columns }),
      ["No", "Day", "AL"],
    )
    expect(problems[0]?.allowed).toBe("in another unit than cm")
  })

  it.each([
    ["distanceLogMAR", "0.1", 0.1],
    ["distanceDecimal", "0.5", 0.301],
    ["distanceSnellen", "20/40", 0.301],
    ["distanceSnellen", "6/6", 0],
  ])("reads acuity as %s %s", (field, text, logMAR) => {
    expect(right({ VA: [`right.${field}`, text] })?.acuity).toEqual({ distanceLogMAR: logMAR })
  })
})

describe("a day", () => {
  const day = (text: string, dateOrder: TableMapping["dateOrder"] = "day-month-year") =>
    rowReading(
      { line: 2, cells: ["17", text, "24"] },
      mapping({ ...CHILD, AL: "right.axialLengthMm" }, { dateOrder }),
      ["No", "Day", "AL"],
    )

  it.each([
    ["03/04/2025", "2025-04-03"],
    ["3.4.2025", "2025-04-03"],
    ["2025-04-03", "2025-04-03"],
    ["20250403", "2025-04-03"],
    ["03/04/2025 14:30", "2025-04-03"],
    ["2025-04-03T09:15:00Z", "2025-04-03"],
    ["3 de abril de 2025", "2025-04-03"],
    ["Apr 3rd, 2025", "2025-04-03"],
  ])("%s is %s where the day stands first", (text, date) => {
    expect(day(text).reading?.visits[0]?.date).toBe(date)
  })

  it.each([
    ["03/04/25", "four digits"],
    ["31/02/2025", "day stands before the month"],
    ["04/13/2025", "day stands before the month"],
    ["45750", "spreadsheet"],
    ["soon", "a day of the calendar"],
    ["03/04/1825", "a day of the calendar"],
  ])("%s leaves the whole row out", (text, hint) => {
    const { reading, problems } = day(text)
    expect(reading).toBeNull()
    expect(problems[0]?.message).toContain(hint)
  })

  it("is never read in another order than was said", () => {
    expect(day("04/13/2025", "month-day-year").reading?.visits[0]?.date).toBe("2025-04-13")
    expect(day("03/04/2025", "year-month-day").reading).toBeNull()
  })

  it("that is missing beside figures leaves the row out", () => {
    expect(day("").problems[0]).toMatchObject({ heading: "Day", value: null })
  })
})

describe("whose row it is", () => {
  const whose = (cells: readonly string[], headings: readonly string[], columns: TableMapping["columns"]) =>
    rowReading({ line: 2, cells }, mapping({}, { columns }), headings)

  it("is a number or a name, given name first", () => {
    const columns = mapping({ First: "givenName", Last: "familyName", Born: "born" }).columns
    expect(
      whose(["Zoë", "Núñez  Peña", "14/03/2017"], ["First", "Last", "Born"], columns).reading?.identity,
    ).toEqual({
      name: "Zoë Núñez Peña",
      born: "2017-03-14",
    })
    const name = mapping({ Name: "name" }).columns
    expect(whose(["Peña, Zoë"], ["Name"], name).reading?.identity.name).toBe("Zoë Peña")
  })

  it("an M says nothing until the column's other letter is known", () => {
    const sexed = (unit?: string) => [
      { heading: "No", field: "number" },
      { heading: "Sex", field: "sex", ...(unit ? { unit } : {}) },
    ]
    const of = (unit?: string) => whose(["17", "M"], ["No", "Sex"], sexed(unit))
    expect(of("F/M").reading?.identity.sex).toBe("male")
    expect(of("H/M").reading?.identity.sex).toBe("female")
    expect(of().reading).toBeNull()
  })

  it("is refused when nothing says so, and when a visit lies before birth", () => {
    const columns = mapping({ ...CHILD, Born: "born", AL: "right.axialLengthMm" }).columns
    const headings = ["No", "Day", "Born", "AL"]
    expect(whose(["", "28/01/2025", "", "24"], headings, columns).reading).toBeNull()
    expect(whose(["17", "28/01/2015", "14/03/2017", "24"], headings, columns).reading).toBeNull()
  })

  it("is refused when cells have moved beyond the headings; empty rows are nothing", () => {
    const columns = mapping(CHILD).columns
    expect(whose(["17", "28/01/2025", "x"], ["No", "Day"], columns).problems).toHaveLength(1)
    expect(whose(["17", "28/01/2025", ""], ["No", "Day"], columns).problems).toHaveLength(0)
    expect(whose(["", " - "], ["No", "Day"], columns)).toEqual({ reading: null, problems: [] })
  })
})

describe("a row of one eye", () => {
  const row = (eye: string) => read({ Eye: ["eye", eye], AL: ["axialLengthMm", "24.1"] }, { rowIs: "eye" })

  it("says which", () => {
    expect(row("OS").reading?.visits).toEqual([{ date: "2025-01-28", left: { axialLength: { mm: 24.1 } } }])
    expect(row("derecho").reading?.visits[0]?.right).toBeDefined()
  })

  it.each(["", "OU", "3"])('is left out when its eye is "%s"', (eye) => {
    expect(row(eye).reading).toBeNull()
    expect(row(eye).problems[0]).toMatchObject({ heading: "Eye", allowed: "right or left (OD or OS)" })
  })
})

describe("earlier glasses", () => {
  it("are a row of their own that is marked", () => {
    const { reading } = read({
      Kind: ["oldGlasses", "glasses"],
      S: ["right.sphere", "-1"],
      AL: ["right.axialLengthMm", "24"],
    })
    expect(reading?.visits).toEqual([
      { date: "2025-01-28", right: { refraction: { sphere: -1 } }, from: "old glasses" },
    ])
    expect(reading?.notes).toMatchObject([{ kind: "not-of-glasses" }])
  })

  it("or stand beside the visit with a day of their own", () => {
    const cells = {
      S: ["right.sphere", "-2"],
      G: ["right.glassesSphere", "-1"],
      When: ["glassesDate", "10/01/2024"],
    } as const
    expect(read(cells).reading?.visits).toEqual([
      { date: "2025-01-28", right: { refraction: { sphere: -2 } } },
      { date: "2024-01-10", right: { refraction: { sphere: -1 } }, from: "old glasses" },
    ])
    const undated = read({ ...cells, When: ["glassesDate", ""] })
    expect(undated.problems[0]).toMatchObject({ heading: "When", value: null })
    expect(undated.reading?.visits).toHaveLength(1)
  })
})

describe("a treatment", () => {
  const treated = (kind: string, strength: string, from: string, to = "") =>
    read({
      T: ["treatmentKind", kind],
      "%": ["concentrationPercent", strength],
      From: ["treatmentFrom", from],
      To: ["treatmentTo", to],
    })

  it("has a kind, a strength and a first day", () => {
    const atropine = { from: "2025-01-28", kind: "atropine", concentrationPercent: 0.05 }
    expect(treated("Atropina", "0.05", "28/01/2025").reading?.treatments).toEqual([atropine])
    expect(treated("atropine 0.05%", "", "28/01/2025").reading?.treatments).toEqual([atropine])
    expect(treated("ortho-k", "", "28/01/2025", "1/6/2025").reading?.treatments).toEqual([
      { from: "2025-01-28", to: "2025-06-01", kind: "orthokeratology" },
    ])
  })

  it.each([
    ["drops", "0.05", "28/01/2025", "T"],
    ["atropine", "", "28/01/2025", "%"],
    ["atropine", "5", "28/01/2025", "%"],
    ["atropine", "0.05", "", "From"],
  ])("%s %s from %s is refused at its column", (kind, strength, from, heading) => {
    const { reading, problems } = treated(kind, strength, from)
    expect(problems[0]).toMatchObject({ heading })
    expect(reading?.treatments).toEqual([])
  })
})
