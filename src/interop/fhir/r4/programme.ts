import type { AdverseEvent, Flag } from "fhir/r4.js"
import type { Decision, Explanation, MissedNights, Payment, SafetyConcern } from "../../../engine/course.js"
import { DECISION_KINDS } from "../../../engine/course.js"
import { type Loose, record, records } from "../../course/loose.js"
import { plain } from "../plain-text.js"
import { hl7, own, ownConcept } from "./codes.js"
import { dayIn } from "./days.js"
import { hasCode, ownOneOf, present } from "./observation.js"
import { codec, type Scope } from "./scope.js"

/** What surrounds the measurements: missed nights, decisions, concerns, explanations, payments. */

export const MISSED_NIGHTS = own("missed-nights", "Nights without a drop that the family told of")

export const missedNights = codec<MissedNights>({
  write: ({ from, to, nights }, { patient, newId }) => ({
    resource: {
      resourceType: "Observation",
      id: newId("missed", from),
      status: "final",
      category: [{ coding: [hl7("observation-category", "survey")] }],
      code: { coding: [MISSED_NIGHTS], text: "Nights without a drop" },
      subject: patient,
      effectivePeriod: { start: from, end: to },
      valueInteger: nights,
    },
  }),
  read: ({ effectivePeriod, valueInteger }) => {
    const { start, end } = record(effectivePeriod)
    return present({ from: dayIn(start), to: dayIn(end), nights: valueInteger })
  },
})

export const decision = codec<Decision>({
  write: ({ date, kind, reason }, { patient, newId }) => ({
    resource: {
      resourceType: "ClinicalImpression",
      id: newId("decision", date),
      status: "completed",
      code: ownConcept(kind, kind.replaceAll("-", " ")),
      subject: patient,
      date,
      ...present({ summary: plain(reason) }),
    },
  }),
  read: ({ date, code, summary }) =>
    present({ date: dayIn(date), kind: ownOneOf(code, DECISION_KINDS), reason: summary }),
})

/** An adverse event where it is kept as one, else a flag. */
export const concern = codec<SafetyConcern>({
  write: (raised, scope) => ({
    resource: raised.adverseEvent ? adverse(raised, scope) : flag(raised, scope),
  }),
  read: (resource) => (resource.resourceType === "AdverseEvent" ? adverseRead(resource) : flagRead(resource)),
})

const SERIOUS = hl7("adverse-event-seriousness", "Serious")
const NOT_SERIOUS = hl7("adverse-event-seriousness", "Non-serious")
const SEVERITIES = {
  mild: hl7("adverse-event-severity", "mild"),
  moderate: hl7("adverse-event-severity", "moderate"),
}

function adverse({ opened, kind, seriousness }: SafetyConcern, { patient, newId }: Scope): AdverseEvent {
  const text = plain(kind)
  return {
    resourceType: "AdverseEvent",
    id: newId("concern", opened),
    actuality: "actual",
    ...(text === undefined ? {} : { event: { text } }),
    subject: patient,
    date: opened,
    ...(seriousness === undefined
      ? {}
      : { seriousness: { coding: [seriousness === "serious" ? SERIOUS : NOT_SERIOUS] } }),
    ...(seriousness === undefined || seriousness === "serious"
      ? {}
      : { severity: { coding: [SEVERITIES[seriousness]] } }),
  }
}

function adverseRead({ event, date, seriousness, severity }: Loose): Partial<SafetyConcern> {
  const text = record(event).text
  const [first] = records(record(event).coding)
  const kind = [text, first?.display].find((words): words is string => typeof words === "string")
  const grade = hasCode(seriousness, SERIOUS)
    ? ("serious" as const)
    : (["mild", "moderate"] as const).find((each) => hasCode(severity, SEVERITIES[each]))
  return present({ opened: dayIn(date), kind, what: kind, seriousness: grade, adverseEvent: true })
}

const CONCERN = ownConcept("concern", "Concern about safety")

const flag = ({ opened, closed, what }: SafetyConcern, { patient, newId }: Scope): Flag => ({
  resourceType: "Flag",
  id: newId("concern", opened),
  status: closed === undefined ? "active" : "inactive",
  category: [CONCERN],
  code: { coding: [own("concern", "Concern about safety")], ...present({ text: plain(what) }) },
  subject: patient,
  period: { start: opened, ...(closed === undefined ? {} : { end: closed }) },
})

function flagRead({ period, code }: Loose): Partial<SafetyConcern> {
  const { start, end } = record(period)
  const text = record(code).text
  return present({
    opened: dayIn(start),
    what: typeof text === "string" ? text : undefined,
    closed: dayIn(end),
  })
}

export const explanation = codec<Explanation>({
  write: ({ date, to }, { patient, newId }) => {
    const name = plain(to)
    return {
      resource: {
        resourceType: "Communication",
        id: newId("explained", date),
        status: "completed",
        topic: ownConcept("findings-explained", "What was found was explained"),
        subject: patient,
        sent: date,
        ...(name === undefined ? {} : { recipient: [{ display: name }] }),
      },
    }
  },
  read: ({ sent, recipient }) => {
    const name = records(recipient)[0]?.display
    return present({ date: dayIn(sent), to: typeof name === "string" ? name : undefined })
  },
})

/** R4's PaymentNotice asks for a payee and a reconciliation; a course file knows neither. */
export const payment = codec<Payment>({
  write: ({ date }, { patient, newId }) => ({
    resource: {
      resourceType: "Basic",
      id: newId("payment", date),
      code: { coding: [own("payment", "Payment of the family")] },
      subject: patient,
      created: date,
    },
  }),
  read: ({ created }) => present({ date: dayIn(created) }),
})
