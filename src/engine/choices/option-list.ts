import type { GrowthParameters, TreatmentEffect } from "../../evidence/types.js"
import type { CalendarDate, Course, Treatment, TreatmentChoice, TreatmentKind } from "../course.js"
import { keyOf, namesOf } from "../growth/prescribed.js"
import { isInUse, realTreatments } from "../protocol/treatment-course.js"
import { say } from "../say.js"

/** One of the options that stand side by side. */
export interface Option {
  /** "as-now", "nothing", or the id of the effect in the evidence, such as "atropine-0.05". */
  readonly id: string
  readonly kind: "as-now" | "nothing" | "treatment"
  readonly name: string
  /** What is given under it; empty for no treatment. */
  readonly parts: readonly TreatmentChoice[]
  /** What the trials report of it; null for no treatment, and where no trial was read. */
  readonly effect: TreatmentEffect | null
}

/** Drops from this strength on are shown only when asked for or in use (a choice of ours: the trials call them unfit for routine use). */
const STRONG_FROM_PERCENT = 0.5

/**
 * Every option there is, in an order that never depends on the child: going on as now, no treatment, drops by strength,
 * then the optical treatments as the evidence lists them. Treatments together only where a trial of both was read.
 */
export function optionList({
  course,
  asOf,
  parameters,
  withStrong = false,
}: {
  readonly course: Pick<Course, "treatments">
  readonly asOf: CalendarDate
  readonly parameters: GrowthParameters
  readonly withStrong?: boolean | undefined
}): readonly Option[] {
  const running = realTreatments(course).filter((treatment) => isInUse(treatment, asOf))
  const effects = parameters.effects.map((effect) => ({ effect, parts: partsOf(effect) }))
  const known = (parts: readonly TreatmentChoice[]) =>
    effects.find((candidate) => sameParts(candidate.parts, parts))?.effect ?? null
  const asNow: readonly Option[] =
    running.length === 0
      ? []
      : [
          {
            id: "as-now",
            kind: "as-now",
            name: say("going on with {treatment}", { treatment: namesOf(running) }),
            parts: running.map(choiceOf),
            effect: known(running),
          },
        ]
  return [
    ...asNow,
    { id: "nothing", kind: "nothing", name: say("no treatment"), parts: [], effect: null },
    ...effects
      .filter(({ parts }) => !isUnchanged(parts, running))
      .filter(
        ({ parts }) =>
          withStrong ||
          parts.every(({ concentrationPercent = 0 }) => concentrationPercent < STRONG_FROM_PERCENT),
      )
      .map(
        ({ effect, parts }): Option => ({
          id: effect.id,
          kind: "treatment",
          name: namesOf(parts),
          parts,
          effect,
        }),
      ),
  ]
}

const choiceOf = ({ kind, concentrationPercent }: Treatment): TreatmentChoice => ({
  kind,
  ...(concentrationPercent === undefined ? {} : { concentrationPercent }),
})

function partsOf({ kind, concentrationPercent }: TreatmentEffect): readonly TreatmentChoice[] {
  return (kind.split("+") as readonly TreatmentKind[]).map((part) => ({
    kind: part,
    ...(part === "atropine" && concentrationPercent !== null ? { concentrationPercent } : {}),
  }))
}

function sameParts(a: readonly TreatmentChoice[], b: readonly TreatmentChoice[]): boolean {
  return a.length === b.length && keyOf(a) === keyOf(b)
}

/** What is in use every night in both eyes already stands as going on; a taper or one eye is another thing. */
function isUnchanged(parts: readonly TreatmentChoice[], running: readonly Treatment[]): boolean {
  return (
    sameParts(parts, running) &&
    running.every(({ eye, nightsPerWeek }) => eye === undefined && nightsPerWeek === undefined)
  )
}
