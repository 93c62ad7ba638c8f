import type { Protocol } from "./protocol.js"
import {
  afterStopAndBeyond,
  baseline,
  monthCheck,
  review,
  SPANS,
  stopAfterAnotherYear,
  stopAt,
} from "./step-parts.js"

/**
 * The protocol that ships: baseline, 1 month, every 6 months to 24, stop, 6 months after, 12 more months if growth returns.
 * Every interval, window and list here is common practice without a source, and a practice setting.
 */
export const standardProtocol: Protocol = {
  id: "standard",
  title: "Standard protocol",
  version: "1",
  source: "common practice, no source",
  ...SPANS,
  steps: [
    baseline(),
    monthCheck("start"),
    ...[6, 12, 18, 24].map((months) => review("start", months)),
    stopAt(24),
    monthCheck("restart"),
    ...[6, 12].map((months) => review("restart", months)),
    stopAfterAnotherYear(),
    ...afterStopAndBeyond(),
  ],
}
