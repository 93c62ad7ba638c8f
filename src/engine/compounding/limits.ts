/** Share of the label within which a finished solution must lie. */
export interface AssayLimits {
  readonly lowPercentOfLabel: number
  readonly highPercentOfLabel: number
  /** Where the limits stand: path and source in the evidence. */
  readonly source: string
}

/**
 * Assay of the United States pharmacopoeia's atropine sulfate ophthalmic solution, 93.0 to 107.0 % of label
 * (evidence: treatments/compounding.json, usp.monograph). The 90 to 110 % often quoted belongs to the ointment.
 */
export const uspSolutionLimits: AssayLimits = {
  lowPercentOfLabel: 93,
  highPercentOfLabel: 107,
  source: "usp.monograph",
}

/**
 * What a transfer can measure. Both are a pharmacy's own settings.
 * Assumption, common practice, no source: nothing under 0.5 mL is measured, a syringe is read to 0.01 mL, and a
 * measured volume lies within 3 % of what was read (95 % limit, volumes independent of each other).
 */
export const usualTransfers = {
  smallestVolumeMl: 0.5,
  readableMl: 0.01,
  toleranceFraction: 0.03,
  source: "common practice, no source",
} as const
