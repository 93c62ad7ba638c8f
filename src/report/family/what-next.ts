import type { Treatment } from "../../engine/course.js"
import type { Decision } from "../../engine/protocol/decisions.js"
import { type Examination, isAhead } from "../../engine/protocol/examinations.js"
import { realTreatments } from "../../engine/protocol/treatment-course.js"
import { dayInWords, msg, say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import type { Block } from "../document.js"
import type { FamilyReading } from "./family-reading.js"

/** What the family and the practice do from here on, in the order of a day, a month, half a year. */
export function whatNext(reading: FamilyReading): readonly Block[] {
  const items = [
    ...(reading.isInDoubt ? [say("We measure the eyes again as soon as you can come.")] : []),
    ...reading.treatments.map(givenAs),
    ...comingTreatments(reading),
    ...bottles(reading),
    ...(reading.isDecisionOpen
      ? [say("We talk with you about what the last visit showed, and whether to change anything.")]
      : []),
    ...visitItem(nextVisit(reading)),
    ...decisionItem(nextDecision(reading)),
  ]
  return [
    { kind: "heading", level: 1, text: say("What we do next") },
    items.length > 0
      ? { kind: "list", items, isNumbered: items.length > 1 }
      : {
          kind: "text",
          text: say("No visit is planned. Call us when something about the eyes worries you."),
        },
  ]
}

function givenAs(treatment: Treatment): string {
  const { kind, eye = "both", nightsPerWeek: nights } = treatment
  const name = treatmentName(treatment)
  if (kind !== "atropine")
    return say("Go on with the treatment as we showed you: {treatment}.", { treatment: name })
  if (nights === undefined)
    return say(
      "Put one drop into {eye, select, right {the right eye} left {the left eye} other {each eye}} every night: {treatment}.",
      { eye, treatment: name },
    )
  return say(
    "Put one drop into {eye, select, right {the right eye} left {the left eye} other {each eye}} on {nights, plural, one {# night} other {# nights}} a week: {treatment}.",
    { eye, nights, treatment: name },
  )
}

const comingTreatments = ({ course, today }: FamilyReading): readonly string[] =>
  realTreatments(course)
    .filter(({ from }) => from > today)
    .map((treatment) =>
      say("The treatment begins on {date}: {treatment}.", {
        date: dayInWords(treatment.from),
        treatment: treatmentName(treatment),
      }),
    )

/** A prescription of which no bottle is on record is left out: nothing is known of what the family has. */
function bottles({ supply }: FamilyReading): readonly string[] {
  if (supply.bottles.length === 0) return []
  return supply.nextBottles.map(({ due, orderBy, state }) => {
    const dates = { due: dayInWords(due), order: dayInWords(orderBy) }
    if (state === "overdue")
      return say("You need a new bottle now: the last one was good until {due}.", { due: dates.due })
    if (state === "open")
      return say("Ask for the next bottle now: the one you have is good until {due}.", { due: dates.due })
    return say("Ask for the next bottle by {order}: the one you have is good until {due}.", dates)
  })
}

/** The examination that comes first: one that is late, then one that can be made now, then the next. */
export function nextVisit({ examinations }: Pick<FamilyReading, "examinations">): Examination | undefined {
  return firstAhead(examinations)
}

export function nextDecision({ decisions }: Pick<FamilyReading, "decisions">): Decision | undefined {
  return firstAhead(decisions)
}

function firstAhead<One extends Pick<Examination, "state" | "due">>(all: readonly One[]): One | undefined {
  const ahead = all.filter(({ state }) => isAhead(state)).toSorted((a, b) => (a.due < b.due ? -1 : 1))
  return (
    ahead.find(({ state }) => state === "overdue") ?? ahead.find(({ state }) => state === "open") ?? ahead[0]
  )
}

const VISIT = {
  overdue: msg("A visit is late: it was due by {closes}. Please call us for a date."),
  open: msg("Come to the next visit between now and {closes}."),
  upcoming: msg("Come to the next visit between {opens} and {closes}."),
} as const

function visitItem(visit: Examination | undefined): readonly string[] {
  if (!visit) return []
  const [opens, closes] = [dayInWords(visit.opens), dayInWords(visit.closes)]
  if (visit.state === "upcoming") return [say(VISIT.upcoming, { opens, closes })]
  return [say(visit.state === "overdue" ? VISIT.overdue : VISIT.open, { closes })]
}

const DECISION = {
  overdue: msg(
    "We still have to decide with you {what, select, restart {whether to treat again} fewer {whether fewer nights are enough} other {whether to stop the treatment}}.",
  ),
  open: msg(
    "By {closes} we decide with you {what, select, restart {whether to treat again} fewer {whether fewer nights are enough} other {whether to stop the treatment}}.",
  ),
  upcoming: msg(
    "Between {opens} and {closes} we decide with you {what, select, restart {whether to treat again} fewer {whether fewer nights are enough} other {whether to stop the treatment}}.",
  ),
} as const

function decisionItem(decision: Decision | undefined): readonly string[] {
  if (!decision) return []
  const what = { stop: "stop", restart: "restart", "step-down": "fewer" }[decision.step.decides ?? "stop"]
  const [opens, closes] = [dayInWords(decision.opens), dayInWords(decision.closes)]
  if (decision.state === "upcoming") return [say(DECISION.upcoming, { what, opens, closes })]
  return [
    decision.state === "overdue" ? say(DECISION.overdue, { what }) : say(DECISION.open, { what, closes }),
  ]
}
