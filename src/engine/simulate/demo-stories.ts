import type { Assessment, FindingState, GrowthState } from "../assessment.js"
import type { Story } from "./demo-scenarios.js"

type Shows = (assessment: Assessment) => boolean

const finds =
  (...states: readonly FindingState[]): Shows =>
  ({ finding }) =>
    states.includes(finding.state)
const grows =
  (...states: readonly GrowthState[]): Shows =>
  ({ growth }) =>
    states.includes(growth.state)
const open: Shows = finds("cannot-tell-yet")
const warns =
  (kind: string): Shows =>
  ({ checks }) =>
    checks.some((check) => check.kind === kind)

/** How each story is told from the child's assessment. */
const told: Readonly<Record<Story, Shows>> = {
  slowed: finds("slowed"),
  "lean-slowed": ({ finding }) => finding.state === "cannot-tell-yet" && finding.lean === "slowed",
  "not-slowed": finds("not-slowed"),
  "lean-not-slowed": ({ finding, growth }) =>
    finding.state === "cannot-tell-yet" && finding.lean === "not-slowed" && growth.state !== "near-normal",
  "too-early": ({ finding }) => finding.state === "cannot-tell-yet" && finding.lean === null,
  "weak-drop": ({ finding }) => finding.state === "cannot-tell-yet" && finding.lean === null,
  "stopped-near-normal": grows("near-normal"),
  "stopped-rebound": grows("faster"),
  "stopped-loss-of-effect": grows("as-untreated"),
  "changed-instrument": open,
  "ultrasound-first": open,
  "missed-visits": open,
  "pre-myopic": ({ finding, growth }) => finding.state === "no-treatment" && growth.probabilities === null,
  optical: finds("cannot-tell-yet", "slowed"),
  combined: finds("cannot-tell-yet", "slowed"),
  "stronger-drop": finds("cannot-tell-yet", "slowed"),
  watched: ({ finding, growth }) => finding.state === "no-treatment" && growth.probabilities !== null,
  "poor-coverage": ({ finding }) =>
    finding.state !== "slowed" && finding.reasons.some((reason) => reason.includes("nights had a bottle")),
  "exchanged-eyes": warns("eyes-exchanged"),
  "lost-sign": warns("sign-changed"),
  "light-sensitivity": ({ concerns }) => concerns.length > 0,
  "fast-grower": grows("faster"),
  "growth-ending": ({ growth }) => growth.reasons.some((reason) => reason.startsWith("growth is ending")),
  "one-eye": ({ eyes }) => eyes.right.rate !== null && eyes.left.length === null,
  "too-young": ({ refused }) => refused !== undefined,
}

const SLIPS: Readonly<Record<string, Story>> = {
  "eyes-exchanged": "exchanged-eyes",
  "sign-changed": "lost-sign",
  "implausible-change": "exchanged-eyes",
}

/** Noise can make a slow eye seem to shrink; so much of it, mm a year, would only puzzle a visitor. */
const MOST_SHRINKING = -0.03

/** Whether an invented child shows what its story promises, and no slip of the hand that the story does not have. */
export function showsItsStory(story: Story, assessment: Assessment): boolean {
  if ((assessment.growth.mmPerYear ?? 0) < MOST_SHRINKING) return false
  const clean = assessment.checks.every(({ kind }) => SLIPS[kind] === undefined || SLIPS[kind] === story)
  return clean && told[story](assessment)
}
