/**
 * The treatment documents as far as they were read (what was remembered is left out), frozen. Signs: `dSER` negative is
 * more myopic, `dAL` positive is longer. Source ids inside belong to the register "treatments".
 */
import { deepFreeze } from "./freeze.js"
import * as adverse from "./generated/adverse-effects.js"
import * as age from "./generated/age-dependence.js"
import * as bottle from "./generated/compounding.js"
import * as rules from "./generated/definitions.js"
import * as pooled from "./generated/meta-analyses.js"
import * as optical from "./generated/optical-treatments.js"
import * as stopping from "./generated/rebound.js"
import * as arms from "./generated/trials.js"

export const adverseEffects = deepFreeze(adverse.adverseEffects)
export const ageDependence = deepFreeze(age.ageDependence)
export const compounding = deepFreeze(bottle.compounding)
export const definitions = deepFreeze(rules.definitions)
export const metaAnalyses = deepFreeze(pooled.metaAnalyses)
export const opticalTreatments = deepFreeze(optical.opticalTreatments)
export const rebound = deepFreeze(stopping.rebound)
export const trials = deepFreeze(arms.trials)

export const treatmentProvenance = deepFreeze({
  adverseEffects: adverse.adverseEffectsProvenance,
  ageDependence: age.ageDependenceProvenance,
  compounding: bottle.compoundingProvenance,
  definitions: rules.definitionsProvenance,
  metaAnalyses: pooled.metaAnalysesProvenance,
  opticalTreatments: optical.opticalTreatmentsProvenance,
  rebound: stopping.reboundProvenance,
  trials: arms.trialsProvenance,
})
