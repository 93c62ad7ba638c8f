import type { GrowthParameters, TreatmentEffect } from "../../evidence/types.js"
import type { Treatment } from "../course.js"
import { say } from "../say.js"

/** What is believed of a treatment, or of several given together, before this child's own figures. */
export interface TreatmentPrior {
  /** Withheld fraction of one child: mean, and SD of the average and of the spread between children together. */
  readonly prior: { readonly mean: number; readonly sd: number }
  /** The trial effect it is taken from; null when no trial was read: then nothing can be tested, only left open. */
  readonly effect: TreatmentEffect | null
  readonly note?: string
}

/**
 * From the trials; for several treatments the trial of the combination, else the larger single effect: fractions are
 * never added (evidence/treatments).
 */
export function treatmentPrior(parts: readonly Treatment[], parameters: GrowthParameters): TreatmentPrior {
  const spread = parameters.values.withheldSpreadSd.value
  const found = (kind: string, percent?: number) =>
    parameters.effects.find(
      (effect) =>
        effect.kind === kind &&
        // Drops of unknown strength match no trial: never the weakest by accident.
        (percent === undefined
          ? effect.concentrationPercent === null
          : Math.abs((effect.concentrationPercent ?? -1) - percent) < 1e-9),
    )
  const kinds = new Set(parts.map((part) => part.kind))
  const singles = parts.map((part) => found(part.kind, part.concentrationPercent))
  const combined =
    kinds.size === 2 && kinds.has("atropine") && kinds.has("orthokeratology")
      ? parameters.effects.find(
          (effect) =>
            effect.kind === "atropine+orthokeratology" &&
            parts.some((part) => part.concentrationPercent === effect.concentrationPercent),
        )
      : undefined
  const known = singles.filter((effect) => effect !== undefined)
  const best =
    parts.length === 1
      ? known[0]
      : (combined ?? known.toSorted((a, b) => b.withheldFraction - a.withheldFraction)[0])
  if (!best || (parts.length === 1 && singles[0] === undefined)) {
    return {
      prior: { mean: 0, sd: parameters.values.unlistedTreatmentSd.value },
      effect: null,
      note: say("no trial of this treatment at this strength was read, so its effect is left open"),
    }
  }
  return {
    prior: { mean: best.withheldFraction, sd: Math.hypot(best.withheldFractionSd, spread) },
    effect: best,
    ...(parts.length > 1 && !combined
      ? { note: say("no trial of this combination was read; the larger single effect is used, never a sum") }
      : {}),
  }
}
