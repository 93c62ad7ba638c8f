import type { Problem } from "../../engine/problem.js"
import { msg, say, withDecimalSign } from "../../engine/say.js"
import { dayOf, type Loose, records } from "./loose.js"
import { problem } from "./problem.js"

/** Rules that join two fields, for consents, bottles, orders, concerns and what the family told. */
export function programmeProblems(course: Loose): readonly Problem[] {
  return [
    ...inOrder(course, { list: "consents", first: "date", second: "until" }),
    ...inOrder(course, { list: "missedNights", first: "from", second: "to" }),
    ...inOrder(course, { list: "concerns", first: "opened", second: "closed" }),
    ...inOrder(course, { list: "orders", first: "date", second: "confirmed" }),
    ...inOrder(course, { list: "orders", first: "date", second: "received" }),
    ...inOrder(course, { list: "orders", first: "date", second: "cancelled" }),
    ...moreNightsThanDays(course),
    ...receivedAndCancelled(course),
    ...withoutWords(course),
    ...answeredTwice(course),
    ...closedWithoutOutcome(course),
    ...lotsOfTwoStrengths(course),
    ...tapersWithoutDrops(course),
  ]
}

const FIELDS = {
  date: msg("date|a field"),
  from: msg("from|a field"),
  opened: msg("opened|a field"),
} as const

function inOrder(
  course: Loose,
  {
    list,
    first,
    second,
  }: { readonly list: string; readonly first: keyof typeof FIELDS; readonly second: string },
): readonly Problem[] {
  return records(course[list]).flatMap((item, index) => {
    const [start, end] = [dayOf(item[first]), dayOf(item[second])]
    if (start === null || end === null || end >= start) return []
    const allowed = say("on or after {field} ({day})", {
      field: say(FIELDS[first]),
      day: String(item[first]),
    })
    return [problem({ path: `${list}[${index}].${second}`, value: item[second], allowed })]
  })
}

function moreNightsThanDays(course: Loose): readonly Problem[] {
  return records(course.missedNights).flatMap(({ from, to, nights }, index) => {
    const [start, end] = [dayOf(from), dayOf(to)]
    if (start === null || end === null || end < start || typeof nights !== "number") return []
    const days = end - start + 1
    if (nights <= days) return []
    const allowed = say("at most {days}, the nights from {from} to {to}", {
      days,
      from: String(from),
      to: String(to),
    })
    return [problem({ path: `missedNights[${index}].nights`, value: nights, allowed })]
  })
}

function receivedAndCancelled(course: Loose): readonly Problem[] {
  return records(course.orders).flatMap(({ received, cancelled }, index) => {
    if (dayOf(received) === null || dayOf(cancelled) === null) return []
    const allowed = say("absent, since the bottles came on {day}", { day: String(received) })
    return [problem({ path: `orders[${index}].cancelled`, value: cancelled, allowed })]
  })
}

/** What has to be said in words is not said by a blank. */
function withoutWords(course: Loose): readonly Problem[] {
  const fields: readonly (readonly [list: string, field: string, allowed: string])[] = [
    ["decisions", "reason", msg("why, in words")],
    ["concerns", "kind", msg("what it is about, in a few words")],
    ["concerns", "what", msg("what was seen or told, in words")],
  ]
  return fields.flatMap(([list, field, allowed]) =>
    records(course[list]).flatMap((item, index) => {
      const value = item[field]
      if (typeof value !== "string" || value.trim() !== "") return []
      return [problem({ path: `${list}[${index}].${field}`, value, allowed: say(allowed) })]
    }),
  )
}

/** Two answers to one question on one day leave open which one holds. */
function answeredTwice(course: Loose): readonly Problem[] {
  return records(course.visits).flatMap(({ answers }, visit) => {
    const first = new Map<string, number>()
    return records(answers).flatMap(({ question }, index) => {
      if (typeof question !== "string") return []
      const known = first.get(question)
      if (known === undefined) first.set(question, index)
      const path = `visits[${visit}].answers[${index}].question`
      if (question.trim() === "")
        return [problem({ path, value: question, allowed: say("the id of a question") })]
      if (known === undefined) return []
      const allowed = say("a question that this visit has not answered yet ({other} has this one)", {
        other: `answers[${known}]`,
      })
      return [problem({ path, value: question, allowed })]
    })
  })
}

function closedWithoutOutcome(course: Loose): readonly Problem[] {
  return records(course.concerns).flatMap(({ closed, outcome }, index) => {
    const isSaid = typeof outcome === "string" && outcome.trim() !== ""
    if (dayOf(closed) === null || isSaid) return []
    const allowed = say("how it ended, in words, since it was closed on {day}", { day: String(closed) })
    return [problem({ path: `concerns[${index}].outcome`, value: outcome, allowed })]
  })
}

/** One lot is one making: a second strength under its name is a slip or a mix-up at the pharmacy. */
function lotsOfTwoStrengths(course: Loose): readonly Problem[] {
  const first = new Map<string, { readonly percent: number; readonly index: number }>()
  return records(course.supplies).flatMap(({ lot, pharmacy, concentrationPercent }, index) => {
    if (typeof lot !== "string" || typeof concentrationPercent !== "number") return []
    const key = `${String(pharmacy ?? "")}\n${lot.trim().toLowerCase()}`
    const known = first.get(key)
    if (known === undefined) first.set(key, { percent: concentrationPercent, index })
    if (known === undefined || known.percent === concentrationPercent) return []
    const allowed = say("a lot of one strength ({other} has {percent} % under this lot, this one {own} %)", {
      other: `supplies[${known.index}]`,
      percent: withDecimalSign(String(known.percent)),
      own: withDecimalSign(String(concentrationPercent)),
    })
    return [problem({ path: `supplies[${index}].lot`, value: lot, allowed })]
  })
}

function tapersWithoutDrops(course: Loose): readonly Problem[] {
  return records(course.treatments).flatMap(({ kind, nightsPerWeek }, index) =>
    typeof nightsPerWeek === "number" && typeof kind === "string" && kind !== "atropine"
      ? [
          problem({
            path: `treatments[${index}].nightsPerWeek`,
            value: nightsPerWeek,
            allowed: say("absent: only drops are given some nights of the week, and this is {kind}", {
              kind,
            }),
          }),
        ]
      : [],
  )
}
