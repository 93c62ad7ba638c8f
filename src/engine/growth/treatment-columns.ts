import type { GrowthParameters } from "../../evidence/types.js"
import { ageYears } from "../calendar.js"
import type { CalendarDate, Course, Treatment } from "../course.js"
import { realTreatments } from "../protocol/treatment-course.js"
import { treatmentName } from "../treatment-name.js"
import { bottleNights } from "./bottle-nights.js"
import { overlap, type Stretch, without } from "./stretch.js"
import { type TreatmentPrior, treatmentPrior } from "./treatment-prior.js"

/** A stretch of life under one treatment and the share of its nights that were covered. Ages in years. */
export interface Exposure {
  readonly fromAge: number
  /** Infinity while the treatment goes on. */
  readonly toAge: number
  readonly share: number
}

/** One treatment, or one combination, as a column of the model: what it may withhold and when. */
export interface TreatmentColumn extends TreatmentPrior {
  readonly key: string
  readonly label: string
  /** When it was prescribed, covered nights or not; empty for what only filled gaps of a combination. */
  readonly stretches: readonly Stretch[]
  readonly startAge: number
  /** Age at which it ended; Infinity while it goes on. */
  readonly endAge: number
  readonly exposures: readonly Exposure[]
  /** Share of nights covered from start to `asOf`; null where no supply is recorded. */
  readonly coverage: number | null
}

interface Draft {
  readonly parts: readonly Treatment[]
  readonly stretches: Stretch[]
  readonly exposures: Exposure[]
  coverage: number | null
}

const ALWAYS: Stretch = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]

/**
 * The treatments of a course as columns, in order of their start. A treatment that comes back is the same column;
 * treatments given together are a column of their own, since fractions never add up (evidence/treatments). On a night
 * without a bottle what was given beside the drops goes on alone. Nights beyond `asOf` count as covered at the share
 * seen so far.
 */
export function treatmentColumns({
  course,
  asOf,
  parameters,
}: {
  course: Course
  asOf: CalendarDate
  parameters: GrowthParameters
}): readonly TreatmentColumn[] {
  const age = (date: CalendarDate) => ageYears({ born: course.child.born, on: date })
  const columns = new Map<string, Draft>()
  const draftOf = (parts: readonly Treatment[]): Draft => {
    const key = keyOf(parts)
    const known = columns.get(key) ?? { parts, stretches: [], exposures: [], coverage: null }
    columns.set(key, known)
    return known
  }
  for (const { parts, stretch } of prescribed(course, age)) draftOf(parts).stretches.push(stretch)
  for (const column of [...columns.values()]) {
    const bottles = bottleNights(course.supplies ?? [], column.parts, age)
    const beside = column.parts.filter((part) => part.kind !== "atropine")
    column.coverage = bottles === null ? null : shareCovered(column.stretches, bottles, age(asOf))
    for (const stretch of column.stretches) {
      const { on, off } = nights({ stretch, bottles, share: column.coverage ?? 1, asOfAge: age(asOf) })
      column.exposures.push(...on)
      if (beside.length > 0 && off.length > 0) draftOf(beside).exposures.push(...off)
    }
  }
  return [...columns].map(([key, { parts, stretches, exposures, coverage }]) => ({
    key,
    label: key,
    ...treatmentPrior(parts, parameters),
    stretches,
    startAge: stretches[0]?.[0] ?? exposures[0]?.fromAge ?? Number.POSITIVE_INFINITY,
    endAge: stretches.at(-1)?.[1] ?? exposures.at(-1)?.toAge ?? Number.POSITIVE_INFINITY,
    exposures: exposures.toSorted((a, b) => a.fromAge - b.fromAge),
    coverage,
  }))
}

const keyOf = (parts: readonly Treatment[]): string => parts.map(treatmentName).sort().join(" with ")

/** Life cut where a treatment begins or ends: what was prescribed together in each stretch, in order. */
function prescribed(
  course: Course,
  age: (date: CalendarDate) => number,
): { parts: readonly Treatment[]; stretch: Stretch }[] {
  const given = realTreatments(course).map((treatment) => {
    const stretch: Stretch = [
      age(treatment.from),
      treatment.to ? age(treatment.to) : Number.POSITIVE_INFINITY,
    ]
    return { treatment, stretch }
  })
  const edges = [...new Set(given.flatMap(({ stretch }) => stretch))].sort((a, b) => a - b)
  return edges.slice(0, -1).flatMap((from, i) => {
    const stretch: Stretch = [from, edges[i + 1] as number]
    const together = given.filter((one) => one.stretch[0] <= stretch[0] && one.stretch[1] >= stretch[1])
    // A treatment entered twice over the same days is still one.
    const parts = [
      ...new Map(together.map(({ treatment }) => [treatmentName(treatment), treatment])).values(),
    ]
    return parts.length === 0 ? [] : [{ parts, stretch }]
  })
}

/** The nights of a prescribed stretch with the drops, and those without. */
function nights(input: {
  stretch: Stretch
  bottles: readonly Stretch[] | null
  share: number
  asOfAge: number
}): { on: Exposure[]; off: Exposure[] } {
  const { stretch, bottles, share, asOfAge } = input
  const exposure = ([fromAge, toAge]: Stretch, of = 1): Exposure => ({ fromAge, toAge, share: of })
  if (bottles === null) return { on: [exposure(stretch)], off: [] }
  const past = overlap(stretch, [ALWAYS[0], asOfAge])
  const coming = overlap(stretch, [asOfAge, ALWAYS[1]])
  return {
    on: [
      ...(past ? coveredIn(past, bottles).map((s) => exposure(s)) : []),
      ...(coming ? [exposure(coming, share)] : []),
    ],
    off: [
      ...(past ? without(past, bottles).map((s) => exposure(s)) : []),
      ...(coming && share < 1 ? [exposure(coming, 1 - share)] : []),
    ],
  }
}

function coveredIn(stretch: Stretch, bottles: readonly Stretch[]): Stretch[] {
  return bottles.flatMap((bottle) => {
    const shared = overlap(stretch, bottle)
    return shared ? [shared] : []
  })
}

function shareCovered(stretches: readonly Stretch[], bottles: readonly Stretch[], asOfAge: number): number {
  const length = (all: readonly Stretch[]) => all.reduce((sum, [from, to]) => sum + to - from, 0)
  const past = coveredIn([ALWAYS[0], asOfAge], stretches)
  return past.length === 0 ? 1 : length(past.flatMap((stretch) => coveredIn(stretch, bottles))) / length(past)
}
