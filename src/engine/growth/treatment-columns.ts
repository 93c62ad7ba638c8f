import type { GrowthParameters } from "../../evidence/types.js"
import { addDays, ageYears } from "../calendar.js"
import type { CalendarDate, Course, Supply, Treatment } from "../course.js"

/** A stretch of life under one treatment and the share of its nights that were covered. Ages in years. */
export interface Exposure {
  readonly fromAge: number
  /** Infinity while the treatment goes on. */
  readonly toAge: number
  readonly share: number
}

/** One treatment, or one combination, as a column of the model: what it may withhold and when. */
export interface TreatmentColumn {
  readonly key: string
  readonly label: string
  /** Prior of the withheld fraction for one child: mean, and SD of average and spread together. */
  readonly prior: { readonly mean: number; readonly sd: number }
  /** False when no trial was read: then nothing can be tested, only left open. */
  readonly tried: boolean
  readonly startAge: number
  /** Age at which it ended; Infinity while it goes on. */
  readonly endAge: number
  readonly exposures: readonly Exposure[]
  /** Share of nights covered from start to `asOf`; null where no supply is recorded. */
  readonly coverage: number | null
  readonly note?: string
}

/** Used for a bottle without a date: a bottle without preservative lasts a month (common practice, no source). */
const USUAL_BOTTLE_DAYS = 30

/**
 * The treatments of a course as columns, in order of their start. A treatment that comes back is the same
 * column; treatments given together are a column of their own, since fractions never add up (evidence/treatments).
 * Nights beyond `asOf` count as covered at the share seen so far.
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
  const born = course.child.born
  const age = (date: CalendarDate) => ageYears({ born, on: date })
  const given = (course.treatments ?? []).filter((treatment) => treatment.kind !== "none")
  const edges = [
    ...new Set(given.flatMap((t) => [age(t.from), t.to ? age(t.to) : Number.POSITIVE_INFINITY])),
  ].sort((a, b) => a - b)

  const columns = new Map<string, { parts: readonly Treatment[]; stretches: [number, number][] }>()
  edges.slice(0, -1).forEach((fromAge, i) => {
    const toAge = edges[i + 1] as number
    const together = given.filter(
      (t) => age(t.from) <= fromAge && (t.to ? age(t.to) : Number.POSITIVE_INFINITY) >= toAge,
    )
    if (together.length === 0) return
    // A treatment entered twice over the same days is still one.
    const byName = new Map(together.map((t) => [treatmentWords(t), t]))
    const parts = [...byName.values()]
    const key = [...byName.keys()].sort().join(" with ")
    const known = columns.get(key)
    if (known) known.stretches.push([fromAge, toAge])
    else columns.set(key, { parts, stretches: [[fromAge, toAge]] })
  })

  const asOfAge = age(asOf)
  return [...columns].map(([key, { parts, stretches }]) => {
    const bottles = bottleNights(course.supplies ?? [], parts, age)
    const exposures = bottles === null ? stretches.map(whole) : covered(stretches, bottles, asOfAge)
    return {
      key,
      label: key,
      ...priorOf(parts, parameters),
      startAge: stretches[0]?.[0] as number,
      endAge: stretches.at(-1)?.[1] as number,
      exposures,
      coverage: bottles === null ? null : shareCovered(stretches, bottles, asOfAge),
    }
  })
}

/** A treatment in words: "atropine 0.05 %", "orthokeratology". */
export function treatmentWords(treatment: Pick<Treatment, "kind" | "concentrationPercent">): string {
  const name = treatment.kind.replace(/-/g, " ")
  return treatment.concentrationPercent === undefined ? name : `${name} ${treatment.concentrationPercent} %`
}

function priorOf(
  parts: readonly Treatment[],
  parameters: GrowthParameters,
): Pick<TreatmentColumn, "prior" | "tried" | "note"> {
  const spread = parameters.values.withheldSpreadSd.value
  const found = (kind: string, percent?: number) =>
    parameters.effects.find(
      (effect) =>
        effect.kind === kind &&
        // Drops of unknown strength match no trial: never the weakest by accident.
        (percent === undefined
          ? effect.concentrationPercent === null
          : Math.abs((effect.concentrationPercent ?? -1) - percent) < 1e-9),
    )
  const kinds = new Set(parts.map((part) => part.kind))
  const singles = parts.map((part) => found(part.kind, part.concentrationPercent))
  const combined =
    kinds.size === 2 && kinds.has("atropine") && kinds.has("orthokeratology")
      ? parameters.effects.find(
          (effect) =>
            effect.kind === "atropine+orthokeratology" &&
            parts.some((part) => part.concentrationPercent === effect.concentrationPercent),
        )
      : undefined
  const known = singles.filter((effect) => effect !== undefined)
  const best =
    parts.length === 1
      ? known[0]
      : (combined ?? known.toSorted((a, b) => b.withheldFraction - a.withheldFraction)[0])
  if (!best || (parts.length === 1 && singles[0] === undefined)) {
    return {
      prior: { mean: 0, sd: parameters.values.unlistedTreatmentSd.value },
      tried: false,
      note: "no trial of this treatment at this strength was read, so its effect is left open",
    }
  }
  return {
    prior: { mean: best.withheldFraction, sd: Math.hypot(best.withheldFractionSd, spread) },
    tried: true,
    ...(parts.length > 1 && !combined
      ? { note: "no trial of this combination was read; the larger single effect is used, never a sum" }
      : {}),
  }
}

type Stretch = readonly [fromAge: number, toAge: number]

const whole = ([fromAge, toAge]: Stretch): Exposure => ({ fromAge, toAge, share: 1 })

function bottleNights(
  supplies: readonly Supply[],
  parts: readonly Treatment[],
  age: (date: CalendarDate) => number,
): readonly Stretch[] | null {
  const drops = parts.find((part) => part.kind === "atropine")
  if (!drops) return null
  const nights = supplies
    .filter(
      (s) =>
        s.concentrationPercent === undefined ||
        drops.concentrationPercent === undefined ||
        Math.abs(s.concentrationPercent - drops.concentrationPercent) < 1e-9,
    )
    .flatMap((s): Stretch[] => {
      const first = s.opened ?? s.dispensed
      if (first === undefined) return []
      const end = s.beyondUse ? addDays(s.beyondUse, 1) : addDays(first, USUAL_BOTTLE_DAYS)
      return age(end) > age(first) ? [[age(first), age(end)]] : []
    })
    .sort((a, b) => a[0] - b[0])
  if (nights.length === 0) return null
  const merged: [number, number][] = []
  for (const [from, to] of nights) {
    const last = merged.at(-1)
    if (last && from <= last[1]) last[1] = Math.max(last[1], to)
    else merged.push([from, to])
  }
  return merged
}

function overlap(a: Stretch, b: Stretch): Stretch | null {
  const from = Math.max(a[0], b[0])
  const to = Math.min(a[1], b[1])
  return to > from ? [from, to] : null
}

function shareCovered(stretches: readonly Stretch[], bottles: readonly Stretch[], asOfAge: number): number {
  let total = 0
  let withBottle = 0
  for (const stretch of stretches) {
    const past = overlap(stretch, [Number.NEGATIVE_INFINITY, asOfAge])
    if (!past) continue
    total += past[1] - past[0]
    for (const bottle of bottles) {
      const shared = overlap(past, bottle)
      if (shared) withBottle += shared[1] - shared[0]
    }
  }
  return total > 0 ? withBottle / total : 1
}

function covered(stretches: readonly Stretch[], bottles: readonly Stretch[], asOfAge: number): Exposure[] {
  const share = shareCovered(stretches, bottles, asOfAge)
  return stretches.flatMap((stretch) => {
    const past = overlap(stretch, [Number.NEGATIVE_INFINITY, asOfAge])
    const coming = overlap(stretch, [asOfAge, Number.POSITIVE_INFINITY])
    const pieces: Exposure[] = []
    for (const bottle of past ? bottles : []) {
      const shared = overlap(past as Stretch, bottle)
      if (shared) pieces.push({ fromAge: shared[0], toAge: shared[1], share: 1 })
    }
    if (coming) pieces.push({ fromAge: coming[0], toAge: coming[1], share })
    return pieces
  })
}
