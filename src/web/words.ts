import { dateWords, fixed } from "../chart/words.js"
import type {
  AfterStop,
  Assessment,
  Duty,
  Finding,
  FindingState,
  GrowthState,
  GrowthVerdict,
} from "../engine/assessment.js"
import { dayNumber } from "../engine/calendar.js"
import type { Sex } from "../engine/course.js"
import { isPluralName } from "../engine/treatment-name.js"
import { capitalised, intervalInWords, odds, percent } from "./format.js"

/** What the figures say, in sentences. Every sentence holds its own figures. */

const GROWTH_WORDS: Readonly<Record<GrowthState, string>> = {
  "near-normal": "Near-normal growth",
  "slowed-growth": "Slowed growth",
  "as-untreated": "Grows as untreated",
  faster: "Faster than untreated",
  unclear: "Unclear yet",
}

const FINDING_WORDS: Readonly<Record<FindingState, string>> = {
  slowed: "Slowed by the treatment",
  "not-slowed": "Not slowed by the treatment",
  "cannot-tell-yet": "Cannot tell yet",
  "no-treatment": "Not treated",
}

const AFTER_STOP_WORDS: Readonly<Record<AfterStop["state"], string>> = {
  "no-rebound-seen": "no rebound seen",
  "rebound-likely": "rebound likely",
  "cannot-tell-yet": "rebound or not, cannot tell yet",
}

export const afterStopInWords = (state: AfterStop["state"]): string => AFTER_STOP_WORDS[state]
export const growthInWords = (state: GrowthState): string => GROWTH_WORDS[state]
export const findingInWords = (state: FindingState): string => FINDING_WORDS[state]

export const girlOrBoy = (sex: Sex): string => (sex === "female" ? "girl" : "boy")

/**
 * The figures behind the growth state, over its own dates.
 *
 * @example
 * // "0.14 mm per year over 12 months; an untreated myopic girl of this age grows 0.29, an emmetropic one 0.09."
 */
export function growthSentence(growth: GrowthVerdict, sex: Sex): string | null {
  if (growth.mmPerYear === null) return null
  const span =
    growth.from && growth.to ? ` over ${intervalInWords({ from: growth.from, to: growth.to })}` : ""
  const start = `${fixed(growth.mmPerYear, 2)} mm per year${span}`
  const untreated =
    growth.naturalMmPerYear === undefined
      ? null
      : `an untreated myopic ${girlOrBoy(sex)} of this age grows ${fixed(growth.naturalMmPerYear, 2)}`
  const emmetropic =
    growth.emmetropicMmPerYear === undefined
      ? null
      : `an emmetropic one ${fixed(growth.emmetropicMmPerYear, 2)}`
  const lines = [untreated, emmetropic].filter((line) => line !== null).join(", ")
  return lines ? `${start}; ${lines}.` : `${start}.`
}

/** "certainty 96 %" for the state said; an unclear one gives its reasons instead. */
export function certaintyInWords(growth: GrowthVerdict): string | null {
  const { probabilities, state } = growth
  if (probabilities === null || state === "unclear") return null
  // A model is never wholly certain, whatever its sums round to.
  return `certainty ${percent(Math.min(probabilities[state], 0.999))}`
}

/** What the measurements say of the treatment, with the odds. */
export function findingSentence(finding: Finding): string {
  const treatment = finding.treatment ?? "the treatment"
  if (finding.state === "no-treatment") return "There is no course of treatment with measurements to judge."
  const [works, does, they] = isPluralName(treatment) ? ["work", "do", "they"] : ["works", "does", "it"]
  if (finding.likelihoodRatio === null)
    return `There are no lengths yet that could tell whether ${treatment} ${works}.`
  if (odds(finding.likelihoodRatio) === "1 : 1")
    return `The lengths fit both alike, 1 : 1: that ${treatment} ${works} as in the trials, and that ${they} ${does} nothing.`
  const forIt = finding.likelihoodRatio >= 1
  const side = forIt ? `${treatment} ${works} as in the trials` : `${treatment} ${does} nothing`
  const other = forIt ? `${does} nothing` : `${works} as in the trials`
  return `The lengths are ${odds(finding.likelihoodRatio)} likelier if ${side} than if ${they} ${other}.`
}

/** When an answer is due, or that none is likely from the planned reviews. */
export function earliestAnswerSentence(finding: Finding): string | null {
  if (finding.state !== "cannot-tell-yet") return null
  // Past a limit without an answer it is not reviews that are waited for; the reasons say what is.
  const { likelihoodRatio, upper, lower } = finding
  if (likelihoodRatio !== null && (likelihoodRatio >= upper || likelihoodRatio <= lower)) return null
  if (finding.earliestAnswer !== null)
    return `An answer is at least as likely as not by ${dateWords(finding.earliestAnswer)}.`
  return "No planned review reaches even odds of an answer: in this child that question may stay open."
}

/** "opens 1 Dec 2026, due 15 Dec 2026", "19 days late, was due 6 Nov 2026". */
export function dutyTiming(duty: Pick<Duty, "due" | "state"> & Partial<Duty>, today: string): string {
  const due = dateWords(duty.due)
  switch (duty.state) {
    case "done":
      return "done"
    case "missed":
      return `missed, was due ${due}`
    case "overdue": {
      const days = dayNumber(today) - dayNumber(duty.due)
      return `${days} ${days === 1 ? "day" : "days"} late, was due ${due}`
    }
    case "open":
      if (duty.closes === duty.due) return `due ${due}`
      return duty.closes ? `due ${due}, open until ${dateWords(duty.closes)}` : `open now, due ${due}`
    case "upcoming":
      return duty.opens ? `due ${due}, opens ${dateWords(duty.opens)}` : `due ${due}`
  }
}

/** One line for lists and the visit form: "Slowed growth, 0.14 mm per year". */
export function growthLine(assessment: Pick<Assessment, "growth">): string {
  const { state, mmPerYear } = assessment.growth
  return mmPerYear === null
    ? GROWTH_WORDS[state]
    : capitalised(`${GROWTH_WORDS[state]}, ${fixed(mmPerYear, 2)} mm per year`)
}
