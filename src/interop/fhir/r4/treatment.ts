import type { Device, DeviceUseStatement, MedicationRequest } from "fhir/r4.js"
import { EYES, TREATMENT_KINDS, type Treatment } from "../../../engine/course.js"
import { type Loose, record, records } from "../../course/loose.js"
import { sharedId } from "../logical-id.js"
import { eyeSite, isEyeSite, own, ownConcept, referenceTo } from "./codes.js"
import { periodBefore, spanIn } from "./days.js"
import type { Look } from "./look.js"
import { atropine, medicationOf } from "./medication.js"
import { codings, ownOneOf, present } from "./observation.js"
import { codec, type Scope } from "./scope.js"

/** Treatments: drops as what was asked for to be given, glasses and lenses as a device in use. */
export const treatment = codec<Treatment>({
  write: (given, scope) => {
    if (given.kind === "atropine") return drops(given, scope)
    return given.kind === "none" ? { resource: untreated(given, scope) } : optical(given, scope)
  },
  read: (resource, look) => {
    if (resource.resourceType === "MedicationRequest") return dropsRead(resource, look)
    return resource.resourceType === "DeviceUseStatement" ? opticalRead(resource, look) : {}
  },
})

type Running = "planned" | "runs" | "ended"

function stateOf({ from, to }: Treatment, { asOf }: Scope): Running {
  if (asOf !== undefined && from > asOf) return "planned"
  return to && (asOf === undefined || to <= asOf) ? "ended" : "runs"
}

const site = ({ eye }: Treatment) => (eye === undefined ? undefined : eyeSite(eye))

function drops(given: Treatment, scope: Scope) {
  const { from, to, concentrationPercent, nightsPerWeek } = given
  const medication = atropine({
    id: sharedId("atropine", concentrationPercent === undefined ? "any" : `${concentrationPercent}-percent`),
    percent: concentrationPercent,
  })
  const status = { planned: "draft", runs: "active", ended: "completed" } as const
  const state = stateOf(given, scope)
  const resource: MedicationRequest = {
    resourceType: "MedicationRequest",
    id: scope.newId("treatment", from),
    status: status[state],
    intent: state === "planned" ? "plan" : "order",
    category: [ownConcept("treatment", "Treatment")],
    medicationReference: referenceTo("Medication", medication.id ?? "", medication.code?.text),
    subject: scope.patient,
    dosageInstruction: [
      {
        timing: {
          repeat: {
            boundsPeriod: periodBefore(from, to),
            frequency: nightsPerWeek ?? 1,
            period: 1,
            periodUnit: nightsPerWeek === undefined ? "d" : "wk",
            when: ["HS"],
          },
        },
        ...present({ site: site(given) }),
      },
    ],
  }
  return { resource, beside: [medication] }
}

function dropsRead(request: Loose, look: Look): Partial<Treatment> {
  const { isAtropine, percent } = medicationOf(request, look)
  const [dosage = {}] = records(request.dosageInstruction)
  const repeat = record(record(dosage.timing).repeat)
  const isWeekly = repeat.periodUnit === "wk" && repeat.period === 1 && typeof repeat.frequency === "number"
  return present({
    ...spanIn(repeat.boundsPeriod),
    kind: isAtropine ? ("atropine" as const) : undefined,
    concentrationPercent: percent,
    eye: eyeIn(dosage.site),
    nightsPerWeek: isWeekly ? Number(repeat.frequency) : undefined,
  })
}

const eyeIn = (concept: unknown) =>
  EYES.find((eye) => codings(concept).some((coding) => isEyeSite(eye, coding)))

function optical(given: Treatment, scope: Scope) {
  const { kind, from, to } = given
  const device: Device = {
    resourceType: "Device",
    id: sharedId("optical", kind),
    type: ownConcept(kind, kind.replaceAll("-", " ")),
  }
  const status = { planned: "intended", runs: "active", ended: "completed" } as const
  const resource: DeviceUseStatement = {
    resourceType: "DeviceUseStatement",
    id: scope.newId("treatment", from, kind),
    status: status[stateOf(given, scope)],
    subject: scope.patient,
    timingPeriod: periodBefore(from, to),
    device: referenceTo("Device", device.id ?? "", device.type?.text),
    ...present({ bodySite: site(given) }),
  }
  return { resource, beside: [device] }
}

function opticalRead(use: Loose, look: Look): Partial<Treatment> {
  return present({
    ...spanIn(use.timingPeriod),
    kind: ownOneOf(record(look.follow(use.device)).type, TREATMENT_KINDS),
    eye: eyeIn(use.bodySite),
  })
}

/** Observation without treatment is nothing that R4 has a resource for. */
const untreated = ({ from }: Treatment, { patient, newId }: Scope) => ({
  resourceType: "Basic" as const,
  id: newId("treatment", from, "none"),
  code: { coding: [own("no-treatment", "Observation without treatment")] },
  subject: patient,
  created: from,
})
