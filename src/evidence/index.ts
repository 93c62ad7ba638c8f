/**
 * The public door of the evidence, small enough for a browser: parameters, curves, references, the tables they are read
 * from and the citations they rest on. Trials, duties, safety norms and the full registers are in
 * treatments.ts, clinical.ts and sources.ts, apart so that a bundle takes only what it shows.
 */
import { deepFreeze } from "./freeze.js"
import { citations } from "./generated/citations.js"
import { growthParameters } from "./parameters/growth-2026-11-25.js"
import { emmetropicCurve, references } from "./references.js"
import type { Evidence, Source } from "./types.js"

export { growthParameters } from "./parameters/growth-2026-11-25.js"
export { emmetropicCurve, infancyMean, references } from "./references.js"
export { table, tables } from "./tables.js"
export type * from "./types.js"

/** What an assessment is given when the practice has no references of its own. */
export const evidence: Evidence = Object.freeze({
  growth: growthParameters,
  emmetropic: emmetropicCurve,
  references,
})

const byId = new Map(deepFreeze(citations).map((source) => [source.id, source]))

/** The citation behind a parameter or effect, e.g. "treatments/yam2019"; undefined for the word "assumption". */
export function citationOf(id: string): Source | undefined {
  return byId.get(id)
}
