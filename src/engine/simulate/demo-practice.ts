import { usualPharmacy } from "../compounding/usual-pharmacy.js"
import type { Contacts, Pharmacy } from "../practice-rules.js"

/** The invented practice's pharmacy. It exists nowhere; its habits are the usual ones. */
export const demoPharmacy: Pharmacy = {
  ...usualPharmacy,
  id: "ninth-well",
  name: "Ninth Well Pharmacy",
  contact: "orders of the demo practice go nowhere",
}

/** No telephone of a poison centre is invented: a practice enters the one of its own country. */
export const demoContacts: Contacts = { urgent: "front desk of the demo practice, any hour" }
