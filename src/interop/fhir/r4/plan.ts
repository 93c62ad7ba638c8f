import type { Appointment, CarePlan, CarePlanActivity, FhirResource, PlanDefinition } from "fhir/r4.js"
import type { Duty } from "../../../engine/assessment.js"
import type { Course } from "../../../engine/course.js"
import { duties } from "../../../engine/protocol/duties.js"
import type { Protocol, ProtocolStep } from "../../../engine/protocol/protocol.js"
import type { FhirContext } from "../context.js"
import { sharedId } from "../logical-id.js"
import { plain } from "../plain-text.js"
import { withRemainder } from "../remainder.js"
import { own, ownConcept } from "./codes.js"
import { present } from "./observation.js"
import type { Scope } from "./scope.js"
import { quantity } from "./units.js"

/**
 * The protocol, what it owes the child, and the examinations that lie ahead. All of it is worked out from the course
 * and the protocol, so it is marked as derived and never read back.
 */
export const DERIVED = own("derived", "Worked out from the course; not part of it")
const derived = { tag: [DERIVED] }

export function planResources(
  course: Course,
  { protocol, asOf }: FhirContext,
  scope: Scope,
): readonly FhirResource[] {
  if (protocol === undefined) return []
  const definition = planDefinition(protocol)
  if (asOf === undefined) return [definition]
  const ahead = duties({ course, protocol, today: asOf }).filter(
    ({ state }) => state === "open" || state === "overdue" || state === "upcoming",
  )
  const appointments = ahead
    .filter(({ kind }) => kind === "examination")
    .map((duty) => appointment(duty, scope))
  return [definition, carePlan(ahead, { definition, asOf, scope }), ...appointments]
}

function planDefinition(protocol: Protocol): PlanDefinition {
  const { id, title, version, source, steps, ...rest } = protocol
  const made: PlanDefinition = {
    resourceType: "PlanDefinition",
    id: sharedId("protocol", `${id}-${version}`),
    meta: derived,
    url: `urn:lengthwise:protocol:${encodeURIComponent(id)}`,
    status: "active",
    ...present({ title: plain(title), version: plain(version), description: plain(source) }),
    action: steps.map(stepAction),
  }
  return withRemainder(made, { whole: { id, ...rest }, native: {} })
}

function stepAction(step: ProtocolStep) {
  const months = quantity(step.offsetMonths, "month")
  return withRemainder(
    { ...present({ title: plain(step.title) }), timingRange: { low: months, high: months } },
    { whole: step, native: present({ title: plain(step.title), offsetMonths: step.offsetMonths }) },
  )
}

function carePlan(
  ahead: readonly Duty[],
  { definition, asOf, scope }: { definition: PlanDefinition; asOf: string; scope: Scope },
): CarePlan {
  return {
    resourceType: "CarePlan",
    id: scope.newId("care-plan"),
    meta: derived,
    status: "active",
    intent: "plan",
    instantiatesCanonical: [
      definition.version === undefined ? `${definition.url}` : `${definition.url}|${definition.version}`,
    ],
    subject: scope.patient,
    created: asOf,
    ...(ahead.length === 0 ? {} : { activity: ahead.map(activity) }),
  }
}

const activity = ({ kind, step, opens, closes }: Duty): CarePlanActivity => ({
  detail: {
    code: ownConcept(`duty-${kind}`, kind),
    status: "not-started",
    scheduledPeriod: { start: opens, ...(closes >= opens ? { end: closes } : {}) },
    ...present({ description: plain(step) }),
  },
})

/** No time is agreed on yet, so none is stated: only the days on which it is wanted. */
const appointment = ({ step, opens, due, closes }: Duty, { patient, newId }: Scope): Appointment => ({
  resourceType: "Appointment",
  id: newId("appointment", due),
  meta: derived,
  status: "proposed",
  ...present({ description: plain(step) }),
  requestedPeriod: [{ start: opens, ...(closes >= opens ? { end: closes } : {}) }],
  participant: [{ actor: patient, required: "required", status: "needs-action" }],
})
