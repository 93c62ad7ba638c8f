import type { Assessment } from "../assessment.js"
import { type CalendarDate, type Course, EYES, type Visit } from "../course.js"
import { seenHere } from "../protocol/measured.js"
import { realTreatments } from "../protocol/treatment-course.js"
import { say } from "../say.js"
import { fixed } from "../words.js"

interface FindingInput {
  readonly course: Course
  readonly today: CalendarDate
  readonly assessment: Pick<Assessment, "finding" | "growth">
}

/** What the last visit showed that calls for a decision, in words; empty when nothing does. */
export function telling({ assessment: { finding, growth } }: Pick<FindingInput, "assessment">): string {
  return [
    ...(finding.state === "not-slowed"
      ? [say("{treatment}: not slowed", { treatment: finding.treatment ?? say("the treatment") })]
      : []),
    ...growing(growth),
  ].join("; ")
}

function growing({ state, mmPerYear }: Assessment["growth"]): readonly string[] {
  const mm = mmPerYear === null ? null : fixed(mmPerYear)
  switch (state) {
    case "as-untreated":
      return [mm === null ? say("grows as untreated") : say("grows as untreated, {mm} mm per year", { mm })]
    case "faster":
      return [
        mm === null
          ? say("grows faster than untreated")
          : say("grows faster than untreated, {mm} mm per year", { mm }),
      ]
    default:
      return []
  }
}

/**
 * A finding of the last visit that nobody has answered by a decision or a change of treatment since; null when there
 * is none. No protocol asks for it, and the child still waits.
 */
export function unansweredFinding(
  input: FindingInput,
): { readonly what: string; readonly since: CalendarDate } | null {
  const what = telling(input)
  const visit = lastGrowthVisit(input)
  if (what === "" || !visit || isAnswered(input.course, visit.date)) return null
  return { what, since: visit.date }
}

function isAnswered(course: Course, since: CalendarDate): boolean {
  const decided = (course.decisions ?? []).some(({ date }) => date >= since)
  const changed = realTreatments(course).some(({ from, to }) => from >= since || (to != null && to >= since))
  return decided || changed
}

/** The last visit here that measured a length: what a family waits to hear about. */
export function lastGrowthVisit({
  course,
  today,
}: Pick<FindingInput, "course" | "today">): Visit | undefined {
  return course.visits.findLast(
    (visit) =>
      seenHere(visit) && visit.date <= today && EYES.some((eye) => visit[eye]?.axialLength !== undefined),
  )
}
