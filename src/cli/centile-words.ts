import { fixed } from "./words.js"

/** "centile 78", or "below p3" where the reference has no more. */
export function centileInWords(centile: number | string): string {
  return typeof centile === "string"
    ? centile
    : `centile ${fixed(centile, centile < 1 || centile > 99 ? 1 : 0)}`
}
