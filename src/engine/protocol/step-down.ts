import type { Protocol, ProtocolStep } from "./protocol.js"
import {
  afterStopAndBeyond,
  baseline,
  decision,
  monthCheck,
  review,
  SPANS,
  stopAfterAnotherYear,
  stopAt,
} from "./step-parts.js"

const nights = (count: number) => `${count} ${count === 1 ? "night" : "nights"} a week`

/** The first step comes with the 24-month review, the others a month apart. */
const stepDown = (nightsPerWeek: number, index: number): ProtocolStep =>
  decision({
    id: `step-down-${nightsPerWeek}`,
    title: `step down to ${nights(nightsPerWeek)}`,
    anchor: "start",
    offsetMonths: 24 + index,
    windowDaysBefore: index === 0 ? 30 : 7,
    windowDaysAfter: 14,
    decides: "step-down",
    nightsPerWeek,
  })

/**
 * As the standard protocol, with one night a week fewer each month at the end. That is the one taper whose result was
 * read: after two years of 0.01 % it was not shown to help (rebound.json, erdinest2025: 25 children tapered, 25 stopped
 * at once, retrospective). For other strengths there is nothing to go by.
 */
export const stepDownProtocol: Protocol = {
  id: "step-down",
  title: "Step down before the stop",
  version: "1",
  source:
    "common practice, no source; one night a week fewer each month was not shown to help after 0.01 % (one retrospective study)",
  ...SPANS,
  steps: [
    baseline(),
    monthCheck("start"),
    ...[6, 12, 18, 24].map((months) => review("start", months)),
    ...[6, 5, 4, 3, 2, 1].map(stepDown),
    review("start", 30),
    // Opens after the last step down, which would else be taken for the answer.
    { ...stopAt(30), windowDaysBefore: 7 },
    monthCheck("restart"),
    ...[6, 12].map((months) => review("restart", months)),
    stopAfterAnotherYear(),
    ...afterStopAndBeyond(),
  ],
}
