import {
  consentTo as consentToOrder,
  type OrderAbout,
  orderPaper,
  pharmacyOf as pharmacyOfOrder,
  sheetOf as sheetOfOrder,
} from "../../engine/compounding/order-paper.js"
import { orderRemarks } from "../../engine/compounding/order-remarks.js"
import type { Sheet } from "../../engine/compounding/sheet.js"
import type { ConsentState } from "../../engine/consent/consent-in-force.js"
import type { BottleOrder, CalendarDate } from "../../engine/course.js"
import type { Pharmacy } from "../../engine/practice-rules.js"
import { compounding } from "../../evidence/generated/compounding.js"
import type { ChildView } from "../../server/contract/child.js"
import type { PracticeAnswer } from "../../server/contract/practice.js"

interface About {
  readonly view: ChildView
  readonly practice: PracticeAnswer
}

interface Asked {
  readonly concentrationPercent: number
  readonly on: CalendarDate
}

const aboutOf = ({ view, practice }: About, prescriber: string): OrderAbout => ({
  course: view.course,
  child: view.child,
  practice: practice.name,
  rules: practice.rules,
  prescriber,
  stability: compounding.stability,
})

/** Whether a consent in force covers drops of this strength on a day. */
export const consentTo = (asked: Asked, { view, practice }: About): ConsentState =>
  consentToOrder(asked, { course: view.course, rules: practice.rules })

/** The paper of an order that is being filled in. */
export function sheetOf(
  {
    prescriber,
    remarks,
    ...worked
  }: Parameters<typeof sheetOfOrder>[0] & {
    readonly prescriber: string
    readonly remarks: readonly string[]
  },
  about: About,
): Sheet {
  return sheetOfOrder(worked, { ...aboutOf(about, prescriber), remarks })
}

/** The paper of an order as it was recorded; undefined where it can no longer be worked out. */
export function sheetOfRecorded(
  { body, author }: { readonly body: BottleOrder; readonly author: string },
  about: About,
): Sheet | undefined {
  const paper = orderPaper(body, aboutOf(about, author))
  return paper.kind === "paper" ? paper.sheet : undefined
}

/** The pharmacy an order went to, by its name; as is usual where it is not among the practice's own. */
export const pharmacyOf = (order: BottleOrder, { rules }: PracticeAnswer): Pharmacy =>
  pharmacyOfOrder(order, rules)

export const remarksOn = (asked: Asked, { course }: ChildView) => orderRemarks({ course, ...asked })
