import type { CalendarDate, Course, Treatment, TreatmentChoice } from "../course.js"
import { endedOn, livedThrough } from "./lived-through.js"
import type { Measure, Stage } from "./protocol.js"
import type { SituationInput } from "./situation.js"
import { stageOf } from "./stage-of.js"
import { isInUse, realTreatments } from "./treatment-course.js"

export interface PlannedExamination {
  /** Title of the step. */
  readonly step: string
  readonly stepId: string
  readonly stage: Stage
  readonly date: CalendarDate
  readonly measures: readonly Measure[]
}

/**
 * The examinations of the next months if this treatment were given from today on, or gone on with where it is in use;
 * null stands for observation without any. The stop and the check after it are in the plan where the protocol has them.
 * One visit may be listed under several steps with the same date.
 *
 * @example
 * plannedExaminations({ course, protocol, treatment: { kind: "atropine", concentrationPercent: 0.05 }, today, months: 30 })
 */
export function plannedExaminations({
  course,
  protocol,
  treatment,
  today,
  months,
}: SituationInput & {
  readonly treatment: TreatmentChoice | null
  readonly months: number
}): readonly PlannedExamination[] {
  return livedThrough({ course: chosen({ course, treatment, today }), protocol, today, months })
    .filter(({ step }) => step.kind === "examination")
    .map(({ step, title, date, measures }) => ({
      step: title,
      stepId: step.id,
      stage: stageOf(step),
      date,
      measures,
    }))
}

/** The course as it would be with this treatment alone from today on. */
export function chosen({
  course,
  treatment,
  today,
}: {
  readonly course: Course
  readonly treatment: TreatmentChoice | null
  readonly today: CalendarDate
}): Course {
  const going = realTreatments(course).filter((one) => isInUse(one, today) && isSame(one, treatment))
  const others = { ...course, treatments: realTreatments(course).filter((one) => !going.includes(one)) }
  const begun: readonly Treatment[] =
    going.length > 0 || treatment === null || treatment.kind === "none"
      ? going
      : [{ ...treatment, from: today }]
  return { ...course, treatments: [...endedOn(others, today), ...begun] }
}

const isSame = (one: Treatment, choice: TreatmentChoice | null): boolean =>
  choice !== null && one.kind === choice.kind && one.concentrationPercent === choice.concentrationPercent
