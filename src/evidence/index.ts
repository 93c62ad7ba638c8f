/**
 * The public door of the evidence, small enough for a browser: parameters, curves, references, the tables they are read
 * from and the citations they rest on. Trials, duties, safety norms and the full registers are in
 * treatments.ts, clinical.ts and sources.ts, apart so that a bundle takes only what it shows.
 */
import { growthParameters } from "./parameters/growth-2026-11-25.js"
import { reboundEffects } from "./parameters/rebound-2026-11-25.js"
import { emmetropicCurve, references } from "./references.js"
import type { Evidence } from "./types.js"

export { citationOf } from "./citations.js"
export { growthParameters } from "./parameters/growth-2026-11-25.js"
export { emmetropicCurve, infancyMean, references } from "./references.js"
export { table, tables } from "./tables.js"
export type * from "./types.js"

/** What an assessment is given when the practice has no references of its own. */
export const evidence: Evidence = Object.freeze({
  growth: growthParameters,
  emmetropic: emmetropicCurve,
  references,
  rebound: reboundEffects,
})
