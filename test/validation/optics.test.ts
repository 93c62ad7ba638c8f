import { describe, expect, it } from "vitest"
import {
  decimalFromLogMAR,
  logMARFromDecimal,
  logMARFromSnellen,
  meanLogMAR,
  snellenFromLogMAR,
} from "../../src/engine/optics/acuity.js"
import { corneaRadiusRatio } from "../../src/engine/optics/cornea-radius-ratio.js"
import { refractionChangeOfGrowth } from "../../src/engine/optics/growth-as-refraction.js"
import { lensOfPowerVector, powerVector } from "../../src/engine/optics/power-vector.js"
import { vertexCompensated } from "../../src/engine/optics/vertex-compensated.js"
import { decimalAcuity, logMAR } from "../../src/engine/units.js"
import clinical from "../../src/evidence/tables/clinical/checks.json" with { type: "json" }
import norms from "../../src/evidence/tables/clinical/safety-norms.json" with { type: "json" }

// Outside values: the worked checks K21 to K39 and K51, K52 of the clinical evidence; each row names its source
// (Thibos 1997, a printed acuity table, printed vertex examples) and its own tolerance.
interface Row {
  readonly id: string
  readonly topic: string
  readonly input: Readonly<Record<string, unknown>>
  readonly expected: unknown
  readonly tolerance: number | null
  readonly source_id: string
}
const rows: readonly Row[] = clinical.checks
const about = (...topics: string[]) => rows.filter((row) => topics.includes(row.topic))
const numbers = (row: Row) => row.input as Readonly<Record<string, number>>

function near(actual: readonly number[], row: Row) {
  const expected = [row.expected].flat() as number[]
  expect(actual).toHaveLength(expected.length)
  for (const [i, value] of actual.entries()) {
    expect(Math.abs(value - expected[i]!)).toBeLessThanOrEqual(row.tolerance!)
  }
}

describe("lens power at another distance", () => {
  it.each(about("vertex", "vertex, moved away"))("$id: $input.F D moved $input.d_mm mm", (row) => {
    const { F, d_mm } = numbers(row)
    near([vertexCompensated({ lens: { sphere: F! }, towardEyeMm: d_mm! }).sphere], row)
  })

  it.each(about("vertex, toric"))("$id: each meridian, the axis stays", (row) => {
    const { S, C, axis, d_mm } = numbers(row)
    const lens = vertexCompensated({ lens: { sphere: S!, cylinder: C, axis }, towardEyeMm: d_mm! })
    near([lens.sphere, lens.cylinder], row)
    expect(lens.axis).toBe(axis)
  })

  // Printed to two or three decimals.
  it.each(norms.vertex.published_examples)("$F D at $d_mm mm is $Fc", ({ F, d_mm, Fc }) => {
    expect(Math.abs(vertexCompensated({ lens: { sphere: F }, towardEyeMm: d_mm }).sphere - Fc)).toBeLessThan(
      0.005,
    )
  })
})

describe("power vectors", () => {
  it.each(about("power vector", "power vector, plus cylinder"))(
    "$id: of $input.S $input.C x $input.axis",
    (row) => {
      const { S, C, axis } = numbers(row)
      const { m, j0, j45 } = powerVector({ sphere: S!, cylinder: C, axis })
      near([m, j0, j45], row)
    },
  )

  it.each(about("power vector, inverse"))("$id: back to sphere, cylinder and axis", (row) => {
    const { M, J0, J45 } = numbers(row)
    const { sphere, cylinder, axis } = lensOfPowerVector({ m: M!, j0: J0!, j45: J45! })
    near([sphere, cylinder, axis], row)
  })
})

describe("acuity scales", () => {
  it.each(about("logMAR").filter((row) => "snellen" in row.input))("$id: $input.snellen", (row) => {
    const answer = logMARFromSnellen(row.input.snellen as string)
    near(["logMAR" in answer ? answer.logMAR : Number.NaN], row)
  })

  it.each(about("logMAR").filter((row) => "step" in row.input))(
    "$id: one chart line is this factor",
    (row) => {
      near([1 / decimalFromLogMAR(logMAR(numbers(row).step!))], row)
    },
  )

  it.each(about("acuity averaging"))("$id: averaged in logMAR", (row) => {
    const decimals = row.input.decimals as readonly number[]
    near(
      [decimalFromLogMAR(meanLogMAR(decimals.map((value) => logMARFromDecimal(decimalAcuity(value)))))],
      row,
    )
  })

  // The printed table of acuity scales (source HOLLADAY-TABLE), all 14 chart lines in both units of distance.
  it.each(norms.acuity_scales.rows)("the chart line $logMAR is $feet and $metres", (line) => {
    const value = logMAR(line.logMAR)
    expect(snellenFromLogMAR({ logMAR: value, numerator: 20 })).toBe(line.feet)
    expect(snellenFromLogMAR({ logMAR: value, numerator: 6 })).toBe(line.metres.replace(/\.0$/, ""))
    // Chart decimals are preferred numbers printed to two places: within 1 % of the power of ten, or half a unit.
    const allowed = Math.max(0.005, 0.01 * line.decimal)
    expect(Math.abs(decimalFromLogMAR(value) - line.decimal)).toBeLessThanOrEqual(allowed)
  })

  it.each(norms.acuity_scales.off_scale)("$feet, off the chart's lines, is $logMAR", (line) => {
    const answer = logMARFromSnellen(line.feet)
    expect(Math.abs(("logMAR" in answer ? answer.logMAR : Number.NaN) - line.logMAR)).toBeLessThan(0.0051)
  })
})

describe("length, cornea and refraction", () => {
  it.each(about("AL precision"))("$id: a length error as an error of refraction", (row) => {
    const { mm, D } = numbers(row)
    const change = refractionChangeOfGrowth({ growthMm: mm!, dioptresPerMm: row.expected as number })
    expect(Math.abs(-change - D!)).toBeLessThanOrEqual(row.tolerance!)
  })

  // K39 gives the mean AL/CR of a published sample; an eye built to have it must show it.
  it.each(about("AL/CR"))("$id: an eye with the mean ratio of the sample", (row) => {
    const axialLengthMm = (row.expected as number) * 7.8
    near([corneaRadiusRatio({ axialLengthMm, corneaRadius: { flat: 7.9, steep: 7.7 } })], row)
  })
})

it("no row of these topics is left out", () => {
  const ids = rows.filter(({ topic }) => /vertex|vector|logMAR|acuity|^AL\/CR|^AL precision/.test(topic))
  expect(ids.map((row) => row.id)).toEqual([
    ...["K21", "K22", "K23", "K24", "K25", "K26", "K27", "K28", "K29", "K30", "K31", "K32", "K33", "K34"],
    ...["K35", "K36", "K37", "K38", "K39", "K51", "K52"],
  ])
})
