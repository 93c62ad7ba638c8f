import { describe, expect, it } from "vitest"
import type { CentileReference, NormalReference, Provenance } from "../../evidence/types.js"
import { position } from "./position.js"
import { valueAtCentile } from "./value-at-centile.js"

// Invented references: round numbers that can be followed by hand.
const base = {
  measure: "axial-length",
  population: "invented",
  n: "1",
  instrument: "optical biometry",
  youngestAgeYears: 6,
  oldestAgeYears: 10,
  note: "",
  provenance: {} as Provenance,
} as const
const normal: NormalReference = {
  ...base,
  id: "by-sex",
  grade: "B",
  shape: "normal",
  rows: [
    { sex: "female", ageYears: 6, mean: 22, sd: 1 },
    { sex: "female", ageYears: 10, mean: 24, sd: 1 },
  ],
}
const cells: CentileReference = {
  ...base,
  id: "cells",
  grade: "B",
  shape: "centiles",
  agesAreCells: true,
  instrument: "A-scan ultrasound",
  rows: [
    { sex: "all", ageYears: 6, values: { 5: 21, 50: 22, 95: 23 } },
    { sex: "all", ageYears: 8, values: { 50: 22.5, 95: 24 } },
  ],
}
const girl = { measure: "axial-length", sex: "female", ageYears: 8 } as const

describe("a child is placed", () => {
  it("at the mean, on the 50th centile", () => {
    expect(position({ ...girl, value: 23, reference: normal })).toEqual({
      z: 0,
      centile: 50,
      reference: "by-sex",
      grade: "B",
    })
  })

  it("beyond the last centile of a fitted shape in words, with its z", () => {
    expect(position({ ...girl, value: 26, reference: normal })).toMatchObject({ z: 3, centile: "above p98" })
    expect(position({ ...girl, value: 20, reference: normal })).toMatchObject({ z: -3, centile: "below p2" })
  })

  it("beyond a printed table in words, without a z", () => {
    const six = { ...girl, ageYears: 6.4, reference: cells }
    expect(position({ ...six, value: 20.9 })).toMatchObject({ z: null, centile: "below p5" })
    expect(position({ ...six, value: 23.1 })).toMatchObject({ z: null, centile: "above p95" })
    expect(position({ ...girl, value: 22.4, reference: cells })).toMatchObject({
      z: null,
      centile: "below p50",
    })
  })

  it("exactly on an outermost centile, which is still on the table", () => {
    const answer = position({ ...girl, ageYears: 6, value: 21, reference: cells })
    expect("centile" in answer && answer.centile).toBeCloseTo(5, 9)
  })

  it("in the cell of the completed year, never between two cells", () => {
    const at = (ageYears: number) => position({ ...girl, ageYears, value: 22, reference: cells })
    expect(at(6.99)).toEqual(at(6))
    expect(at(7.5)).toHaveProperty("refused")
  })
})

describe("a child is not placed", () => {
  it.each([
    [
      { ageYears: 5.99 },
      "the reference by-sex covers 6 to 10 years for a female child; age 5.99 lies outside",
    ],
    [
      { ageYears: Number.NaN },
      "the reference by-sex covers 6 to 10 years for a female child; age NaN lies outside",
    ],
    [{ sex: "male" as const }, "the reference by-sex has no rows for a male child"],
    [{ value: 2.41 }, "axial length must be from 15 to 35 mm to be placed, not 2.41"],
    [{ value: 241 }, "axial length must be from 15 to 35 mm to be placed, not 241"],
    [
      { measure: "spherical-equivalent" as const },
      "the reference by-sex measures axial length, not spherical equivalent",
    ],
    [
      { reference: { ...normal, grade: "D" as const } },
      "the reference by-sex has grade D: for plausibility only, never for a centile",
    ],
    [
      { ageYears: 7, reference: cells },
      "the reference cells has cells for children of 6 and 8 completed years only; age 7 lies outside",
    ],
  ])("when %j", (change, refused) => {
    const answer = position({ ...girl, value: 23, reference: normal, ...change })
    expect(answer).toMatchObject({ refused, reference: expect.any(String), grade: expect.any(String) })
    expect(answer).not.toHaveProperty("centile")
  })

  it("where centiles cross", () => {
    const rows = [{ sex: "all" as const, ageYears: 6, values: { 5: 22, 50: 22 } }]
    const answer = position({ ...girl, ageYears: 6, value: 22, reference: { ...cells, rows } })
    expect(answer).toMatchObject({ refused: "centiles cross at age 6, at centile 50" })
  })
})

describe("what must be said beside a position", () => {
  const noteOf = (question: Partial<Parameters<typeof position>[0]>) => {
    const answer = position({ ...girl, ageYears: 6, value: 22, reference: cells, ...question })
    return "note" in answer ? answer.note : undefined
  }
  it("that grade C is approximate", () => {
    expect(noteOf({ reference: { ...normal, grade: "C" } })).toBe("approximate")
  })

  it("that mixed sexes read a girl too low and a boy too high", () => {
    expect(noteOf({})).toBe("the reference mixes the sexes: a girl reads too low")
    expect(noteOf({ sex: "male" })).toBe("the reference mixes the sexes: a boy reads too high")
  })

  it("that the instruments are unlike, when both are known", () => {
    expect(noteOf({ method: "optical-biometry" })).toContain(
      "measured optically, the reference by ultrasound",
    )
    expect(noteOf({ reference: normal, method: "ultrasound" })).toBe(
      "measured by ultrasound, the reference optically",
    )
    expect(noteOf({ reference: normal, method: "optical-biometry" })).toBeUndefined()
  })

  it("that only one of value and reference had cycloplegia", () => {
    const ofRefraction = (instrument: string, cycloplegic: boolean | undefined) =>
      noteOf({
        measure: "spherical-equivalent",
        value: -1,
        cycloplegic,
        reference: {
          ...base,
          id: "refraction",
          grade: "B",
          measure: "spherical-equivalent",
          shape: "split-normal",
          instrument,
          rows: [{ sex: "female", ageYears: 6, p3: -2, p50: 0, p97: 2 }],
        },
      })
    expect(ofRefraction("autorefraction without cycloplegia", true)).toBe(
      "with cycloplegia, the reference without",
    )
    expect(ofRefraction("cycloplegic autorefraction", false)).toBe("without cycloplegia, the reference with")
    expect(ofRefraction("cycloplegic autorefraction", true)).toBeUndefined()
    expect(ofRefraction("cycloplegic autorefraction", undefined)).toBeUndefined()
  })
})

describe("the value at a centile", () => {
  it("is refused beyond the outermost centile printed for that cell", () => {
    expect(valueAtCentile({ centile: 5, ageYears: 8, sex: "male", reference: cells })).toEqual({
      refused: "the reference cells gives centiles 50 to 95 for this age and sex; p5 lies outside",
    })
  })

  it("is on a straight line in z between two printed centiles", () => {
    const answer = valueAtCentile({ centile: 95, ageYears: 6, sex: "male", reference: cells })
    expect(answer).toEqual({ value: 23 })
  })
})
