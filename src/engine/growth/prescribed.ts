import { type CalendarDate, type Course, EYES, type Treatment } from "../course.js"
import { realTreatments } from "../protocol/treatment-course.js"
import { say } from "../say.js"
import { treatmentName } from "../treatment-name.js"
import type { Stretch } from "./stretch.js"

/** What was prescribed together over a stretch of life. */
export interface Prescription {
  readonly parts: readonly Treatment[]
  readonly stretch: Stretch
  /** Share of its nights with a drop, by the prescription: below 1 in a taper. */
  readonly nightly: number
  /** Set where it is for one eye; for both when absent. */
  readonly eye?: 0 | 1
}

type Given = Pick<Treatment, "kind" | "concentrationPercent">

/** One treatment apart from every other, alike in every language: "atropine 0.01 %". */
const ownKey = ({ kind, concentrationPercent }: Given): string =>
  concentrationPercent === undefined ? kind : `${kind} ${concentrationPercent} %`

/** What is given together apart from everything else, alike in every language: "atropine 0.01 % + orthokeratology". */
export const keyOf = (parts: readonly Given[]): string => parts.map(ownKey).sort().join(" + ")

/**
 * What is given together as a person says it, in an order that is the same in every language.
 *
 * @example
 * namesOf([{ kind: "orthokeratology" }, { kind: "atropine", concentrationPercent: 0.01 }])
 * // => "atropine 0.01 % with orthokeratology"
 */
export const namesOf = (parts: readonly Given[]): string =>
  parts
    .toSorted((a, b) => (ownKey(a) < ownKey(b) ? -1 : 1))
    .map(treatmentName)
    .reduce((treatment, other) => say("{treatment} with {other}", { treatment, other }))

/**
 * Life cut where a treatment begins or ends, in order. Each eye has a life of its own where something was prescribed
 * for one eye; two eyes with the same prescriptions throughout are one.
 */
export function prescribed(course: Course, age: (date: CalendarDate) => number): readonly Prescription[] {
  const all = realTreatments(course)
  if (all.every(({ eye }) => eye === undefined)) return ofOneLife(all, age)
  const [right, left] = EYES.map((own) =>
    ofOneLife(
      all.filter(({ eye }) => eye === undefined || eye === own),
      age,
    ),
  ) as [readonly Prescription[], readonly Prescription[]]
  if (areSame(right, left)) return right
  return [
    ...right.map((one) => ({ ...one, eye: 0 as const })),
    ...left.map((one) => ({ ...one, eye: 1 as const })),
  ].toSorted((a, b) => a.stretch[0] - b.stretch[0])
}

function ofOneLife(
  treatments: readonly Treatment[],
  age: (date: CalendarDate) => number,
): readonly Prescription[] {
  const given = treatments.map((treatment) => {
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
    const parts = [...new Map(together.map(({ treatment }) => [ownKey(treatment), treatment])).values()]
    return parts.length === 0 ? [] : [{ parts, stretch, nightly: nightlyOf(parts) }]
  })
}

const NIGHTS_OF_A_WEEK = 7

function nightlyOf(parts: readonly Treatment[]): number {
  const nights = parts.find(({ kind }) => kind === "atropine")?.nightsPerWeek
  return nights === undefined ? 1 : Math.min(1, nights / NIGHTS_OF_A_WEEK)
}

function areSame(a: readonly Prescription[], b: readonly Prescription[]): boolean {
  return (
    a.length === b.length &&
    a.every((one, i) => {
      const other = b[i] as Prescription
      return (
        keyOf(one.parts) === keyOf(other.parts) &&
        one.nightly === other.nightly &&
        one.stretch[0] === other.stretch[0] &&
        one.stretch[1] === other.stretch[1]
      )
    })
  )
}
