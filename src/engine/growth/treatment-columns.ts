import type { GrowthParameters } from "../../evidence/types.js"
import { ageYears } from "../calendar.js"
import type { CalendarDate, Course, Treatment } from "../course.js"
import { say } from "../say.js"
import { bottleNights, joined } from "./bottle-nights.js"
import { type ExpectedNights, type MissedShare, missedShares, withMissed } from "./missed-shares.js"
import { keyOf, namesOf, type Prescription, prescribed } from "./prescribed.js"
import { overlap, type Stretch, without } from "./stretch.js"
import { type TreatmentPrior, treatmentPrior } from "./treatment-prior.js"

/** A stretch of life under one treatment and the share of its nights with it. Ages in years. */
export interface Exposure {
  readonly fromAge: number
  /** Infinity while the treatment goes on. */
  readonly toAge: number
  /** Nights with a bottle in date, not missed, and in a taper meant to have a drop. */
  readonly share: number
  /** The eye that is exposed; both when absent. */
  readonly eye?: 0 | 1
}

/** One treatment, or one combination, as a column of the model: what it may withhold, when, and of which eye. */
export interface TreatmentColumn extends TreatmentPrior {
  /** Tells it apart from every other, alike in every language. */
  readonly key: string
  /** What is given, as a person says it. */
  readonly name: string
  /** The name, and the eye where it was only ever given to one. */
  readonly label: string
  /** When it was prescribed, to either eye, covered nights or not; empty for what only filled gaps of a combination. */
  readonly stretches: readonly Stretch[]
  readonly startAge: number
  /** Age at which it ended; Infinity while it goes on. */
  readonly endAge: number
  readonly exposures: readonly Exposure[]
  /**
   * Share of prescribed days from start to `asOf` with a bottle in date, missed nights taken off; null where neither
   * bottles nor missed nights are recorded. A night that a taper leaves out is not a missed one.
   */
  readonly coverage: number | null
  /** Ages at which it was begun, where that is not the start of each stretch: eyes that began apart. */
  readonly begins?: readonly number[]
  /** Set where it was only ever given to one eye. */
  readonly eye?: 0 | 1
}

interface Draft {
  readonly parts: readonly Treatment[]
  readonly prescriptions: Prescription[]
  readonly exposures: Exposure[]
  coverage: number | null
}

const ALWAYS: Stretch = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]

/**
 * The treatments of a course as columns, in order of their start. A treatment that comes back is the same column, and
 * so is one given to one eye and later to the other: what it withholds is learned from both. Treatments given together
 * are a column of their own, since fractions never add up (evidence/treatments). On a night without a drop what was
 * given beside the drops goes on alone. Nights beyond `asOf` count as covered at the share seen so far.
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
    const known = columns.get(key) ?? { parts, prescriptions: [], exposures: [], coverage: null }
    columns.set(key, known)
    return known
  }
  for (const one of prescribed(course, age)) draftOf(one.parts).prescriptions.push(one)
  const asOfAge = age(asOf)
  // Bottles that came later are not known yet.
  const supplies = (course.supplies ?? []).filter(
    ({ opened, dispensed }) => (opened ?? dispensed ?? asOf) <= asOf,
  )
  const drafts = [...columns.values()].map((column) => ({
    column,
    bottles: bottleNights(supplies, column.parts, age),
  }))
  const missed = missedShares({
    course,
    asOf,
    age,
    expected: course.missedNights ? expectedNights(drafts) : [],
  })
  for (const { column, bottles } of drafts) {
    const beside = column.parts.filter((part) => part.kind !== "atropine")
    const isDrops = beside.length < column.parts.length
    const stretches = stretchesOf(column)
    const told = isDrops
      ? missed.filter((one) => stretches.some((stretch) => overlap(stretch, one.stretch)))
      : []
    // Where nights were missed and no bottle is recorded, every night is taken to have had a bottle.
    const recorded = bottles ?? (told.length > 0 ? [ALWAYS] : null)
    column.coverage =
      recorded === null ? null : shareCovered({ stretches, bottles: recorded, missed: told, asOfAge })
    for (const prescription of column.prescriptions) {
      const { on, off } = nights({
        prescription,
        bottles: recorded,
        missed: told,
        share: column.coverage ?? 1,
        asOfAge,
      })
      column.exposures.push(...on)
      if (beside.length > 0 && off.length > 0) draftOf(beside).exposures.push(...off)
    }
  }
  return [...columns].map(([key, draft]) => columnOf(key, draft, parameters))
}

function columnOf(key: string, draft: Draft, parameters: GrowthParameters): TreatmentColumn {
  const { parts, prescriptions, exposures, coverage } = draft
  const stretches = stretchesOf(draft)
  const eyes = new Set((prescriptions.length > 0 ? prescriptions : exposures).map(({ eye }) => eye))
  const [eye] = eyes.size === 1 ? [...eyes] : []
  const name = namesOf(parts)
  return {
    key,
    name,
    label:
      eye === undefined
        ? name
        : say("{treatment} in the {eye, select, right {right} other {left}} eye", {
            treatment: name,
            eye: eye === 0 ? "right" : "left",
          }),
    ...treatmentPrior(parts, parameters),
    stretches,
    startAge: stretches[0]?.[0] ?? exposures[0]?.fromAge ?? Number.POSITIVE_INFINITY,
    endAge: stretches.at(-1)?.[1] ?? exposures.at(-1)?.toAge ?? Number.POSITIVE_INFINITY,
    exposures: exposures.toSorted((a, b) => a.fromAge - b.fromAge),
    coverage,
    ...(isForOneEye(draft) ? { begins: prescriptions.map(({ stretch }) => stretch[0]) } : {}),
    ...(eye === undefined ? {} : { eye }),
  }
}

const isForOneEye = ({ prescriptions }: Draft): boolean => prescriptions.some(({ eye }) => eye !== undefined)

/** When it was prescribed, to either eye; where eyes began apart their stretches are joined. */
function stretchesOf(draft: Draft): readonly Stretch[] {
  const all = draft.prescriptions.map(({ stretch }) => stretch)
  return isForOneEye(draft) ? joined(all) : all
}

function expectedNights(
  drafts: readonly { readonly column: Draft; readonly bottles: readonly Stretch[] | null }[],
): readonly ExpectedNights[] {
  return drafts.flatMap(({ column, bottles }) =>
    column.parts.some(({ kind }) => kind === "atropine")
      ? column.prescriptions.map((prescription) => ({
          prescription,
          covered: bottles === null ? [prescription.stretch] : coveredIn(prescription.stretch, bottles),
        }))
      : [],
  )
}

/** The nights of a prescription with the drops, and those without. */
function nights({
  prescription: { stretch, nightly, eye },
  bottles,
  missed,
  share,
  asOfAge,
}: {
  prescription: Prescription
  bottles: readonly Stretch[] | null
  missed: readonly MissedShare[]
  share: number
  asOfAge: number
}): { on: Exposure[]; off: Exposure[] } {
  const exposure = ([fromAge, toAge]: Stretch, of = 1): Exposure => ({
    fromAge,
    toAge,
    share: of,
    ...(eye === undefined ? {} : { eye }),
  })
  const left = (of: number, piece: Stretch) => (of < 1 ? [exposure(piece, 1 - of)] : [])
  if (bottles === null) return { on: [exposure(stretch, nightly)], off: left(nightly, stretch) }
  const past = overlap(stretch, [ALWAYS[0], asOfAge])
  const coming = overlap(stretch, [asOfAge, ALWAYS[1]])
  const covered = past ? coveredIn(past, bottles).flatMap((piece) => withMissed(piece, missed)) : []
  return {
    on: [
      ...covered.map((piece) => exposure(piece.stretch, nightly * piece.kept)),
      ...(coming ? [exposure(coming, nightly * share)] : []),
    ],
    off: [
      ...(past ? without(past, bottles).map((piece) => exposure(piece)) : []),
      ...covered.flatMap((piece) => left(nightly * piece.kept, piece.stretch)),
      ...(coming ? left(nightly * share, coming) : []),
    ],
  }
}

function coveredIn(stretch: Stretch, bottles: readonly Stretch[]): Stretch[] {
  return bottles.flatMap((bottle) => {
    const shared = overlap(stretch, bottle)
    return shared ? [shared] : []
  })
}

function shareCovered({
  stretches,
  bottles,
  missed,
  asOfAge,
}: {
  readonly stretches: readonly Stretch[]
  readonly bottles: readonly Stretch[]
  readonly missed: readonly MissedShare[]
  readonly asOfAge: number
}): number {
  const length = (all: readonly Stretch[]) => all.reduce((sum, [from, to]) => sum + to - from, 0)
  const past = coveredIn([ALWAYS[0], asOfAge], stretches)
  if (past.length === 0) return 1
  const covered = past.flatMap((stretch) => coveredIn(stretch, bottles))
  if (missed.length === 0) return length(covered) / length(past)
  const kept = covered
    .flatMap((stretch) => withMissed(stretch, missed))
    .reduce((sum, piece) => sum + piece.kept * (piece.stretch[1] - piece.stretch[0]), 0)
  return kept / length(past)
}
