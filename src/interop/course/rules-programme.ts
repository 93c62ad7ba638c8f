import type { Problem } from "../../engine/problem.js"
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
    ...closedWithoutOutcome(course),
    ...lotsOfTwoStrengths(course),
    ...tapersWithoutDrops(course),
  ]
}

function inOrder(
  course: Loose,
  { list, first, second }: { readonly list: string; readonly first: string; readonly second: string },
): readonly Problem[] {
  return records(course[list]).flatMap((item, index) => {
    const [start, end] = [dayOf(item[first]), dayOf(item[second])]
    if (start === null || end === null || end >= start) return []
    const allowed = `on or after ${first} (${String(item[first])})`
    return [problem({ path: `${list}[${index}].${second}`, value: item[second], allowed })]
  })
}

function moreNightsThanDays(course: Loose): readonly Problem[] {
  return records(course.missedNights).flatMap(({ from, to, nights }, index) => {
    const [start, end] = [dayOf(from), dayOf(to)]
    if (start === null || end === null || end < start || typeof nights !== "number") return []
    const days = end - start + 1
    if (nights <= days) return []
    const allowed = `at most ${days}, the nights from ${String(from)} to ${String(to)}`
    return [problem({ path: `missedNights[${index}].nights`, value: nights, allowed })]
  })
}

function closedWithoutOutcome(course: Loose): readonly Problem[] {
  return records(course.concerns).flatMap(({ closed, outcome }, index) => {
    const isSaid = typeof outcome === "string" && outcome.trim() !== ""
    if (dayOf(closed) === null || isSaid) return []
    const allowed = `how it ended, in words, since it was closed on ${String(closed)}`
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
    const allowed = `a lot of one strength (supplies[${known.index}] has ${known.percent} % under this lot, this one ${concentrationPercent} %)`
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
            allowed: `absent: only drops are given some nights of the week, and this is ${kind}`,
          }),
        ]
      : [],
  )
}
