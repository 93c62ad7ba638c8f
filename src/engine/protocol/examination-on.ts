import { addDays } from "../calendar.js"
import type { CalendarDate, Course } from "../course.js"
import { type Examination, examinations } from "./examinations.js"
import type { Protocol, ProtocolStep, Stage } from "./protocol.js"
import { situationOn } from "./situation.js"
import { stageOf } from "./stage-of.js"
import { isInUse } from "./treatment-course.js"

/** The examination that a visit on a day would be, found from what is owed. */
export interface ExaminationOn {
  /** The one longest overdue, else open, else the next that is coming; null when none is. */
  readonly owed: Examination | null
  readonly stage: Stage | null
}

const WITHIN_A_YEAR_DAYS = 330

/**
 * Which examination a visit on this day serves. A visit that stands on the day already does not count.
 *
 * @example
 * examinationOn({ course, protocol, date: "2026-11-25" }).stage // => "review"
 */
export function examinationOn({
  course,
  protocol,
  date,
}: {
  readonly course: Course
  readonly protocol: Protocol
  readonly date: CalendarDate
}): ExaminationOn {
  const before = { ...course, visits: course.visits.filter((visit) => visit.date !== date) }
  const all = examinations(situationOn({ course: before, protocol, today: date })).toSorted((a, b) =>
    a.due < b.due ? -1 : 1,
  )
  const first = (state: Examination["state"]) => all.find((examination) => examination.state === state)
  const owed = first("overdue") ?? first("open") ?? first("upcoming") ?? null
  return { owed, stage: owed && stageOf(owed.step) }
}

/** The step of a protocol that stands for a stage chosen by hand. */
export function stepOfStage(protocol: Protocol, stage: Stage): ProtocolStep | undefined {
  return protocol.steps.find((step) => step.kind === "examination" && stageOf(step) === stage)
}

/** Whether drops are in use on a day or, for a baseline, planned from it on. */
export function isOnAtropine({
  course,
  date,
  stage,
}: {
  readonly course: Pick<Course, "treatments">
  readonly date: CalendarDate
  readonly stage: Stage | null
}): boolean {
  return (course.treatments ?? []).some(
    (treatment) =>
      treatment.kind === "atropine" &&
      (isInUse(treatment, date) || (stage === "baseline" && treatment.from >= date)),
  )
}

/** Questions answered (and not left out) in the eleven months before a day, so that a yearly visit asks again. */
export function answeredThisYear(course: Pick<Course, "visits">, date: CalendarDate): readonly string[] {
  const from = addDays(date, -WITHIN_A_YEAR_DAYS)
  const answers = course.visits
    .filter((visit) => visit.date >= from && visit.date < date)
    .flatMap((visit) => visit.answers ?? [])
  return answers.filter(({ answer }) => answer !== "not-done").map(({ question }) => question)
}
