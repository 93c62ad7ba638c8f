import type { Eye } from "../course.js"
import { msg, say } from "../say.js"
import type { Protocol, ProtocolStep } from "./protocol.js"

/** What the protocols that ship call themselves and their steps, and where they say that they come from. */
const SHIPPED: ReadonlySet<string> = new Set([
  msg("Standard protocol"),
  msg("Optical treatments"),
  msg("Step down before the stop"),
  msg("Watchful waiting before myopia"),
  msg("baseline"),
  msg("check after the first night"),
  msg("1-week check"),
  msg("1-month check"),
  msg("decision to stop after 12 more months"),
  msg("check 6 months after the stop"),
  msg("decision on 12 more months"),
  msg("review while treatment goes on"),
  msg("observation"),
  msg("common practice, no source"),
  msg(
    "common practice, no source; one night a week fewer each month was not shown to help after 0.01 % (one retrospective study)",
  ),
])

/** Titles that hold a figure: a practice's own "9-month review" is said as well. */
const COUNTED: readonly (readonly [written: RegExp, said: (figure: number) => string])[] = [
  [/^([1-9]\d*)-month review$/, (months) => say("{months}-month review", { months })],
  [
    /^decision to stop at ([1-9]\d*) months$/,
    (months) => say("decision to stop at {months} months", { months }),
  ],
  [
    /^step down to (1(?= night )|[2-7](?= nights ))(?: nights?) a week$/,
    (nights) => say("step down to {nights, plural, one {# night} other {# nights}} a week", { nights }),
  ],
]

/** A title or source that ships in the language in force; what a practice wrote, as it wrote it. */
function inWords(written: string): string {
  if (SHIPPED.has(written)) return say(written)
  for (const [pattern, said] of COUNTED) {
    const figure = pattern.exec(written)?.[1]
    if (figure !== undefined) return said(Number(figure))
  }
  return written
}

/** @example stepTitle({ title: "6-month review" }) // => "revisión de los 6 meses" in Spanish */
export const stepTitle = ({ title }: Pick<ProtocolStep, "title">): string => inWords(title)

export const protocolTitle = ({ title }: Pick<Protocol, "title">): string => inWords(title)

export const protocolSource = ({ source }: Pick<Protocol, "source">): string => inWords(source)

/** What a step is called where it is owed again after a change; `eye` is the one that was changed alone, if any. */
export function titleAfterChange(step: Pick<ProtocolStep, "title" | "onlyFor">, eye?: Eye): string {
  const visit = stepTitle(step)
  const what = step.onlyFor === undefined ? "strength" : "treatment"
  if (eye === undefined)
    return say(
      "{visit} after the {what, select, strength {change of strength} other {change of treatment}}",
      {
        visit,
        what,
      },
    )
  return say(
    "{visit} after the {what, select, strength {change of strength} other {change of treatment}} ({eye, select, right {right eye} other {left eye}})",
    { visit, what, eye },
  )
}
