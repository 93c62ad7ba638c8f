import type { MessageRules } from "../practice-rules.js"

/**
 * Whether no family is written to at this moment, by the clock on the wall where the practice is: so the hours stay what
 * they are when the clocks change. The end of the quiet hours is not quiet; where both ends are the same nothing is.
 *
 * @example
 * isQuiet({ nowMs: Date.parse("2026-01-10T22:30:00Z"), quietFrom: "21:00", quietTo: "08:00", timeZone: "Europe/Dublin" })
 * // => true
 */
export function isQuiet({
  nowMs,
  quietFrom,
  quietTo,
  timeZone,
}: Pick<MessageRules, "quietFrom" | "quietTo" | "timeZone"> & { readonly nowMs: number }): boolean {
  const now = wallClock(nowMs, timeZone)
  return quietFrom <= quietTo ? quietFrom <= now && now < quietTo : quietFrom <= now || now < quietTo
}

/** Hours and minutes on the wall, "HH:MM". */
function wallClock(nowMs: number, timeZone: string): string {
  return new Intl.DateTimeFormat("en-GB", {
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
    timeZone,
  }).format(nowMs)
}

/** Whether the text is a time zone of the IANA list that is known here. */
export function isTimeZone(text: string): boolean {
  try {
    return new Intl.DateTimeFormat("en", { timeZone: text }).resolvedOptions().timeZone !== ""
  } catch {
    return false
  }
}
