import type { CalendarDate, Course, Payment } from "../course.js"
import type { Problem } from "../problem.js"
import { say } from "../say.js"

export interface Paid {
  /** Up to and with the day asked about, in the currency asked for. */
  readonly cents: number
  /** In order of date. */
  readonly payments: readonly Payment[]
  /** Payments in another currency: kept in the record, never added up. */
  readonly problems: readonly Problem[]
}

/** What the family has paid by a day in the currency of the fees; payments in any other are told and not counted. */
export function paidSoFar({
  course,
  currency,
  today,
}: {
  readonly course: Pick<Course, "payments">
  readonly currency: string
  readonly today: CalendarDate
}): Paid {
  const payments = (course.payments ?? [])
    .filter((payment) => payment.date <= today && payment.currency === currency)
    .toSorted((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
  return {
    cents: payments.reduce((sum, { cents }) => sum + cents, 0),
    payments,
    problems: paymentProblems({ payments: course.payments ?? [], currency }),
  }
}

/** Every payment in another currency than that of the fees. */
export function paymentProblems({
  payments,
  currency,
}: {
  readonly payments: readonly Payment[]
  readonly currency: string
}): readonly Problem[] {
  return payments.flatMap((payment, index) => {
    if (payment.currency === currency) return []
    const path = `payments[${index}].currency`
    const allowed = say("{currency}, the currency of the fee schedule", { currency })
    const message = say(
      "{path} must be {currency}, the currency of the fee schedule; the payment of {day} is in {other}",
      { path, currency, day: payment.date, other: payment.currency },
    )
    return [{ path, value: payment.currency, allowed, message }]
  })
}
