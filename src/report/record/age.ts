import { completedMonths } from "../../engine/calendar.js"
import type { CalendarDate } from "../../engine/course.js"
import { say } from "../../engine/say.js"

/** Completed years and months: "9 y 5 m". */
export function ageWritten({ born, on }: { readonly born: CalendarDate; readonly on: CalendarDate }): string {
  const months = completedMonths({ from: born, to: on })
  return say("{years} y {months} m", { years: String(Math.floor(months / 12)), months: String(months % 12) })
}
