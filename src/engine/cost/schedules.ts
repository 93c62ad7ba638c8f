import type { CalendarDate } from "../course.js"
import type { FeeSchedule } from "../practice-rules.js"
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
  if (schedules.length === 0) return "No fee schedule has been entered."
  const first = scheduleOn(schedules, from)
  if (!first) {
    const next = schedules.map((schedule) => schedule.from).toSorted()[0]
    return `No fee schedule is in force on ${from}; the first one begins on ${next}.`
  }
  const used = [first, ...schedules.filter((schedule) => schedule.from > from && schedule.from <= to)]
  const twice = used.find(({ from: day }, index) => used.findIndex((other) => other.from === day) !== index)
  const sameDay = twice ?? schedules.find((other) => other !== first && other.from === first.from)
  if (sameDay) {
    return `Two fee schedules begin on ${sameDay.from}; which of them is in force cannot be told.`
  }
  const unknown = used.find(({ currency }) => decimalsOf(currency) === null)
  if (unknown)
    return `The fee schedule "${unknown.title}" is in ${unknown.currency}, a currency not known here.`
  const other = used.find(({ currency }) => currency !== first.currency)
  if (other) {
    return `The fee schedule from ${first.from} is in ${first.currency}, the one from ${other.from} in ${other.currency}; amounts in two currencies are not added up.`
  }
  return null
}
