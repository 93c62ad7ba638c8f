import { describe, expect, it } from "vitest"
import { growthParameters as parameters } from "../../evidence/index.js"
import { ageYears } from "../calendar.js"
import type { CalendarDate, Course, Supply, Treatment, TreatmentKind } from "../course.js"
import { treatmentColumns } from "./treatment-columns.js"

const born = "2015-01-01"
const age = (on: CalendarDate) => ageYears({ born, on })
const columns = (
  treatments: readonly Treatment[],
  {
    supplies = [],
    missedNights = [],
    asOf = "2026-01-01",
  }: { supplies?: readonly Supply[]; missedNights?: Course["missedNights"]; asOf?: CalendarDate } = {},
) => {
  const child = { born, sex: "male" } as const
  const course: Course = { lengthwise: 1, child, visits: [], treatments, supplies, missedNights }
  return treatmentColumns({ course, asOf, parameters })
}
const drops = (
  from: CalendarDate,
  to: CalendarDate | null = null,
  concentrationPercent = 0.05,
): Treatment => ({
  kind: "atropine",
  concentrationPercent,
  from,
  to,
})
const optical = (kind: TreatmentKind, from: CalendarDate, to: CalendarDate | null = null): Treatment => ({
  kind,
  from,
  to,
})
const effect = (id: string) =>
  parameters.effects.find((one) => one.id === id) as (typeof parameters.effects)[number]
const only = <T>(list: readonly T[]): T => {
  expect(list).toHaveLength(1)
  return list[0] as T
}

describe("treatments as columns of the model", () => {
  it("takes a treatment that is stopped and begun again as one column with two stretches", () => {
    const column = only(columns([drops("2022-01-01", "2023-01-01"), drops("2024-01-01")]))
    expect(column.exposures).toEqual([
      { fromAge: age("2022-01-01"), toAge: age("2023-01-01"), share: 1 },
      { fromAge: age("2024-01-01"), toAge: Number.POSITIVE_INFINITY, share: 1 },
    ])
    expect([column.startAge, column.endAge]).toEqual([age("2022-01-01"), Number.POSITIVE_INFINITY])
  })

  it("takes two strengths as two columns, in order of their start", () => {
    const found = columns([drops("2024-01-01"), drops("2022-01-01", "2024-01-01", 0.01)])
    expect(found.map(({ label }) => label)).toEqual(["atropine 0.01 %", "atropine 0.05 %"])
  })

  it("has no column for an entry of no treatment", () => {
    expect(columns([optical("none", "2022-01-01")])).toEqual([])
  })

  it("takes a treatment entered twice over the same days as one, with its own prior", () => {
    const twice = only(columns([drops("2022-01-01"), drops("2022-01-01")]))
    expect(twice).toEqual(only(columns([drops("2022-01-01")])))
  })
})

describe("prior of the share withheld", () => {
  it("is what the trials report, its SD holding the doubt about the mean and the spread between children", () => {
    const { prior, effect: found } = only(columns([drops("2022-01-01")]))
    const { withheldFraction, withheldFractionSd } = effect("atropine-0.05")
    expect(found).toBe(effect("atropine-0.05"))
    expect(prior.mean).toBe(withheldFraction)
    expect(prior.sd).toBeCloseTo(Math.hypot(withheldFractionSd, parameters.values.withheldSpreadSd.value), 12)
  })

  it.each([
    { given: drops("2022-01-01", null, 0.03), why: "no trial at 0.03 %" },
    { given: optical("atropine", "2022-01-01"), why: "strength not stated" },
  ])("of $given.kind is left open: $why", ({ given }) => {
    const column = only(columns([given]))
    expect(column).toMatchObject({
      effect: null,
      prior: { mean: 0, sd: parameters.values.unlistedTreatmentSd.value },
    })
    expect(column.note).toMatch(/left open/)
  })

  it("of an optical treatment needs no strength", () => {
    expect(only(columns([optical("orthokeratology", "2022-01-01")])).prior.mean).toBe(
      effect("orthokeratology").withheldFraction,
    )
  })
})

describe("treatments together", () => {
  it("are a column of their own while both go on", () => {
    const found = columns([optical("orthokeratology", "2022-01-01"), drops("2023-01-01", "2024-01-01", 0.01)])
    expect(found.map(({ label }) => label)).toEqual([
      "orthokeratology",
      "atropine 0.01 % with orthokeratology",
    ])
    expect(found[1]?.exposures).toEqual([{ fromAge: age("2023-01-01"), toAge: age("2024-01-01"), share: 1 }])
    expect(found[0]?.exposures).toHaveLength(2)
  })

  it("have the effect that trials of the combination report", () => {
    const found = columns([optical("orthokeratology", "2022-01-01"), drops("2022-01-01", null, 0.01)])
    expect(only(found).prior.mean).toBe(effect("atropine-0.01+orthokeratology").withheldFraction)
  })

  it("without a trial have the larger of the single effects and never their sum, and say so", () => {
    const column = only(columns([optical("lenslet-spectacles", "2022-01-01"), drops("2022-01-01")]))
    expect(column.prior.mean).toBe(effect("lenslet-spectacles").withheldFraction)
    expect(column.note).toMatch(/never a sum/)
  })
})

describe("coverage", () => {
  const bottle = (opened: CalendarDate, beyondUse?: CalendarDate, concentrationPercent = 0.05): Supply => ({
    opened,
    beyondUse,
    concentrationPercent,
  })
  const course = [drops("2024-01-01")]

  it("is not known, and every night counts, where no supply is recorded", () => {
    const column = only(columns(course))
    expect([column.coverage, column.exposures[0]?.share]).toEqual([null, 1])
  })

  it("leaves out nights without a bottle in date; the last day of use counts", () => {
    const supplies = [bottle("2024-01-01", "2024-01-31"), bottle("2024-03-01", "2024-03-31")]
    const column = only(columns(course, { supplies, asOf: "2024-04-01" }))
    expect(column.exposures.slice(0, 2)).toEqual([
      { fromAge: age("2024-01-01"), toAge: age("2024-02-01"), share: 1 },
      { fromAge: age("2024-03-01"), toAge: age("2024-04-01"), share: 1 },
    ])
    expect(column.coverage).toBeCloseTo(62 / 91, 12)
  })

  it("counts nights to come at the share seen so far", () => {
    const supplies = [bottle("2024-01-01", "2024-01-31")]
    const column = only(columns(course, { supplies, asOf: "2024-03-03" }))
    expect(column.exposures.at(-1)).toEqual({
      fromAge: age("2024-03-03"),
      toAge: Number.POSITIVE_INFINITY,
      share: column.coverage,
    })
    expect(column.coverage).toBeCloseTo(0.5, 12)
  })

  it("does not count a night twice when bottles overlap", () => {
    const supplies = [bottle("2024-01-01", "2024-01-31"), bottle("2024-01-20", "2024-02-29")]
    expect(only(columns(course, { supplies, asOf: "2024-03-01" })).coverage).toBe(1)
  })

  it("does not count bottles of another strength", () => {
    const supplies = [bottle("2024-01-01", "2024-01-31"), bottle("2024-02-01", "2024-02-29", 0.01)]
    expect(only(columns(course, { supplies, asOf: "2024-03-01" })).coverage).toBeCloseTo(31 / 60, 12)
  })

  it("takes a bottle without a last day of use to last a month", () => {
    expect(
      only(columns(course, { supplies: [bottle("2024-01-01")], asOf: "2024-03-01" })).coverage,
    ).toBeCloseTo(30 / 60, 12)
  })

  it("is not asked of optical treatments", () => {
    const column = only(
      columns([optical("multifocal-lens", "2024-01-01")], { supplies: [bottle("2024-01-01", "2024-01-31")] }),
    )
    expect(column.coverage).toBeNull()
  })
})

describe("missed nights that the family told of", () => {
  const february = (nights: number) => [{ from: "2024-02-01", to: "2024-02-29", nights }]
  const bottle: Supply = { opened: "2024-01-01", beyondUse: "2024-03-31", concentrationPercent: 0.05 }

  it("lower the share of their own span alone, and the coverage", () => {
    const column = only(
      columns([drops("2024-01-01")], {
        supplies: [bottle],
        missedNights: february(14.5),
        asOf: "2024-04-01",
      }),
    )
    expect(column.exposures.map(({ fromAge, share }) => [fromAge, Number(share.toFixed(9))])).toEqual([
      [age("2024-01-01"), 1],
      [age("2024-02-01"), 0.5],
      [age("2024-03-01"), 1],
      [age("2024-04-01"), Number((76.5 / 91).toFixed(9))],
    ])
    expect(column.coverage).toBeCloseTo(76.5 / 91, 12)
  })

  it("are spread over the nights with a bottle: a night without one cannot be missed again", () => {
    const half: Supply = { opened: "2024-01-01", beyondUse: "2024-02-10", concentrationPercent: 0.05 }
    const column = only(
      columns([drops("2024-01-01")], { supplies: [half], missedNights: february(5), asOf: "2024-03-01" }),
    )
    expect(column.exposures[1]?.share).toBeCloseTo(0.5, 9)
    expect(column.coverage).toBeCloseTo(36 / 60, 12)
  })

  it("make a coverage where no bottle is recorded", () => {
    const column = only(columns([drops("2024-01-01")], { missedNights: february(29), asOf: "2024-03-01" }))
    expect(column.coverage).toBeCloseTo(31 / 60, 12)
  })

  it("are not known before their span is over", () => {
    const column = only(columns([drops("2024-01-01")], { missedNights: february(29), asOf: "2024-02-20" }))
    expect(column.coverage).toBeNull()
  })

  it("leave what was given beside the drops to go on alone", () => {
    const found = columns([optical("orthokeratology", "2024-01-01"), drops("2024-01-01", null, 0.01)], {
      missedNights: february(29),
      asOf: "2024-03-01",
    })
    const alone = found.find(({ label }) => label === "orthokeratology")
    expect(alone?.exposures[0]).toMatchObject({ fromAge: age("2024-02-01"), toAge: age("2024-03-01") })
    expect(alone?.exposures[0]?.share).toBeCloseTo(1, 9)
  })
})

describe("a taper", () => {
  it("is a smaller share of every night, in the same column, and full coverage", () => {
    const column = only(
      columns([drops("2024-01-01", "2025-01-01"), { ...drops("2025-01-01"), nightsPerWeek: 3 }]),
    )
    expect(column.exposures.map(({ share }) => share)).toEqual([1, 3 / 7])
    expect(column.coverage).toBeNull()
  })
})

describe("a treatment of one eye", () => {
  const right: Treatment = { ...drops("2024-01-01"), eye: "right" }
  const left: Treatment = { ...drops("2025-01-01"), eye: "left" }

  it("exposes that eye alone, and is named by it", () => {
    const column = only(columns([right]))
    expect(column).toMatchObject({
      key: "atropine 0.05 %",
      label: "atropine 0.05 % in the right eye",
      eye: 0,
    })
    expect(column.exposures.map(({ eye }) => eye)).toEqual([0])
  })

  it("of both eyes, begun apart, is one column", () => {
    const column = only(columns([right, left]))
    expect(column.label).toBe("atropine 0.05 %")
    expect(column.exposures.map(({ eye, fromAge }) => [eye, fromAge])).toEqual([
      [0, age("2024-01-01")],
      [1, age("2025-01-01")],
    ])
    expect(column.stretches).toEqual([[age("2024-01-01"), Number.POSITIVE_INFINITY]])
    expect(column.begins).toEqual([age("2024-01-01"), age("2025-01-01")])
  })

  it("entered for each eye is the same as for both", () => {
    const each = columns([right, { ...right, eye: "left" }])
    expect(each).toEqual(columns([drops("2024-01-01")]))
  })

  it("does not begin the treatment of the other eye anew", () => {
    const found = columns([drops("2022-01-01"), { ...optical("multifocal-lens", "2024-01-01"), eye: "left" }])
    const alone = found.find(({ key }) => key === "atropine 0.05 %")
    expect(alone?.begins).toEqual([age("2022-01-01"), age("2022-01-01")])
  })
})
