/**
 * The clinical documents as far as they were read (what was remembered is left out), frozen: duties of a service,
 * long-term risk, safety norms. Source ids inside belong to the register "clinical". A duty with `evidence_status`
 * "partly" rests on a text for its principle only; its interval and threshold are the practice's to set.
 */
import { deepFreeze } from "./freeze.js"
import * as service from "./generated/duties.js"
import * as longTerm from "./generated/risk.js"
import * as safety from "./generated/safety-norms.js"

export const duties = deepFreeze(service.duties)
export const risk = deepFreeze(longTerm.risk)
export const safetyNorms = deepFreeze(safety.safetyNorms)

export const clinicalProvenance = deepFreeze({
  duties: service.dutiesProvenance,
  risk: longTerm.riskProvenance,
  safetyNorms: safety.safetyNormsProvenance,
})
