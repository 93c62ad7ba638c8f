import { addMonths } from "../calendar.js"
import type { CalendarDate, Course, EyeExamination, Treatment, Visit } from "../course.js"
import { type Decision, decisions } from "./decisions.js"
import { type Examination, examinations, isAhead } from "./examinations.js"
import type { ProtocolStep } from "./protocol.js"
import { type SituationInput, situationOn } from "./situation.js"
import { isInUse, realTreatments } from "./treatment-course.js"

/** A step on the day on which it comes when everything goes to plan. */
export interface LivedStep {
  readonly step: ProtocolStep
  readonly title: string
  readonly date: CalendarDate
  readonly measures: Examination["measures"]
}

/**
 * The next months as they go when every examination is made in full on its day and every decision to stop or to step
 * down is taken as the protocol plans it, treatment once stopped is not taken up again, and nothing else happens.
 * The rules are those of `duties`, asked again after every step. What is overdue comes today; a decision whose window
 * has passed is left to people, so that no stop is planned any more. The last day is counted in.
 */
export function livedThrough({
  course,
  protocol,
  today,
  months,
}: SituationInput & { readonly months: number }): readonly LivedStep[] {
  const until = addMonths(today, months)
  const lived: LivedStep[] = []
  const done = new Set<string>()
  let day = today
  let story = course
  for (;;) {
    const situation = situationOn({ course: story, protocol, today: day })
    const dateOf = ({ due }: { readonly due: CalendarDate }) => (due < day ? day : due)
    const ahead = examinations(situation).filter((one) => isAhead(one.state) && !done.has(keyOf(one)))
    const deciding = decisions(situation).filter(
      (one) => (one.state === "upcoming" || one.state === "open") && !done.has(keyOf(one)),
    )
    const examination = earliest(ahead)
    const decision = earliest(deciding)
    // On one day the child is examined first and the decision follows.
    const isDecision =
      decision !== undefined && (examination === undefined || dateOf(decision) < dateOf(examination))
    const next = isDecision ? decision : examination
    if (next === undefined || dateOf(next) > until) return lived
    day = dateOf(next)
    done.add(keyOf(next))
    if (isDecision) {
      lived.push(livedStep(next, day))
      story = decided(story, decision, day)
    } else {
      story = { ...story, visits: [...story.visits, fullVisit(day)] }
      const after = examinations(situationOn({ course: story, protocol, today: day }))
      // One visit may serve several steps; what stays missed is none of its.
      for (const one of ahead) {
        const state = after.find((other) => keyOf(other) === keyOf(one))?.state
        if (state === "done" || (state === undefined && one === next)) lived.push(livedStep(one, day))
      }
    }
  }
}

const livedStep = ({ step, title, measures }: Examination | Decision, date: CalendarDate): LivedStep => ({
  step,
  title,
  date,
  measures,
})

const keyOf = ({ step, due }: Examination | Decision): string => `${step.id} ${due}`

function earliest<T extends { readonly due: CalendarDate }>(all: readonly T[]): T | undefined {
  return all.reduce<T | undefined>((first, one) => (first && first.due <= one.due ? first : one), undefined)
}

function decided(course: Course, { step }: Decision, on: CalendarDate): Course {
  if (step.decides === "restart") return course
  const ended = { ...course, treatments: endedOn(course, on) }
  if (step.decides === "stop") return ended
  const tapered = realTreatments(course)
    .filter((treatment) => isInUse(treatment, on))
    .map(({ nightsPerWeek: _, to: __, ...treatment }) => ({
      ...treatment,
      from: on,
      ...(treatment.kind === "atropine" && { nightsPerWeek: step.nightsPerWeek }),
    }))
  return { ...ended, treatments: [...ended.treatments, ...tapered] }
}

/** The treatments with those in use ending on a day, and those planned later left out. */
export function endedOn(course: Course, on: CalendarDate): readonly Treatment[] {
  return realTreatments(course)
    .filter(({ from }) => from < on)
    .map((treatment) => (isInUse(treatment, on) ? { ...treatment, to: on } : treatment))
}

// Only that something was measured counts here; the figures are read by nobody.
const everything: EyeExamination = {
  axialLength: { mm: 24 },
  refraction: { sphere: 0, cycloplegic: true },
  corneaRadius: { flat: 8, steep: 8 },
  pupil: { photopic: 4 },
  accommodation: { dioptres: 10 },
  acuity: { distanceLogMAR: 0, nearLogMAR: 0 },
}
const fullVisit = (date: CalendarDate): Visit => ({
  date,
  right: everything,
  left: everything,
  symptoms: [],
})
