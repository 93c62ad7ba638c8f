import type { Chance } from "../assessment.js"
import { ageYears } from "../calendar.js"
import type { CalendarDate } from "../course.js"
import type { ChildModel } from "../growth/child-model.js"
import type { Observation } from "../growth/observations.js"
import type { Posterior } from "../growth/posterior.js"
import type { Study } from "../growth/study.js"
import { spreadPoints } from "../numeric/low-discrepancy.js"
import { normalCdf, normalQuantile } from "../numeric/normal.js"
import { type Weighing, waldLimits } from "./finding.js"
import { type RatioPath, type RatioPoint, ratioPath, type Stop } from "./ratio-path.js"

export interface PlannedReview {
  readonly step: string
  readonly date: CalendarDate
}

const FUTURES = 48
const NEGLIGIBLE = 1e-6

/**
 * The chance that there is an answer, right or wrong, at or before each coming review: once if the treatment
 * works as in the trials, once if it does nothing.
 *
 * The coming figures are appended to the child's factor, so that whitened they are independent normals around a
 * mean that is linear in pace and effect. Over evenly spread futures the likelihood ratio is followed from review
 * to review (ratio-path.ts). Three simplifications, all checked by calibration (test/validation/long): dioptres per mm at its mean,
 * effects of earlier treatments at their posterior means, and the ratio straight over the figures of one review.
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
  const path = ratioPath({ study, model, index, ages, weighed })
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

/**
 * Chance of an answer at or before each stop, if one hypothesis holds. Futures are followed that have no answer yet:
 * at each stop the chance that the ratio leaves its limits is worked out (the ratio taken as straight in the coming
 * figures), and the future goes on within them. So no chance is counted by hits and misses.
 */
function answered(
  { start, stops }: RatioPath,
  belief: Posterior,
  index: number,
  limits: { upper: number; lower: number },
): number[] {
  const nodes = belief.nodes
    .filter((node) => node.weight > NEGLIGIBLE)
    .toSorted((a, b) => a.multiple - b.multiple)
  const columns = belief.factored.model.columns.length
  const dimensions = 2 + 2 * stops.length
  const { uniform, normal } = spreadPoints({ points: FUTURES, dimensions })
  const chances = new Array<number>(stops.length).fill(0)
  const point: RatioPoint = { log: 0, slopeYn: 0, slopeYc: 0 }
  for (let future = 0; future < FUTURES; future++) {
    const at = future * dimensions
    const node = pick(nodes, uniform[at] as number)
    const sd = Math.sqrt(node.covariance[index * columns + index] ?? 0)
    const m = node.multiple
    const w = (node.mean[index] as number) + sd * (normal[at + 1] as number)
    let { yn, yc } = start
    let open = 1
    for (let r = 0; r < stops.length; r++) {
      const { added, counts, ratio } = stops[r] as Stop
      yn += m * (added.nn - w * added.nc)
      yc += m * (added.nc - w * added.cc)
      ratio(yn, yc, point)
      // Covariance of the coming y'N and y'C with the ratio, and the SD of the ratio itself.
      const pullYn = added.nn * point.slopeYn + added.nc * point.slopeYc
      const pullYc = added.nc * point.slopeYn + added.cc * point.slopeYc
      const spread = Math.sqrt(Math.max(1e-30, pullYn * point.slopeYn + pullYc * point.slopeYc))
      const low = counts ? normalCdf((limits.lower - point.log) / spread) : 0
      const high = counts ? normalCdf((limits.upper - point.log) / spread) : 1
      const stays = Math.max(0, high - low)
      open *= stays
      chances[r] = (chances[r] as number) + 1 - open
      if (open < NEGLIGIBLE || r === stops.length - 1) {
        for (let later = r + 1; later < stops.length; later++)
          chances[later] = (chances[later] as number) + 1 - open
        break
      }
      const along = drawnNormal(low + (uniform[at + 2 + r] as number) * stays)
      // What is left of the two-dimensional step once its part along the ratio is taken out lies on one line.
      const across = Math.sqrt(Math.max(0, added.nn - (pullYn / spread) ** 2))
      const sign = added.nc - (pullYn * pullYc) / spread ** 2 < 0 ? -1 : 1
      const acrossYc = sign * Math.sqrt(Math.max(0, added.cc - (pullYc / spread) ** 2))
      const side = normal[at + 2 + stops.length + r] as number
      yn += (pullYn / spread) * along + across * side
      yc += (pullYc / spread) * along + acrossYc * side
    }
  }
  return chances.map((sum) => sum / FUTURES)
}

const QUANTILE_STEPS = 1024
const quantiles = Float64Array.from({ length: QUANTILE_STEPS + 1 }, (_, i) =>
  normalQuantile(Math.min(Math.max(i / QUANTILE_STEPS, 1e-4), 1 - 1e-4)),
)

/** A normal quantile by a straight line between 1,024 exact ones: for drawing futures, where more would be thrown away. */
function drawnNormal(p: number): number {
  const place = Math.min(p * QUANTILE_STEPS, QUANTILE_STEPS - 1e-9)
  const i = Math.floor(place)
  const below = quantiles[i] as number
  return below + (place - i) * ((quantiles[i + 1] as number) - below)
}

function pick<T extends { weight: number }>(nodes: readonly T[], u: number): T {
  let left = u * nodes.reduce((sum, node) => sum + node.weight, 0)
  for (const node of nodes) {
    left -= node.weight
    if (left <= 0) return node
  }
  return nodes.at(-1) as T
}
