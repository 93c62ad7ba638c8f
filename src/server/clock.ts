import { addDays, dayNumber } from "../engine/calendar.js"
import type { CalendarDate } from "../engine/course.js"

/** The only source of time on the server. */
export interface Clock {
  readonly nowMs: () => number
  /** The day where the practice is. */
  readonly today: () => CalendarDate
}

/** The clock of this machine, in its own time zone. */
export const machineClock: Clock = {
  nowMs: () => Date.now(),
  today: () => {
    const now = new Date()
    const twoDigits = (value: number) => String(value).padStart(2, "0")
    return `${now.getFullYear()}-${twoDigits(now.getMonth() + 1)}-${twoDigits(now.getDate())}`
  },
}

const DAY_MS = 24 * 60 * 60 * 1000

/** The machine's clock moved to another day, its time of day kept: for living through a course in the demo practice. */
export function clockMovedTo(today: CalendarDate): Clock {
  const aheadDays = dayNumber(today) - dayNumber(machineClock.today())
  return {
    nowMs: () => machineClock.nowMs() + aheadDays * DAY_MS,
    today: () => addDays(machineClock.today(), aheadDays),
  }
}
