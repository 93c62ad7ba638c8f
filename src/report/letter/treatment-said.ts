import type { Finding } from "../../engine/assessment.js"
import { say, shortDayInWords } from "../../engine/say.js"
import { oddsOf } from "../record/figures.js"
import type { Reading } from "../record/reading.js"

/** From here on a ratio leans to one side (as in the engine's finding). */
const LEAN_RATIO = 3

/** Whether the treatment can be told to work in this child, apart from how fast the eyes grow. */
export function treatmentSaid({ assessment: { finding, refused }, isInDoubt }: Reading): string {
  const { state, treatment, likelihoodRatio: ratio } = finding
  if (refused !== undefined) {
    return say("Whether a treatment works in this child is not asked outside the ages of the evidence.")
  }
  if (state === "no-treatment" || treatment === null) {
    return say("There is no course of treatment to judge.")
  }
  if (ratio === null) {
    return say(
      "Whether the growth is slowed by {treatment} cannot be told: there is nothing yet to weigh it by in this child.",
      { treatment },
    )
  }
  const values = { treatment, odds: oddsOf(ratio) }
  if (state === "slowed") {
    return say(
      "By this child's own lengths {treatment} can be told to slow the growth: they are {odds} for an effect as in the trials against none.",
      values,
    )
  }
  if (state === "not-slowed") {
    return say(
      "By this child's own lengths {treatment} can be told not to slow the growth: they are {odds} for no effect against one as in the trials.",
      values,
    )
  }
  return isInDoubt
    ? say(
        "Whether the growth is slowed by {treatment} cannot be told while a figure waits to be measured again.",
        { treatment },
      )
    : cannotTell({ finding, ratio, values })
}

function cannotTell({
  finding: { lean, lower, upper },
  ratio,
  values,
}: {
  readonly finding: Finding
  readonly ratio: number
  readonly values: { readonly treatment: string; readonly odds: string }
}): string {
  if (lean === "not-slowed" && ratio <= lower) {
    return say(
      "Whether the growth is slowed by {treatment} cannot be told: the lengths speak against it ({odds}), but too few nights had a drop for a verdict.",
      values,
    )
  }
  if (lean === null && (ratio >= LEAN_RATIO || ratio <= 1 / LEAN_RATIO)) {
    return say(
      "Whether the growth is slowed by {treatment} cannot be told yet: the time on it is still too short.",
      values,
    )
  }
  if (values.odds === "1 : 1") {
    return say(
      "Whether the growth is slowed by {treatment} cannot be told yet from this child's own lengths: they fit an effect and none alike.",
      values,
    )
  }
  return ratio > 1
    ? say(
        "Whether the growth is slowed by {treatment} cannot be told yet from this child's own lengths: they are {odds} for an effect, and {asked} is asked for.",
        { ...values, asked: oddsOf(upper) },
      )
    : say(
        "Whether the growth is slowed by {treatment} cannot be told yet from this child's own lengths: they are {odds} against an effect, and {asked} is asked for.",
        { ...values, asked: oddsOf(lower) },
      )
}

/** When an answer about the treatment is to be had; null where it is not reviews that are waited for. */
export function answerSaid({ assessment: { finding }, isInDoubt }: Reading): string | null {
  const { state, likelihoodRatio: ratio, upper, lower, earliestAnswer } = finding
  if (state !== "cannot-tell-yet" || ratio === null || isInDoubt) return null
  if (ratio >= upper || ratio <= lower) return null
  return earliestAnswer === null
    ? say("No planned review reaches even odds of an answer: in this child that question may stay open.")
    : say("An answer is at least as likely as not by {day}.", { day: shortDayInWords(earliestAnswer) })
}
