import type { Chance } from "../assessment.js"
import { ageYears } from "../calendar.js"
import type { CalendarDate } from "../course.js"
import type { ChildModel } from "../growth/child-model.js"
import type { Observation } from "../growth/observations.js"
import { type Posterior, paceMultiple } from "../growth/posterior.js"
import type { Study } from "../growth/study.js"
import { unwhitened, type Whitened, whiten } from "../growth/whiten.js"
import { spreadPoints } from "../numeric/low-discrepancy.js"
import { detectableChangeMm, startingFigure } from "./detectable-change.js"
import { type Weighing, waldLimits } from "./finding.js"

export interface PlannedReview {
  readonly step: string
  readonly date: CalendarDate
}

const DRAWS = 128
const NEGLIGIBLE = 1e-6
const PACE_NODES = 7
const PACE_NODES_PER_SD = 2

/**
 * The chance that there is an answer, right or wrong, at or before each coming review: once if the treatment
 * works as in the trials, once if it does nothing.
 *
 * The coming figures are appended to the child's factor, so that whitened they are independent normals around a
 * mean that is linear in pace and effect. Over evenly spread futures the likelihood ratio is followed from review
 * to review. Two simplifications, both checked by calibration (test/validation/long): dioptres per mm at its mean,
 * and effects of earlier treatments at their posterior means.
 */
export function chances({
  study,
  weighed,
  reviews,
  plannedStop,
}: {
  study: Study
  weighed: Weighing
  reviews: readonly PlannedReview[]
  plannedStop: CalendarDate | null
}): readonly Chance[] {
  const { tested } = study
  const coming = reviews.filter((review) => review.date > study.asOf)
  if (!tested || coming.length === 0) return []
  const born = study.course.child.born
  const ages = coming.map((review) => ageYears({ born, on: review.date }))
  const future = futureFigures(study.lengths, ages)
  if (future.length === 0) return []

  const endAge = plannedStop === null ? Number.POSITIVE_INFINITY : ageYears({ born, on: plannedStop })
  const model: ChildModel = {
    ...study.model,
    observations: [...study.model.observations, ...future],
    columns: study.model.columns.map((column) => ({
      ...column,
      exposures: column.exposures.map((e) => ({
        ...e,
        toAge: Math.min(e.toAge, Math.max(endAge, e.fromAge)),
      })),
    })),
  }
  const index = model.columns.findIndex((column) => column.key === tested.key)
  const path = pathOf({ study, model, index, ages, weighed })
  const { upper, lower } = waldLimits(study.settings)
  const limits = { upper: Math.log(upper), lower: Math.log(lower) }
  const ifItWorks = answered(path, weighed.works, index, limits)
  const ifNot = answered(path, weighed.doesNothing, index, limits)
  return coming.map((review, r) => ({
    review: review.date,
    step: review.step,
    ifItWorks: ifItWorks[r] as number,
    ifNot: ifNot[r] as number,
  }))
}

/** Both eyes measured as at the last visit with a length: same instrument, same noise. */
function futureFigures(lengths: readonly Observation[], ages: readonly number[]): Observation[] {
  const last = lengths.at(-1)
  if (!last) return []
  const latest = lengths.filter((figure) => figure.visit === last.visit)
  return ages.flatMap((age, r) =>
    latest.map((figure) => ({ ...figure, ageYears: age, value: 0, visit: -1 - r })),
  )
}

/** What the ratio needs at one review: the folded Gram entries that do not depend on the coming figures. */
interface Stop {
  readonly rows: readonly number[]
  readonly counts: boolean
  readonly nn: number
  readonly nc: number
  readonly cc: number
}

interface Path {
  readonly whitened: Whitened
  readonly stops: readonly Stop[]
  /** Whitened natural growth with earlier treatments folded in, and exposed growth of the tested one. */
  readonly n: Float64Array
  readonly c: Float64Array
  readonly start: { readonly yn: number; readonly yc: number }
  readonly prior: { readonly mean: number; readonly sd: number }
  readonly logPaceSd: number
  readonly offset: number
}

function pathOf(input: {
  study: Study
  model: ChildModel
  index: number
  ages: readonly number[]
  weighed: Weighing
}): Path {
  const { study, model, index, ages, weighed } = input
  const whitened = whiten(unwhitened(model), study.evidence.growth.values.dioptresPerMm.value)
  const { columns, values, rows } = whitened
  const known = study.model.observations.length
  const others = model.columns.map((_, j) => (j === index ? 0 : meanWithheld(weighed.works, j)))
  const n = new Float64Array(rows)
  const c = new Float64Array(rows)
  for (let i = 0; i < rows; i++) {
    const at = i * columns
    n[i] = others.reduce((sum, w, j) => sum - w * (values[at + 2 + j] as number), values[at + 1] as number)
    c[i] = values[at + 2 + index] as number
  }
  let [yn, yc, nn, nc, cc] = [0, 0, 0, 0, 0]
  const add = (i: number) => {
    nn += (n[i] as number) ** 2
    nc += (n[i] as number) * (c[i] as number)
    cc += (c[i] as number) ** 2
  }
  for (let i = 0; i < known; i++) {
    add(i)
    yn += (values[i * columns] as number) * (n[i] as number)
    yc += (values[i * columns] as number) * (c[i] as number)
  }
  const now = { nn, nc, cc }
  const stops = ages.map((age): Stop => {
    const ofReview = model.observations.flatMap((figure, i) =>
      i >= known && figure.ageYears === age ? [i] : [],
    )
    ofReview.forEach(add)
    return { rows: ofReview, counts: longEnough(study, index, age), nn, nc, cc }
  })
  const prior = (model.columns[index] as (typeof model.columns)[number]).prior
  const path = { whitened, stops, n, c, start: { yn, yc }, prior, logPaceSd: study.factored.logPaceSd }
  // The ratio as it stands is known exactly; the path starts from it.
  return { ...path, offset: weighed.logRatio - logRatio(gridOf(path, now), yn, yc) }
}

function longEnough(study: Study, index: number, age: number): boolean {
  const last = study.lengths.at(-1)
  const column = study.model.columns[index]
  if (!last || !column) return false
  const first = startingFigure(
    study.lengths.filter((figure) => figure.eye === last.eye),
    column.startAge,
  )
  const from = Math.max(column.startAge, study.model.originAge)
  const naturalMm = study.natural.cumulativeMm(age) - study.natural.cumulativeMm(from)
  return naturalMm >= detectableChangeMm({ first, last, parameters: study.evidence.growth })
}

const meanWithheld = (posterior: Posterior, j: number): number =>
  posterior.nodes.reduce((sum, node) => sum + node.weight * (node.mean[j] ?? 0), 0)

/** The pace nodes of one stop with everything that does not depend on the coming figures worked out. */
interface Grid {
  readonly size: number
  readonly multiples: Float64Array
  /** Log weight without the figures: prior of the pace and -m^2 N'N / 2. */
  readonly base: Float64Array
  /** Log of the effect's own factor at y'C = 0, its slope, and the quadratic around `centre`. */
  readonly shift: Float64Array
  readonly slope: Float64Array
  readonly curve: Float64Array
  readonly centre: Float64Array
}

function gridOf(
  path: Pick<Path, "prior" | "logPaceSd">,
  { nn, nc, cc }: Pick<Sums, "nn" | "nc" | "cc">,
): Grid {
  const { mean, sd } = path.prior
  const size = 2 * PACE_NODES + 1
  const column = (of: (m: number, z: number) => number) =>
    Float64Array.from({ length: size }, (_, i) => {
      const z = (i - PACE_NODES) / PACE_NODES_PER_SD
      return of(paceMultiple(z, path.logPaceSd), z)
    })
  const grown = (m: number) => 1 + m * m * sd * sd * cc
  return {
    size,
    multiples: column((m) => m),
    base: column((m, z) => -(z * z) / 2 - (m * m * nn) / 2),
    shift: column((m) => m * m * mean * nc - (m * m * mean * mean * cc) / 2 - Math.log(grown(m)) / 2),
    slope: column((m) => -m * mean),
    curve: column((m) => (m * m * sd * sd) / (2 * grown(m))),
    centre: column((m) => m * nc - m * mean * cc),
  }
}

interface Sums {
  readonly nn: number
  readonly nc: number
  readonly cc: number
  readonly yn: number
  readonly yc: number
}

/** Log likelihood ratio from y'N and y'C; y'y is common to both hypotheses and left out. */
function logRatio(grid: Grid, yn: number, yc: number): number {
  const { size, multiples, base, shift, slope, curve, centre } = grid
  let high = Number.NEGATIVE_INFINITY
  for (let g = 0; g < size; g++) {
    const log = (base[g] as number) + (multiples[g] as number) * yn
    if (log > high) high = log
  }
  let works = 0
  let nothing = 0
  for (let g = 0; g < size; g++) {
    const log = (base[g] as number) + (multiples[g] as number) * yn - high
    // Beyond e^-20 of the likeliest pace a node cannot move the ratio.
    if (log < -20) continue
    const off = yc - (centre[g] as number)
    nothing += Math.exp(log)
    works += Math.exp(
      log + (shift[g] as number) + (slope[g] as number) * yc + (curve[g] as number) * off * off,
    )
  }
  return Math.log(works / nothing)
}

/** Share of futures answered at or before each stop, futures drawn from what is believed under one hypothesis. */
function answered(
  path: Path,
  belief: Posterior,
  index: number,
  limits: { upper: number; lower: number },
): number[] {
  const { stops, n, c, start } = path
  const nodes = belief.nodes.filter((node) => node.weight > NEGLIGIBLE)
  const figures = stops.reduce((sum, stop) => sum + stop.rows.length, 0)
  const dimensions = 2 + figures
  const points = spreadPoints({ points: DRAWS, dimensions })
  const grids = stops.map((stop) => gridOf(path, stop))
  const k = path.whitened.columns - 2
  const hits = new Array<number>(stops.length).fill(0)
  for (let draw = 0; draw < DRAWS; draw++) {
    const at = draw * dimensions
    const node = pick(nodes, points[at] as number)
    const variance = node.covariance[index * k + index] ?? 0
    const withheld = (node.mean[index] as number) + Math.sqrt(variance) * (points[at + 1] as number)
    let { yn, yc } = start
    let next = at + 2
    for (let r = 0; r < stops.length; r++) {
      const stop = stops[r] as Stop
      for (const i of stop.rows) {
        const mean = node.multiple * ((n[i] as number) - withheld * (c[i] as number))
        // The whitened start lengths are zero in the mean here: they cancel from every future figure.
        const y = mean + (points[next++] as number)
        yn += y * (n[i] as number)
        yc += y * (c[i] as number)
      }
      if (!stop.counts) continue
      const ratio = path.offset + logRatio(grids[r] as Grid, yn, yc)
      if (ratio >= limits.upper || ratio <= limits.lower) {
        for (let later = r; later < stops.length; later++) hits[later] = (hits[later] as number) + 1
        break
      }
    }
  }
  return hits.map((count) => count / DRAWS)
}

function pick<T extends { weight: number }>(nodes: readonly T[], u: number): T {
  let left = u * nodes.reduce((sum, node) => sum + node.weight, 0)
  for (const node of nodes) {
    left -= node.weight
    if (left <= 0) return node
  }
  return nodes.at(-1) as T
}
