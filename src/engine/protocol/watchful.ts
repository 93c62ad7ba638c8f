import type { Measure, Protocol } from "./protocol.js"
import { baseline, goingOn, observation, SPANS } from "./step-parts.js"

const GROWTH: readonly Measure[] = ["axial-length", "cycloplegic-refraction"]

/** For a child who is not myopic and on no treatment: length and refraction with cycloplegia every half year. */
export const watchfulProtocol: Protocol = {
  id: "watchful",
  title: "Watchful waiting before myopia",
  version: "1",
  source: "common practice, no source",
  ...SPANS,
  // With a step for a child on treatment, so that nobody drops out of sight while the protocol is not changed.
  steps: [{ ...baseline(), measures: GROWTH }, { ...observation(), measures: GROWTH }, goingOn()],
}
