import type { GrowthVerdict, KnownGrowthState } from "../../engine/assessment.js"
import { say, shortDayInWords } from "../../engine/say.js"
import { evidence } from "../../evidence/index.js"
import { certainty, decimals } from "../record/figures.js"
import type { Reading } from "../record/reading.js"

/**
 * What is said of the growth, one sentence with its figures and 95 % interval. Nothing of the treatment is in it: that is
 * another question.
 */
export function growthSaid({ assessment: { growth, refused }, isInDoubt }: Reading): string {
  if (refused !== undefined) {
    const { youngestAgeYears, oldestAgeYears } = evidence.growth.values
    return say(
      "Nothing is said of the growth: the evidence covers children of {youngest} to {oldest} years.",
      {
        youngest: String(youngestAgeYears.value),
        oldest: String(oldestAgeYears.value),
      },
    )
  }
  const figures = figuresOf(growth)
  if (figures === null) return say("Growth cannot be told yet: no eye has been measured twice.")
  if (isInDoubt) {
    return say(
      "A figure is in doubt and has to be measured again before anything is said of the growth; as they stand, the figures give {rate} mm a year (95 % interval {low} to {high}) from {from} to {to}.",
      figures,
    )
  }
  const { probabilities, emmetropicMmPerYear } = growth
  if (probabilities === null) {
    return say(
      "From {from} to {to} {eye, select, right {the right eye} left {the left eye} other {the eyes}} grew {rate} mm a year (95 % interval {low} to {high}); the child is not myopic, and eyes without myopia grow {emmetropic} mm a year at this age.",
      { ...figures, emmetropic: decimals(emmetropicMmPerYear ?? 0, 2) },
    )
  }
  if (growth.state !== "unclear") {
    return say(
      "From {from} to {to} {eye, select, right {the right eye} left {the left eye} other {the eyes}} grew {rate} mm a year (95 % interval {low} to {high}): {state, select, near-normal {near-normal growth} slowed-growth {slowed growth} as-untreated {growth as untreated} other {growth faster than untreated}}, {certainty} certain.",
      { ...figures, state: growth.state, certainty: certainty(probabilities[growth.state]) },
    )
  }
  return say(
    "From {from} to {to} {eye, select, right {the right eye} left {the left eye} other {the eyes}} grew {rate} mm a year (95 % interval {low} to {high}): no clear answer yet.",
    figures,
  )
}

/** Why an answer about the growth is not clear; null where it is, or where the sentence itself says why. */
export function growthReason({ assessment: { growth }, input: { settings } }: Reading): string | null {
  const { state, probabilities } = growth
  if (state !== "unclear" || probabilities === null) return null
  const [likeliest, share] = likeliestOf(probabilities)
  if (share >= settings.certainty) {
    return say(
      "Growth with and without myopia lie closer together over these dates than the instrument can tell.",
    )
  }
  return say(
    "The likeliest, {state, select, near-normal {near-normal growth} slowed-growth {slowed growth} as-untreated {growth as untreated} other {growth faster than untreated}}, is only {certainty} certain, and {asked} is asked for.",
    { state: likeliest, certainty: certainty(share), asked: certainty(settings.certainty) },
  )
}

/** Growth expected over the same dates, with and without myopia; null where there is nothing to set beside it. */
export function expectedSaid({ assessment: { growth }, course }: Reading): string | null {
  const { naturalMmPerYear: natural, emmetropicMmPerYear: emmetropic, mmPerYear } = growth
  if (mmPerYear === null || natural === undefined || emmetropic === undefined) return null
  return say(
    "Over the same dates {natural} mm a year is expected of {sex, select, female {an untreated myopic girl} other {an untreated myopic boy}} of this age, {emmetropic} mm of {sex, select, female {a girl without myopia} other {a boy without myopia}}.",
    { sex: course.child.sex, natural: decimals(natural, 2), emmetropic: decimals(emmetropic, 2) },
  )
}

/** After every treatment has ended: the growth since then beside natural growth; null where that is not asked. */
export function afterStopSaid({ assessment: { afterStop } }: Reading): string | null {
  if (!afterStop || afterStop.growthMm === null || afterStop.naturalMm === null) return null
  return say(
    "Since the stop the eyes grew {mm} mm where {natural} mm is natural growth: {state, select, no-rebound-seen {no rebound is seen} rebound-likely {a rebound is likely} other {whether they rebound cannot be told yet}}.",
    {
      mm: decimals(afterStop.growthMm, 2),
      natural: decimals(afterStop.naturalMm, 2),
      state: afterStop.state,
    },
  )
}

function figuresOf({ mmPerYear, low95, high95, from, to, eye }: GrowthVerdict) {
  if (mmPerYear === null || low95 === undefined || high95 === undefined) return null
  if (from === undefined || to === undefined) return null
  return {
    rate: decimals(mmPerYear, 2),
    low: decimals(low95, 2),
    high: decimals(high95, 2),
    from: shortDayInWords(from),
    to: shortDayInWords(to),
    eye: eye ?? "both",
  }
}

function likeliestOf(
  probabilities: Readonly<Record<KnownGrowthState, number>>,
): readonly [KnownGrowthState, number] {
  const states: readonly KnownGrowthState[] = ["near-normal", "slowed-growth", "as-untreated", "faster"]
  return states.reduce<readonly [KnownGrowthState, number]>(
    (best, state) => (probabilities[state] > best[1] ? [state, probabilities[state]] : best),
    ["near-normal", probabilities["near-normal"]],
  )
}
