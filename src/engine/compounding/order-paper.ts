import { type ConsentState, consentInForce } from "../consent/consent-in-force.js"
import type { BottleOrder, CalendarDate, Course } from "../course.js"
import type { Pharmacy, PracticeRules } from "../practice-rules.js"
import type { Problem } from "../problem.js"
import { say } from "../say.js"
import { type CompoundingOrder, compoundingOrder } from "./compounding-order.js"
import { compoundingSheet } from "./compounding-sheet.js"
import { dosingOf } from "./order-remarks.js"
import type { Sheet, SheetInput } from "./sheet.js"
import { pharmaciesOf, pharmacyRequest, stockFor, usualPharmacy } from "./usual-pharmacy.js"

/** Whose order it is, and what the practice has set that bears on it. */
export interface OrderAbout
  extends Pick<SheetInput, "child" | "practice" | "prescriber" | "stability" | "isOrdered" | "remarks"> {
  readonly course: Pick<Course, "treatments" | "consents">
  readonly rules: Pick<PracticeRules, "pharmacies" | "contacts" | "consentWordings">
}

export interface OrderPaper {
  readonly kind: "paper"
  readonly sheet: Sheet
  readonly pharmacy: Pharmacy
}

/** The paper of an order; refused where it cannot be worked out with what its pharmacy states it has. */
export function orderPaper(
  order: BottleOrder,
  about: OrderAbout,
): OrderPaper | { readonly kind: "refused"; readonly problems: readonly Problem[] } {
  const pharmacy = pharmacyOf(order, about.rules)
  const { concentrationPercent, bottles, volumeMl, date } = order
  const stockPercent = order.stockPercent ?? stockFor(pharmacy, concentrationPercent)
  const worked = compoundingOrder(
    pharmacyRequest(pharmacy, { concentrationPercent, stockPercent, bottles, volumeMl }),
  )
  if (worked.kind === "refused") return worked
  const sheet = sheetOf(
    {
      order: worked,
      pharmacy,
      on: date,
      isPreserved: order.preserved ?? pharmacy.isPreserved,
      override: order.override,
      ...dosingOf(about.course, { concentrationPercent, on: date }),
    },
    { ...about, remarks: [...(about.remarks ?? []), ...calledOff(order)] },
  )
  return { kind: "paper", sheet, pharmacy }
}

/** A sheet that was printed before may still lie about; one of an order that stands no more says so. */
const calledOff = ({ cancelled }: BottleOrder): readonly string[] =>
  cancelled === undefined ? [] : [say("This order was called off on {date}.", { date: cancelled })]

/** The paper of an order that is worked out. */
export function sheetOf(
  given: Pick<SheetInput, "pharmacy" | "on" | "isPreserved" | "eye" | "nightsPerWeek"> & {
    readonly order: CompoundingOrder
    readonly override: string | undefined
  },
  about: OrderAbout,
): Sheet {
  const { override, ...rest } = given
  const { course, rules, ...others } = about
  const { concentrationPercent } = rest.order
  const consent = consentTo({ concentrationPercent, on: rest.on }, about)
  return compoundingSheet({
    ...rest,
    ...others,
    contacts: rules.contacts,
    consent: consentInWords(consent, override),
  })
}

/** Whether a consent in force covers drops of this strength on a day. */
export const consentTo = (
  { concentrationPercent, on }: { readonly concentrationPercent: number; readonly on: CalendarDate },
  { course, rules }: Pick<OrderAbout, "course"> & { readonly rules: Pick<PracticeRules, "consentWordings"> },
): ConsentState =>
  consentInForce({
    course,
    treatment: { kind: "atropine", concentrationPercent },
    on,
    wordings: rules.consentWordings,
  })

function consentInWords(consent: ConsentState, override = ""): string {
  if (consent.kind === "in-force") return say("given on {date}, in force", { date: consent.consent.date })
  const reason = override.trim()
  return reason === ""
    ? say("none in force: {why}", { why: consent.why })
    : say("none in force; ordered all the same: {reason}", { reason })
}

/** The pharmacy an order went to, by its name; as is usual where it is not among the practice's own. */
export function pharmacyOf(
  { pharmacy }: Pick<BottleOrder, "pharmacy">,
  { pharmacies }: Pick<PracticeRules, "pharmacies">,
): Pharmacy {
  const known = pharmaciesOf(pharmacies).find(({ name }) => name === pharmacy)
  return known ?? { ...usualPharmacy, ...(pharmacy === undefined ? {} : { name: pharmacy }) }
}
