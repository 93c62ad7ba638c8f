import { msg } from "../say.js"

/**
 * Proportion of days covered, as counted here. Trials of drops do not share one definition (evidence/treatments,
 * definitions.json: "not in abstract" for most), so ours is stated wherever the figure stands. Bottles tell how many
 * nights could have had a drop, never how many had one; an electronic count and what parents reported differed in a
 * pilot (wang_mems), so both figures are kept apart.
 */
export const PDC_DEFINITION = msg(
  "days with an in-date opened bottle of the prescribed strength, divided by the days of prescription; nothing is carried over from one bottle to the next, days with two bottles count once, and a bottle whose opening nobody recorded counts from the day it was handed out",
)

/** Below this share coverage counts as poor: the rule of one trial (evidence/clinical, CD-071, CTRI-021193). */
export const POOR_COVERAGE = 0.8

/** To be said in the reader's language where it stands. */
export const ADHERENCE_RULE = msg("below 80 % counts as poor in one trial's rules")
