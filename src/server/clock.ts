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
