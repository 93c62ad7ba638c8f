import { addDays, dayNumber } from "../../engine/calendar.js"
import { orderState } from "../../engine/compounding/order-state.js"
import type { BottleOrder, CalendarDate } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { inDigits } from "../../engine/words.js"
import type { ChildView } from "../../server/contract/child.js"

export interface RecordedOrder {
  readonly entryId: string
  readonly body: BottleOrder
  readonly author: string
  /** Why the entry takes the place of an earlier one: for what was called off, why. */
  readonly reason: string | null
}

/** The orders as they stand, the latest first. */
export function recordedOrders({ entries }: Pick<ChildView, "entries">): readonly RecordedOrder[] {
  const authors = new Map(entries.map(({ id, author, supersedes }) => [id, { author, supersedes }]))
  const firstAuthor = (id: string): string => {
    const { author = "", supersedes = null } = authors.get(id) ?? {}
    return supersedes !== null && authors.has(supersedes) ? firstAuthor(supersedes) : author
  }
  return entries
    .filter(({ kind, supersededBy }) => kind === "order" && supersededBy === null)
    .map(({ id, body, reason }) => ({
      entryId: id,
      body: body as BottleOrder,
      author: firstAuthor(id),
      reason,
    }))
    .toSorted((a, b) => b.body.date.localeCompare(a.body.date))
}

/** "3 bottles of 5 mL, atropine 0.05 %" */
export function orderInWords({ bottles, volumeMl, concentrationPercent }: BottleOrder): string {
  return say("{bottles, plural, one {# bottle} other {# bottles}} of {volume} mL, {treatment}", {
    bottles,
    volume: inDigits(volumeMl),
    treatment: treatmentName({ kind: "atropine", concentrationPercent }),
  })
}

/** How far it has come, and when it is expected. Dates are ISO. */
export function stateInWords(
  { body, reason }: Pick<RecordedOrder, "body" | "reason">,
  { leadDays, today }: { readonly leadDays: number; readonly today: CalendarDate },
): string {
  const expected = addDays(body.date, leadDays)
  const late = dayNumber(today) - dayNumber(expected)
  const { cancelled = "", received = "", confirmed = "" } = body
  switch (orderState(body)) {
    case "cancelled":
      return reason
        ? say("called off on {date}: {reason}", { date: cancelled, reason })
        : say("called off on {date}", { date: cancelled })
    case "received":
      return say("received on {date}", { date: received })
    case "confirmed":
      return late > 0
        ? say(
            "confirmed on {date}, {late, plural, one {# day} other {# days}} late, expected by {expected}",
            {
              date: confirmed,
              late,
              expected,
            },
          )
        : say("confirmed on {date}, expected by {expected}", { date: confirmed, expected })
    case "ordered":
      return late > 0
        ? say("not confirmed yet, {late, plural, one {# day} other {# days}} late, expected by {expected}", {
            late,
            expected,
          })
        : say("not confirmed yet, expected by {expected}", { expected })
  }
}
