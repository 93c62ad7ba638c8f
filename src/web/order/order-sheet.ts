import { type CompoundingOrder, compoundingOrder } from "../../engine/compounding/compounding-order.js"
import { compoundingSheet, type Sheet } from "../../engine/compounding/compounding-sheet.js"
import { dropsToSupply, orderRemarks } from "../../engine/compounding/order-remarks.js"
import {
  pharmaciesOf,
  pharmacyRequest,
  stockFor,
  usualPharmacy,
} from "../../engine/compounding/usual-pharmacy.js"
import { type ConsentState, consentInForce } from "../../engine/consent/consent-in-force.js"
import type { BottleOrder, CalendarDate, Eye } from "../../engine/course.js"
import type { Pharmacy } from "../../engine/practice-rules.js"
import { compounding } from "../../evidence/generated/compounding.js"
import type { ChildView } from "../../server/contract/child.js"
import type { PracticeAnswer } from "../../server/contract/practice.js"

interface About {
  readonly view: ChildView
  readonly practice: PracticeAnswer
}

/** Whether a consent in force covers drops of this strength on a day. */
export function consentTo(
  { concentrationPercent, on }: { readonly concentrationPercent: number; readonly on: CalendarDate },
  { view, practice }: About,
): ConsentState {
  return consentInForce({
    course: view.course,
    treatment: { kind: "atropine", concentrationPercent },
    on,
    wordings: practice.rules.consentWordings,
  })
}

/** The paper of an order that is worked out. */
export function sheetOf(
  {
    order,
    pharmacy,
    on,
    eye,
    override,
    ...rest
  }: {
    readonly order: CompoundingOrder
    readonly pharmacy: Pharmacy
    readonly on: CalendarDate
    readonly isPreserved: boolean
    readonly prescriber: string
    readonly eye: Eye | undefined
    readonly override: string | undefined
    readonly nightsPerWeek?: number | undefined
    readonly remarks?: readonly string[]
  },
  about: About,
): Sheet {
  const { view, practice } = about
  const { concentrationPercent } = order
  const consent = consentTo({ concentrationPercent, on }, about)
  return compoundingSheet({
    ...rest,
    order,
    pharmacy,
    on,
    eye,
    child: view.child,
    practice: practice.name,
    contacts: practice.rules.contacts,
    consent:
      consent.kind === "in-force"
        ? `given on ${consent.consent.date}, in force`
        : override?.trim()
          ? `none in force; ordered all the same: ${override.trim()}`
          : `none in force: ${consent.why}`,
    stability: compounding.stability,
  })
}

/** The paper of an order as it was recorded; undefined where it can no longer be worked out. */
export function sheetOfRecorded(
  { body, author }: { readonly body: BottleOrder; readonly author: string },
  about: About,
): Sheet | undefined {
  const pharmacy = pharmacyOf(body, about.practice)
  const { concentrationPercent, bottles, volumeMl, date } = body
  const stockPercent = body.stockPercent ?? stockFor(pharmacy, concentrationPercent)
  const order = compoundingOrder(
    pharmacyRequest(pharmacy, { concentrationPercent, stockPercent, bottles, volumeMl }),
  )
  if (order.kind === "refused") return undefined
  const [drops] = dropsToSupply(about.view.course, date)
  return sheetOf(
    {
      order,
      pharmacy,
      on: date,
      isPreserved: body.preserved ?? pharmacy.isPreserved,
      prescriber: author,
      eye: drops?.eye,
      nightsPerWeek: drops?.nightsPerWeek,
      override: body.override,
    },
    about,
  )
}

/** The pharmacy an order went to, by its name; as is usual where it is not among the practice's own. */
export function pharmacyOf({ pharmacy }: BottleOrder, { rules }: PracticeAnswer): Pharmacy {
  const known = pharmaciesOf(rules.pharmacies).find(({ name }) => name === pharmacy)
  return known ?? { ...usualPharmacy, ...(pharmacy === undefined ? {} : { name: pharmacy }) }
}

export const remarksOn = (
  { concentrationPercent, on }: { readonly concentrationPercent: number; readonly on: CalendarDate },
  { course }: ChildView,
) => orderRemarks({ course, concentrationPercent, on })
