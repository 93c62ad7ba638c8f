import { dateWords, fixed } from "../chart/words.js"
import type {
  AfterStop,
  Assessment,
  Duty,
  Finding,
  FindingState,
  GrowthState,
  GrowthVerdict,
  Lean,
} from "../engine/assessment.js"
import { dayNumber } from "../engine/calendar.js"
import type { Sex } from "../engine/course.js"
import { msg, say } from "../engine/say.js"
import { isPluralName } from "../engine/treatment-name.js"
import { intervalInWords, odds, percent } from "./format.js"

/** What the figures say, in sentences. Every sentence holds its own figures. */

const GROWTH_WORDS: Readonly<Record<GrowthState, string>> = {
  "near-normal": msg("Near-normal growth"),
  "slowed-growth": msg("Slowed growth"),
  "as-untreated": msg("Grows as untreated"),
  faster: msg("Faster than untreated"),
  unclear: msg("Unclear yet"),
}

const FINDING_WORDS: Readonly<Record<FindingState, string>> = {
  slowed: msg("Slowed by the treatment"),
  "not-slowed": msg("Not slowed by the treatment"),
  "cannot-tell-yet": msg("Cannot tell yet"),
  "no-treatment": msg("Not treated"),
}

const LEAN_WORDS: Readonly<Record<Lean, string>> = {
  slowed: msg("leans to slowed by the treatment"),
  "not-slowed": msg("leans to not slowed by the treatment"),
}

const AFTER_STOP_WORDS: Readonly<Record<AfterStop["state"], string>> = {
  "no-rebound-seen": msg("no rebound seen"),
  "rebound-likely": msg("rebound likely"),
  "cannot-tell-yet": msg("rebound or not, cannot tell yet"),
}

export const afterStopInWords = (state: AfterStop["state"]): string => say(AFTER_STOP_WORDS[state])
export const growthInWords = (state: GrowthState): string => say(GROWTH_WORDS[state])
export const findingInWords = (state: FindingState): string => say(FINDING_WORDS[state])

export const leanInWords = (lean: Lean): string => say(LEAN_WORDS[lean])

export const girlOrBoy = (sex: Sex): string => (sex === "female" ? say("girl") : say("boy"))

/**
 * The figures behind the growth state, over its own dates.
 *
 * @example
 * // "0.14 mm per year over 12 months; an untreated myopic girl of this age grows 0.29, an emmetropic one 0.09."
 */
export function growthSentence(growth: GrowthVerdict, sex: Sex): string | null {
  const { mmPerYear, from, to, naturalMmPerYear, emmetropicMmPerYear } = growth
  if (mmPerYear === null) return null
  const mm = fixed(mmPerYear, 2)
  const rate =
    from && to
      ? say("{mm} mm per year over {span}", { mm, span: intervalInWords({ from, to }) })
      : say("{mm} mm per year", { mm })
  const untreated = naturalMmPerYear === undefined ? "" : fixed(naturalMmPerYear, 2)
  const emmetropic = emmetropicMmPerYear === undefined ? "" : fixed(emmetropicMmPerYear, 2)
  if (untreated && emmetropic) {
    return say(
      "{rate}; {sex, select, female {an untreated myopic girl} other {an untreated myopic boy}} of this age grows {untreated}, an emmetropic one {emmetropic}.",
      { rate, sex, untreated, emmetropic },
    )
  }
  if (untreated) {
    return say(
      "{rate}; {sex, select, female {an untreated myopic girl} other {an untreated myopic boy}} of this age grows {untreated}.",
      { rate, sex, untreated },
    )
  }
  return emmetropic
    ? say("{rate}; an emmetropic one {emmetropic}.", { rate, emmetropic })
    : say("{rate}.", { rate })
}

/** "certainty 96 %" for the state said; an unclear one gives its reasons instead. */
export function certaintyInWords(growth: GrowthVerdict): string | null {
  const { probabilities, state } = growth
  if (probabilities === null || state === "unclear") return null
  // A model is never wholly certain, whatever its sums round to.
  return say("certainty {percent}", { percent: percent(Math.min(probabilities[state], 0.999)) })
}

/** What the measurements say of the treatment, with the odds. */
export function findingSentence({ treatment: named, state, likelihoodRatio }: Finding): string {
  if (state === "no-treatment") return say("There is no course of treatment with measurements to judge.")
  const treatment = named ?? say("the treatment")
  const number = isPluralName(treatment) ? "many" : "one"
  if (likelihoodRatio === null) {
    return say(
      "There are no lengths yet that could tell whether {number, select, many {{treatment} work} other {{treatment} works}}.",
      { treatment, number },
    )
  }
  const told = { treatment, number, odds: odds(likelihoodRatio) }
  if (told.odds === "1 : 1") {
    return say(
      "The lengths fit both alike, 1 : 1: that {number, select, many {{treatment} work} other {{treatment} works}} as in the trials, and that {number, select, many {they do} other {it does}} nothing.",
      { treatment, number },
    )
  }
  return likelihoodRatio >= 1
    ? say(
        "The lengths are {odds} likelier if {number, select, many {{treatment} work} other {{treatment} works}} as in the trials than if {number, select, many {they do} other {it does}} nothing.",
        told,
      )
    : say(
        "The lengths are {odds} likelier if {number, select, many {{treatment} do} other {{treatment} does}} nothing than if {number, select, many {they work} other {it works}} as in the trials.",
        told,
      )
}

/** When an answer is due, or that none is likely from the planned reviews. */
export function earliestAnswerSentence(finding: Finding): string | null {
  if (finding.state !== "cannot-tell-yet") return null
  // Past a limit without an answer it is not reviews that are waited for; the reasons say what is.
  const { likelihoodRatio, upper, lower } = finding
  if (likelihoodRatio !== null && (likelihoodRatio >= upper || likelihoodRatio <= lower)) return null
  return finding.earliestAnswer !== null
    ? say("An answer is at least as likely as not by {day}.", { day: dateWords(finding.earliestAnswer) })
    : say("No planned review reaches even odds of an answer: in this child that question may stay open.")
}

/** "opens 1 Dec 2026, due 15 Dec 2026", "19 days late, was due 6 Nov 2026". */
export function dutyTiming(duty: Pick<Duty, "due" | "state"> & Partial<Duty>, today: string): string {
  const due = dateWords(duty.due)
  switch (duty.state) {
    case "done":
      return say("done|duty")
    case "missed":
      return say("missed, was due {due}", { due })
    case "overdue": {
      const days = dayNumber(today) - dayNumber(duty.due)
      return say("{days, plural, one {# day late} other {# days late}}, was due {due}", { days, due })
    }
    case "open":
      if (duty.closes === duty.due) return say("due {day}", { day: due })
      return duty.closes
        ? say("due {due}, open until {closes}", { due, closes: dateWords(duty.closes) })
        : say("open now, due {due}", { due })
    case "upcoming":
      return duty.opens
        ? say("due {due}, opens {opens}", { due, opens: dateWords(duty.opens) })
        : say("due {day}", { day: due })
  }
}

/** One line for lists and the visit form: "Slowed growth, 0.14 mm per year". */
export function growthLine({ growth: { state, mmPerYear } }: Pick<Assessment, "growth">): string {
  return mmPerYear === null
    ? growthInWords(state)
    : say("{growth}, {mm} mm per year", { growth: growthInWords(state), mm: fixed(mmPerYear, 2) })
}
