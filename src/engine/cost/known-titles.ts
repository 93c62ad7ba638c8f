import { msg, say } from "../say.js"

/** Titles that ship: of protocols, of their visits, and of the demo practice's fees. */
const MESSAGES = [
  msg("Standard protocol"),
  msg("Optical treatments"),
  msg("Step down before the stop"),
  msg("Watchful waiting before myopia"),
  msg("baseline"),
  msg("check after the first night"),
  msg("1-week check"),
  msg("1-month check"),
  msg("check 6 months after the stop"),
  msg("review while treatment goes on"),
  msg("observation"),
  msg("Fees of the demo practice (invented)"),
  msg("Length measurement"),
  msg("Refraction|fee"),
  msg("Defocus spectacles"),
  msg("Pair of night lenses"),
] as const

/** By the title itself: what follows a bar in a message only tells its meaning. */
const TITLES: ReadonlyMap<string, string> = new Map(
  MESSAGES.map((message) => [message.split("|")[0] ?? message, message]),
)

/**
 * A title as a family reads it: one that ships in the language in force, one of the practice's own as it was written. A
 * title that is in the language already comes back as it is.
 *
 * @example
 * titleInWords("6-month review") // => "revisión de los 6 meses" in Spanish
 */
export function titleInWords(title: string): string {
  const shipped = TITLES.get(title)
  if (shipped !== undefined) return say(shipped)
  const months = /^(\d+)-month review$/.exec(title)?.[1]
  if (months !== undefined) return say("{months}-month review", { months: Number(months) })
  const changed = /^(.+) after the change of (strength|treatment)(?: \((right|left) eye\))?$/.exec(title)
  if (!changed) return title
  const [, first = "", what = "", eye] = changed
  const visit = titleInWords(first)
  if (eye === undefined) {
    return say(
      "{visit} after the {what, select, strength {change of strength} other {change of treatment}}",
      {
        visit,
        what,
      },
    )
  }
  return say(
    "{visit} after the {what, select, strength {change of strength} other {change of treatment}} ({eye, select, right {right eye} other {left eye}})",
    { visit, what, eye },
  )
}
