import type { LmsReference, NormalReference, SplitNormalReference } from "../../evidence/types.js"
import { normalQuantile } from "../numeric/normal.js"
import type { Distribution } from "./distribution.js"
import { type Lms, lmsValue, lmsZ } from "./lms.js"
import { cubicAtAge, lineAtAge } from "./rows-at-age.js"

// A fitted shape has no printed end. It is named out to the centiles 2 and 98, the outermost that the evidence tabulates
// from one; a few hundred children do not fix it farther out (our own cut).
const OUTERMOST_FITTED = { lowest: 2, highest: 98 } as const

/** L and S by straight line over age, M by monotone cubic; finished z are never interpolated. */
export function lmsDistribution(rows: LmsReference["rows"], ageYears: number): Distribution {
  const lms: Lms = {
    l: lineAtAge(rows, ageYears, (row) => row.l),
    m: cubicAtAge(rows, ageYears, (row) => row.m),
    s: lineAtAge(rows, ageYears, (row) => row.s),
  }
  return {
    ...OUTERMOST_FITTED,
    zAt: (value) => (value > 0 ? lmsZ({ value, ...lms }) : null),
    valueAt: (z) => lmsValue({ z, ...lms }),
  }
}

/** Mean by monotone cubic over age, SD by straight line. */
export function normalDistribution(rows: NormalReference["rows"], ageYears: number): Distribution {
  const mean = cubicAtAge(rows, ageYears, (row) => row.mean)
  const sd = lineAtAge(rows, ageYears, (row) => row.sd)
  return {
    ...OUTERMOST_FITTED,
    zAt: (value) => (value - mean) / sd,
    valueAt: (z) => mean + sd * z,
  }
}

/**
 * Two half normals that meet at the median, with the spreads of p3 and p97: for a refraction, which changes sign and so
 * cannot be an L-M-S. Each centile by monotone cubic over age.
 */
export function splitNormalDistribution(rows: SplitNormalReference["rows"], ageYears: number): Distribution {
  const median = cubicAtAge(rows, ageYears, (row) => row.p50)
  const z97 = normalQuantile(0.97)
  const sdBelow = (median - cubicAtAge(rows, ageYears, (row) => row.p3)) / z97
  const sdAbove = (cubicAtAge(rows, ageYears, (row) => row.p97) - median) / z97
  return {
    lowest: 3,
    highest: 97,
    zAt: (value) => (value - median) / (value < median ? sdBelow : sdAbove),
    valueAt: (z) => median + z * (z < 0 ? sdBelow : sdAbove),
  }
}
