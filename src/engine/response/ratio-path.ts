import type { ChildModel } from "../growth/child-model.js"
import { type Posterior, paceMultiple } from "../growth/posterior.js"
import type { Study } from "../growth/study.js"
import { unwhitened, whiten } from "../growth/whiten.js"
import { detectableChangeMm, startingFigure } from "./detectable-change.js"
import { lengthsUnder, type Weighing, watchedMm } from "./finding.js"

/** Inner products of the whitened columns of natural (N) and exposed growth (C). */
export interface Products {
  readonly nn: number
  readonly nc: number
  readonly cc: number
}

/** One coming review: what it adds to the products, and the log likelihood ratio once it is there. */
export interface Stop {
  readonly added: Products
  /** False while the eye has not been watched long enough for any finding. */
  readonly counts: boolean
  readonly ratio: LogRatio
}

/** How the likelihood ratio goes on from today, review by review, as a function of y'N and y'C. */
export interface RatioPath {
  readonly start: { readonly yn: number; readonly yc: number }
  readonly stops: readonly Stop[]
}

/** Log likelihood ratio and its slopes at some y'N and y'C; written into `out`, since it is asked thousands of times. */
export type LogRatio = (yn: number, yc: number, out: RatioPoint) => void

export interface RatioPoint {
  log: number
  slopeYn: number
  slopeYc: number
}

/**
 * The coming figures are appended to the child's factor, so that whitened they are independent normals around a mean
 * that is linear in pace and effect; earlier treatments are folded into N at their posterior means.
 */
export function ratioPath({
  study,
  model,
  index,
  ages,
  weighed,
}: {
  study: Study
  /** The child's model with the coming figures appended. */
  model: ChildModel
  /** Place of the tested treatment among the columns. */
  index: number
  ages: readonly number[]
  weighed: Weighing
}): RatioPath {
  const { columns, values, rows } = whiten(
    unwhitened(model),
    study.evidence.growth.values.dioptresPerMm.value,
  )
  const others = model.columns.map((_, j) => (j === index ? 0 : meanWithheld(weighed.works, j)))
  const known = study.model.observations.length
  const prior = (model.columns[index] as (typeof model.columns)[number]).prior
  const sums = { nn: 0, nc: 0, cc: 0, yn: 0, yc: 0 }
  const add = (i: number) => {
    const at = i * columns
    const n = others.reduce((sum, w, j) => sum - w * (values[at + 2 + j] as number), values[at + 1] as number)
    const c = values[at + 2 + index] as number
    sums.nn += n * n
    sums.nc += n * c
    sums.cc += c * c
    sums.yn += (values[at] as number) * n
    sums.yc += (values[at] as number) * c
  }
  for (let i = 0; i < known; i++) add(i)
  const start = { yn: sums.yn, yc: sums.yc }
  const logPaceSd = study.factored.logPaceSd
  // The ratio as it stands is known exactly; the path starts from it.
  const point: RatioPoint = { log: 0, slopeYn: 0, slopeYc: 0 }
  logRatio({ products: sums, prior, logPaceSd, offset: 0 })(start.yn, start.yc, point)
  const offset = weighed.logRatio - point.log

  let row = known
  const stops = ages.map((age): Stop => {
    const before = { ...sums }
    for (; row < rows && (model.observations[row]?.ageYears ?? 0) <= age; row++) add(row)
    return {
      added: { nn: sums.nn - before.nn, nc: sums.nc - before.nc, cc: sums.cc - before.cc },
      counts: longEnough(study, index, age),
      ratio: logRatio({ products: sums, prior, logPaceSd, offset }),
    }
  })
  return { start, stops }
}

const meanWithheld = (posterior: Posterior, j: number): number =>
  posterior.nodes.reduce((sum, node) => sum + node.weight * (node.mean[j] ?? 0), 0)

function longEnough(study: Study, index: number, age: number): boolean {
  const column = study.model.columns[index]
  const lengths = column ? lengthsUnder(study, column) : []
  const last = lengths.at(-1)
  if (!last || !column) return false
  const first = startingFigure(
    lengths.filter((figure) => figure.eye === last.eye),
    column.startAge,
  )
  return (
    watchedMm(study, column, age) >= detectableChangeMm({ first, last, parameters: study.evidence.growth })
  )
}

const PACE_NODES = 7
const PACE_NODES_PER_SD = 2
/** A node whose weight is below e^-9 of the likeliest does not move the ratio. */
const NEGLIGIBLE_LOG = -9

/** The ratio over a few pace nodes; y'y is common to both hypotheses and left out. */
function logRatio({
  products: { nn, nc, cc },
  prior: { mean, sd },
  logPaceSd,
  offset,
}: {
  products: Products
  prior: { readonly mean: number; readonly sd: number }
  logPaceSd: number
  offset: number
}): LogRatio {
  const size = 2 * PACE_NODES + 1
  const zs = Float64Array.from({ length: size }, (_, i) => (i - PACE_NODES) / PACE_NODES_PER_SD)
  const multiples = zs.map((z) => paceMultiple(z, logPaceSd))
  const base = multiples.map((m, i) => -((zs[i] as number) ** 2) / 2 - (m * m * nn) / 2)
  // The effect's own factor, integrated: exp(shift - m mean y'C + curve (y'C - centre)^2).
  const grown = multiples.map((m) => 1 + m * m * sd * sd * cc)
  const shift = multiples.map(
    (m, i) => m * m * mean * nc - (m * m * mean * mean * cc) / 2 - Math.log(grown[i] as number) / 2,
  )
  const curve = multiples.map((m, i) => (m * m * sd * sd) / (2 * (grown[i] as number)))
  const centre = multiples.map((m) => m * nc - m * mean * cc)
  return (yn, yc, out) => {
    let high = Number.NEGATIVE_INFINITY
    for (let g = 0; g < size; g++) {
      const log = (base[g] as number) + (multiples[g] as number) * yn
      if (log > high) high = log
    }
    let [works, worksYn, worksYc, nothing, nothingYn] = [0, 0, 0, 0, 0]
    for (let g = 0; g < size; g++) {
      const m = multiples[g] as number
      const log = (base[g] as number) + m * yn - high
      if (log < NEGLIGIBLE_LOG) continue
      const off = yc - (centre[g] as number)
      const bend = (curve[g] as number) * off
      const nil = Math.exp(log)
      const one = Math.exp(log + (shift[g] as number) - m * mean * yc + bend * off)
      nothing += nil
      nothingYn += nil * m
      works += one
      worksYn += one * m
      worksYc += one * (2 * bend - m * mean)
    }
    out.log = Math.log(works / nothing) + offset
    out.slopeYn = worksYn / works - nothingYn / nothing
    out.slopeYc = worksYc / works
  }
}
