import type { Check, Finding, GrowthVerdict } from "../assessment.js"
import type { Study } from "../growth/study.js"
import { isMeasuredAgain } from "../measured-again.js"
import { listed, say } from "../say.js"
import { exchangedEyes } from "./exchanged-eyes.js"
import { implausibleChanges } from "./implausible-change.js"

/** Figures so unlikely among the child's others that an answer which rests on them is not to be believed. */
export function doubtfulFigures(study: Study): readonly Check[] {
  const exchanged = exchangedEyes(study)
  // An exchanged pair is two implausible changes with one cause; it is named once.
  const implausible = implausibleChanges(study).filter(
    (check) => !exchanged.some((other) => check.path.startsWith(other.path)),
  )
  return [...exchanged, ...implausible]
}

/** Which visits hold a figure in doubt, in words; null when none does that was not measured again. */
export function inDoubt({ course }: Pick<Study, "course">, doubts: readonly Check[]): string | null {
  const visits = doubts.flatMap(({ path }) => {
    const index = /^visits\[(\d+)\]/.exec(path)?.[1]
    return index === undefined ? [] : (course.visits[Number(index)] ?? [])
  })
  const dates = visits.filter((visit) => !isMeasuredAgain(visit)).map(({ date }) => date)
  if (dates.length === 0) return null
  const days = [...new Set(dates)].sort()
  return say("a figure of {days} is in doubt", { days: listed(days) })
}

/** What ends the wait: a correction of the visit, or its mark of having been measured again. */
export const waits = (doubt: string): string =>
  say("{doubt}: no answer until it has been measured again or put right", { doubt })

/**
 * The growth while a figure is in doubt: no state and no probabilities, since they would be as sure of a slip of the
 * hand as of a measurement. The rate stays, as what the figures say as they stand.
 */
export const growthInDoubt = (growth: GrowthVerdict, doubt: string): GrowthVerdict => ({
  ...growth,
  state: "unclear",
  probabilities: null,
  reasons: [waits(doubt)],
})

/** The second question while a figure is in doubt: the ratio as it stands, and neither a verdict nor a lean. */
export function findingInDoubt<T extends Omit<Finding, "earliestAnswer">>(finding: T, doubt: string): T {
  const saysSomething = finding.state === "slowed" || finding.state === "not-slowed" || finding.lean !== null
  return saysSomething
    ? { ...finding, state: "cannot-tell-yet", lean: null, reasons: [waits(doubt), ...finding.reasons] }
    : finding
}
