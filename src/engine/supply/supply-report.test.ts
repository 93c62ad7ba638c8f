import { describe, expect, it } from "vitest"
import { evidence } from "../../evidence/index.js"
import type { CalendarDate, Course, Supply, Treatment } from "../course.js"
import { treatmentColumns } from "../growth/treatment-columns.js"
import type { Pharmacy } from "../practice-rules.js"
import { standardProtocol } from "../protocol/standard.js"
import { demoCourses } from "../simulate/demo.js"
import { type SupplyReport, supplyReport } from "./supply-report.js"

const drops = (changes: Partial<Treatment> = {}): Treatment => ({
  kind: "atropine",
  concentrationPercent: 0.05,
  from: "2025-01-01",
  ...changes,
})
const bottle = (opened: CalendarDate, beyondUse?: CalendarDate, changes: Supply = {}): Supply => ({
  dispensed: opened,
  opened,
  concentrationPercent: 0.05,
  ...(beyondUse ? { beyondUse } : {}),
  ...changes,
})

interface Story {
  readonly treatments?: readonly Treatment[]
  readonly supplies?: readonly Supply[]
  readonly missedNights?: Course["missedNights"]
  readonly asOf?: CalendarDate
  readonly pharmacies?: readonly Pharmacy[]
}
function reported({
  asOf = "2025-04-11",
  pharmacies = [],
  treatments = [drops()],
  ...lists
}: Story): SupplyReport {
  const course: Course = {
    lengthwise: 1,
    child: { born: "2016-03-14", sex: "female" },
    visits: [],
    treatments,
    ...lists,
  }
  return supplyReport({ course, asOf, protocol: standardProtocol, pharmacies })
}
const pharmacy = (name: string, leadDays: number): Pharmacy => ({
  id: name.toLowerCase(),
  name,
  leadDays,
  stockPercents: [1],
  smallestVolumeMl: 0.5,
  bottleMl: 5,
  isPreserved: false,
  daysAfterOpening: 30,
})

describe("proportion of days covered", () => {
  // 100 days of prescription up to 11 April: January and March are covered, 31 + 31.
  const two = [bottle("2025-01-01", "2025-01-31"), bottle("2025-03-01", "2025-03-31")]

  it("is the days with a bottle in date over the days of prescription, the last day of use included", () => {
    expect(reported({ supplies: two })).toMatchObject({
      daysPrescribed: 100,
      daysCovered: 62,
      proportionOfDaysCovered: 0.62,
      isPoor: true,
      window: { from: "2025-01-01", to: "2025-04-10" },
    })
  })

  it("names its definition, and where poor begins", () => {
    expect(reported({ supplies: two })).toMatchObject({
      definition: expect.stringMatching(
        /^days with an in-date opened bottle of the prescribed strength, divided by/,
      ),
      poorBelow: 0.8,
    })
  })

  it("carries nothing over and counts a day with two bottles once", () => {
    const early = [bottle("2025-01-01", "2025-01-31"), bottle("2025-01-21", "2025-02-20")]
    expect(reported({ supplies: early }).daysCovered).toBe(51)
  })

  it("does not count a bottle of another strength, one opened past its date, or one that came later", () => {
    const others = [
      bottle("2025-02-01", "2025-02-28", { concentrationPercent: 0.01 }),
      bottle("2025-02-20", "2025-02-10"),
      bottle("2025-04-12", "2025-05-12"),
    ]
    expect(reported({ supplies: [...two, ...others] }).daysCovered).toBe(62)
  })

  it("counts no day on which nothing was prescribed", () => {
    const stopped = reported({ treatments: [drops({ to: "2025-02-01" })], supplies: two })
    expect(stopped).toMatchObject({ daysPrescribed: 31, proportionOfDaysCovered: 1, gaps: [] })
  })

  it("is not known where no bottle is recorded, nor where no drops are prescribed", () => {
    expect(reported({})).toMatchObject({ proportionOfDaysCovered: null, isPoor: null, daysPrescribed: 100 })
    expect(reported({ treatments: [] })).toMatchObject({ window: null, daysPrescribed: 0, nextBottles: [] })
  })

  it("of a taper is that of the days, not of the nights with a drop", () => {
    expect(
      reported({ treatments: [drops({ nightsPerWeek: 3 })], supplies: two }).proportionOfDaysCovered,
    ).toBe(0.62)
  })

  it("is told for each prescription; one without any bottle on record is left out of the whole", () => {
    const change = [drops({ to: "2025-03-01", concentrationPercent: 0.01 }), drops({ from: "2025-03-01" })]
    const { prescriptions, daysPrescribed, nights } = reported({ treatments: change, supplies: two })
    expect(
      prescriptions.map(({ treatment, proportionOfDaysCovered }) => [treatment, proportionOfDaysCovered]),
    ).toEqual([
      ["atropine 0.01 %", null],
      ["atropine 0.05 %", 31 / 41],
    ])
    expect(daysPrescribed).toBe(41)
    expect(nights[0]).toMatchObject({ state: "not-recorded", nights: 59 })
  })

  it("needs a bottle for each eye where each has a strength of its own", () => {
    const each = [drops({ eye: "right" }), drops({ eye: "left", concentrationPercent: 0.01 })]
    const supplies = [
      bottle("2025-01-01", "2025-04-30"),
      bottle("2025-01-01", "2025-01-31", { concentrationPercent: 0.01 }),
    ]
    expect(reported({ treatments: each, supplies })).toMatchObject({ daysPrescribed: 100, daysCovered: 31 })
  })
})

describe("missed nights that the family told of", () => {
  const all = [bottle("2025-01-01", "2025-04-30")]
  const missed = (nights: number) => [{ from: "2025-02-01", to: "2025-02-28", nights }]

  it("are taken off the covered nights, beside the figure of the bottles", () => {
    expect(reported({ supplies: all, missedNights: missed(14) })).toMatchObject({
      nightsReportedMissed: 14,
      proportionOfDaysCovered: 1,
      proportionWithDrop: 0.86,
      isPoor: false,
    })
  })

  it("are never more than the nights with a bottle in their span", () => {
    const short = [bottle("2025-01-01", "2025-02-07"), bottle("2025-03-01", "2025-04-30")]
    const { daysCovered, proportionWithDrop } = reported({ supplies: short, missedNights: missed(14) })
    expect(daysCovered).toBe(79)
    expect(proportionWithDrop).toBeCloseTo(0.72, 12)
  })

  it("count without any bottle on record as well", () => {
    expect(reported({ missedNights: missed(28) })).toMatchObject({
      proportionOfDaysCovered: null,
      proportionWithDrop: 0.72,
      isPoor: true,
    })
  })
})

describe("the growth model counts the same nights", () => {
  it("for every child of the invented practice", () => {
    const today = "2026-11-25"
    let compared = 0
    for (const { course } of demoCourses({ today, seed: 7, evidence })) {
      const columns = treatmentColumns({ course, asOf: today, parameters: evidence.growth })
      const only = columns.filter(({ key }) => key.includes("atropine"))
      if (only.length !== 1 || columns.length !== 1) continue
      const { proportionWithDrop } = supplyReport({ course, asOf: today, protocol: standardProtocol })
      compared++
      if (only[0]?.coverage === null) expect(proportionWithDrop).toBeNull()
      else expect(proportionWithDrop).toBeCloseTo(only[0]?.coverage as number, 9)
    }
    expect(compared).toBeGreaterThan(20)
  })
})

describe("gaps", () => {
  it("are the nights in a row without a bottle, with their dates", () => {
    const supplies = [bottle("2025-01-05", "2025-01-31"), bottle("2025-03-01", "2025-03-31")]
    expect(reported({ supplies }).gaps).toEqual([
      { from: "2025-01-01", to: "2025-01-04", nights: 4 },
      { from: "2025-02-01", to: "2025-02-28", nights: 28 },
      { from: "2025-04-01", to: "2025-04-10", nights: 10 },
    ])
  })
})

describe("the next bottle", () => {
  const supplies = [bottle("2025-04-01", "2025-04-30", { pharmacy: "Linden" })]
  const next = (story: Story) => reported({ supplies, ...story }).nextBottles

  it("has to be asked for as many days ahead as its pharmacy takes", () => {
    expect(next({ pharmacies: [pharmacy("Linden", 10), pharmacy("Harbour", 3)] })).toEqual([
      {
        treatment: "atropine 0.05 %",
        state: "upcoming",
        orderBy: "2025-04-20",
        due: "2025-04-30",
        lead: { days: 10, from: { kind: "pharmacy", name: "Linden" } },
      },
    ])
  })

  it("is asked for by the protocol's lead days where the pharmacy is not known", () => {
    expect(next({})[0]).toMatchObject({
      orderBy: "2025-04-16",
      lead: { days: 14, from: { kind: "protocol" } },
    })
  })

  it("takes the only pharmacy of the practice where the bottle names none", () => {
    const unnamed = [bottle("2025-04-01", "2025-04-30")]
    expect(next({ supplies: unnamed, pharmacies: [pharmacy("Linden", 5)] })[0]?.orderBy).toBe("2025-04-25")
    expect(next({ pharmacies: [pharmacy("Harbour", 5)] })[0]?.lead.from.kind).toBe("protocol")
  })

  it("counts spares: three bottles handed out at once last three months", () => {
    const handedOut = { dispensed: "2025-04-01", concentrationPercent: 0.05 }
    const three = [bottle("2025-04-01"), handedOut, handedOut]
    expect(next({ supplies: three })[0]?.due).toBe("2025-07-02")
    expect(next({ supplies: [handedOut] })[0]?.due).toBe("2025-05-01")
  })

  it("counts a spare after the bottles that were opened since it was handed out", () => {
    const spare = { dispensed: "2025-03-01", concentrationPercent: 0.05 }
    const opened = (day: CalendarDate) => bottle(day, undefined, { dispensed: "2025-03-01" })
    expect(next({ supplies: [opened("2025-03-01"), spare, opened("2025-03-31")] })[0]?.due).toBe("2025-05-31")
  })

  it("does not count a spare once a bottle handed out after it was opened", () => {
    const forgotten = { dispensed: "2025-03-01", concentrationPercent: 0.05 }
    const later = bottle("2025-04-01", undefined, { dispensed: "2025-04-01" })
    expect(next({ supplies: [forgotten, later] })[0]?.due).toBe("2025-05-01")
  })

  it("is needed by the first day where treatment begins again long after the last bottle", () => {
    const again = [drops({ to: "2025-02-01" }), drops({ from: "2025-04-10" })]
    const supplies = [bottle("2025-01-01", "2025-01-31")]
    expect(next({ treatments: again, supplies })[0]?.due).toBe("2025-04-10")
  })

  it("is owed for each strength in use, and none once treatment ends", () => {
    const each = [drops({ eye: "right" }), drops({ eye: "left", concentrationPercent: 0.01 })]
    expect(next({ treatments: each }).map(({ treatment, due }) => [treatment, due])).toEqual([
      ["atropine 0.05 %", "2025-04-30"],
      ["atropine 0.01 %", "2025-01-01"],
    ])
    expect(next({ treatments: [drops({ to: "2025-05-01" })] })).toEqual([])
  })
})

describe("bottles that somebody has to look at", () => {
  const faults = (supplies: readonly Supply[], asOf?: CalendarDate) =>
    reported({ supplies, ...(asOf ? { asOf } : {}) }).faults.map(({ kind, path }) => [kind, path])

  it("opened past its date", () => {
    const late = bottle("2025-04-05", "2025-04-01")
    expect(faults([late, bottle("2025-04-01", "2025-04-30")])).toEqual([
      ["opened-past-date", "supplies[0].opened"],
    ])
  })

  it("kept past its date while no other is in date; not once there is one", () => {
    const first = bottle("2025-01-01", "2025-01-31")
    const second = bottle("2025-03-01", "2025-03-31")
    expect(faults([first, second])).toEqual([["past-date", "supplies[1]"]])
    expect(faults([first, second, bottle("2025-04-10", "2025-05-09")])).toEqual([])
  })

  it("of a strength that was not prescribed then", () => {
    const other = bottle("2025-03-20", "2025-04-20", { concentrationPercent: 0.5 })
    expect(faults([other, bottle("2025-04-01", "2025-04-30")])).toEqual([
      ["strength-not-prescribed", "supplies[0].concentrationPercent"],
    ])
    const before = {
      dispensed: "2024-12-28",
      opened: "2025-01-01",
      beyondUse: "2025-01-30",
      concentrationPercent: 0.05,
    }
    expect(faults([before], "2025-01-10")).toEqual([])
  })

  it("used without a word of its opening, but not on the day it was handed out, and not a spare", () => {
    const handedOut = { dispensed: "2025-04-01", concentrationPercent: 0.05 }
    expect(faults([handedOut])).toEqual([["opening-not-recorded", "supplies[0].opened"]])
    expect(faults([handedOut], "2025-04-01")).toEqual([])
    expect(faults([bottle("2025-04-01"), handedOut])).toEqual([])
  })

  it("is not past a date that it does not state and that no opening gives", () => {
    const unopened = { dispensed: "2025-03-01", concentrationPercent: 0.05 }
    expect(faults([unopened])).toEqual([["opening-not-recorded", "supplies[0].opened"]])
  })
})

describe("a bottle's state", () => {
  it("is a spare as long as another is in date, however long ago it was handed out", () => {
    const spare = { dispensed: "2025-03-01", concentrationPercent: 0.05 }
    const states = (one: Supply) =>
      reported({ supplies: [bottle("2025-04-01"), one] }).bottles.map(({ state }) => state)
    expect(states(spare)).toEqual(["spare", "in-date"])
    expect(states({ ...spare, beyondUse: "2025-03-31" })).toEqual(["past-date", "in-date"])
  })

  it("is told as of the day", () => {
    const supplies = [
      bottle("2025-01-01", "2025-01-31"),
      bottle("2025-04-01", "2025-04-30"),
      { dispensed: "2025-04-01", concentrationPercent: 0.05 },
      bottle("2025-04-20", "2025-05-20"),
    ]
    expect(
      reported({ supplies }).bottles.map(({ index, state, lastNight }) => [index, state, lastNight]),
    ).toEqual([
      [0, "past-date", "2025-01-31"],
      [1, "in-date", "2025-04-30"],
      [2, "spare", "2025-04-30"],
    ])
  })
})
