import type { MedicationDispense, MedicationRequest } from "fhir/r4.js"
import type { BottleOrder, Supply } from "../../../engine/course.js"
import { record, records } from "../../course/loose.js"
import { plain } from "../plain-text.js"
import { ownConcept, referenceTo } from "./codes.js"
import { dayIn } from "./days.js"
import { atropine, medicationOf } from "./medication.js"
import { present } from "./observation.js"
import { codec } from "./scope.js"
import { inUnit, quantity } from "./units.js"

const display = (reference: unknown): string | undefined => {
  const name = record(reference).display
  return typeof name === "string" ? name : undefined
}

/** A bottle that was handed out; its Medication is that bottle's own, with its lot and its last day of use. */
export const supply = codec<Supply>({
  write: (bottle, { patient, newId }) => {
    const { dispensed, opened, concentrationPercent, volumeMl, beyondUse } = bottle
    const pharmacy = plain(bottle.pharmacy)
    const id = newId("bottle", dispensed ?? opened)
    const medication = atropine({
      id: `${id}-drops`,
      percent: concentrationPercent,
      lot: plain(bottle.lot),
      lastDay: beyondUse,
    })
    const resource: MedicationDispense = {
      resourceType: "MedicationDispense",
      id,
      status: "completed",
      medicationReference: referenceTo("Medication", medication.id ?? "", medication.code?.text),
      subject: patient,
      ...present({
        performer: pharmacy === undefined ? undefined : [{ actor: { display: pharmacy } }],
        quantity: volumeMl === undefined ? undefined : quantity(volumeMl, "mL"),
        whenHandedOver: dispensed,
      }),
    }
    return { resource, beside: [medication] }
  },
  read: (dispense, look) => {
    const { percent, lot, lastDay } = medicationOf(dispense, look)
    return present({
      dispensed: dayIn(dispense.whenHandedOver),
      concentrationPercent: percent,
      volumeMl: inUnit(record(dispense.quantity), "mL"),
      beyondUse: dayIn(lastDay),
      lot,
      pharmacy: display(records(dispense.performer)[0]?.actor),
    })
  },
})

export const ORDER_CATEGORY = "bottle-order"

/** Bottles asked of a pharmacy. */
export const order = codec<BottleOrder>({
  write: (asked, { patient, newId }) => {
    const { date, concentrationPercent, volumeMl, bottles, received, cancelled } = asked
    const pharmacy = plain(asked.pharmacy)
    const id = newId("order", date)
    const medication = atropine({ id: `${id}-drops`, percent: concentrationPercent, volumeMl })
    const resource: MedicationRequest = {
      resourceType: "MedicationRequest",
      id,
      status: cancelled === undefined ? (received === undefined ? "active" : "completed") : "cancelled",
      intent: "order",
      category: [ownConcept(ORDER_CATEGORY, "Order of bottles")],
      medicationReference: referenceTo("Medication", medication.id ?? "", medication.code?.text),
      subject: patient,
      authoredOn: date,
      dispenseRequest: {
        quantity: quantity(bottles, "bottle"),
        ...(pharmacy === undefined ? {} : { performer: { display: pharmacy } }),
      },
    }
    return { resource, beside: [medication] }
  },
  read: (request, look) => {
    const { percent, volumeMl } = medicationOf(request, look)
    const { quantity: asked, performer } = record(request.dispenseRequest)
    return present({
      date: dayIn(request.authoredOn),
      concentrationPercent: percent,
      bottles: inUnit(record(asked), "bottle"),
      volumeMl,
      pharmacy: display(performer),
    })
  },
})
