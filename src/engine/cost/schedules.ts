import type { CalendarDate } from "../course.js"
import type { FeeSchedule } from "../practice-rules.js"
import { say } from "../say.js"
import { decimalsOf } from "./currencies.js"

/** The schedule in force on a day: the last that began by then. */
export function scheduleOn(schedules: readonly FeeSchedule[], on: CalendarDate): FeeSchedule | undefined {
  return schedules
    .filter(({ from }) => from <= on)
    .toSorted((a, b) => (a.from < b.from ? -1 : 1))
    .at(-1)
}

/** Why no plan can be priced from a day on by these schedules; null when it can. */
export function whyNotPriced(
  schedules: readonly FeeSchedule[],
  { from, to }: { readonly from: CalendarDate; readonly to: CalendarDate },
): string | null {
  if (schedules.length === 0) return say("No fee schedule has been entered.")
  const first = scheduleOn(schedules, from)
  if (!first) {
    const [next = ""] = schedules.map((schedule) => schedule.from).toSorted()
    return say("No fee schedule is in force on {day}; the first one begins on {next}.", { day: from, next })
  }
  const used = [first, ...schedules.filter((schedule) => schedule.from > from && schedule.from <= to)]
  const twice = used.find(({ from: day }, index) => used.findIndex((other) => other.from === day) !== index)
  const sameDay = twice ?? schedules.find((other) => other !== first && other.from === first.from)
  if (sameDay) {
    return say("Two fee schedules begin on {day}; which of them is in force cannot be told.", {
      day: sameDay.from,
    })
  }
  const unknown = used.find(({ currency }) => decimalsOf(currency) === null)
  if (unknown) {
    const { title, currency } = unknown
    return say('The fee schedule "{title}" is in {currency}, a currency not known here.', { title, currency })
  }
  const other = used.find(({ currency }) => currency !== first.currency)
  if (other) {
    return say(
      "The fee schedule from {first} is in {currency}, the one from {other} in {otherCurrency}; amounts in two currencies are not added up.",
      {
        first: first.from,
        currency: first.currency,
        other: other.from,
        otherCurrency: other.currency,
      },
    )
  }
  return null
}
