import type { ObservationComponent } from "fhir/r4.js"
import {
  ACCOMMODATION_METHODS,
  ACUITY_CORRECTIONS,
  type AcuityCorrection,
  type Dilation,
  EYE_DROPS,
  type EyeExamination,
  LENS_STATUSES,
  type LensStatus,
} from "../../../engine/course.js"
import { logMARFromDecimal } from "../../../engine/optics/acuity.js"
import { decimalAcuity } from "../../../engine/units.js"
import { type Loose, record } from "../../course/loose.js"
import { withoutLoss, withRemainder } from "../remainder.js"
import { CORRECTED, DISTANCE_ACUITY, NEAR_ACUITY, own, ownConcept, PRESSURE, UNCORRECTED } from "./codes.js"
import {
  components,
  type Draft,
  draft,
  figure,
  hasCode,
  methodIn,
  ownOneOf,
  partIn,
  partsWith,
  present,
  type WhereInEye,
} from "./observation.js"
import { inUnit, quantity } from "./units.js"

/** What an eye does, and the state it was measured in: pupil, accommodation, acuity, pressure, lens, dilation. */

type Acuity = NonNullable<EyeExamination["acuity"]>
type Pupil = NonNullable<EyeExamination["pupil"]>
type Accommodation = NonNullable<EyeExamination["accommodation"]>
type Pressure = NonNullable<EyeExamination["intraocularPressure"]>

export const PUPIL = own("pupil-diameter", "Diameter of the pupil")
const PHOTOPIC = own("photopic", "In bright light")
const MESOPIC = own("mesopic", "In dim light")

export const pupilDraft = ({ photopic, mesopic }: Pupil, where: WhereInEye): Draft => ({
  ...draft(where, { code: [PUPIL], text: `Diameter of the pupil, ${where.eye} eye` }),
  ...components(figure(photopic, "mm", PHOTOPIC), figure(mesopic, "mm", MESOPIC)),
})
export const pupilRead = (observation: Loose): Partial<Pupil> =>
  present({ photopic: partIn(observation, "mm", PHOTOPIC), mesopic: partIn(observation, "mm", MESOPIC) })

export const ACCOMMODATION = own("amplitude-of-accommodation", "Amplitude of accommodation")

export const accommodationDraft = ({ dioptres, method }: Accommodation, where: WhereInEye): Draft => ({
  ...draft(where, { code: [ACCOMMODATION], text: `Amplitude of accommodation, ${where.eye} eye` }),
  ...methodIn(method),
  valueQuantity: quantity(dioptres, "dioptre"),
})
export function accommodationRead(observation: Loose): Partial<Accommodation> | undefined {
  const dioptres = inUnit(record(observation.valueQuantity), "dioptre")
  if (dioptres === undefined) return undefined
  return present({ dioptres, method: ownOneOf(observation.method, ACCOMMODATION_METHODS) })
}

export const OWN_DISTANCE_ACUITY = own("distance-acuity", "Distance visual acuity")
export const OWN_NEAR_ACUITY = own("near-acuity", "Near visual acuity")

const CORRECTION_CODES = {
  uncorrected: [UNCORRECTED],
  worn: [CORRECTED],
  best: [CORRECTED],
} as const satisfies Record<AcuityCorrection, unknown>

export const distanceDraft = ({ distanceLogMAR, distanceCorrection }: Acuity, where: WhereInEye): Draft => ({
  ...draft(where, {
    code: [DISTANCE_ACUITY, OWN_DISTANCE_ACUITY],
    text: `Distance visual acuity, ${where.eye} eye`,
  }),
  ...methodIn(distanceCorrection, { codes: distanceCorrection && CORRECTION_CODES[distanceCorrection] }),
  ...(distanceLogMAR === undefined ? {} : { valueQuantity: quantity(distanceLogMAR, "logMAR") }),
})
export const distanceRead = (observation: Loose): Partial<Acuity> =>
  present({ distanceLogMAR: logMAROf(observation), distanceCorrection: correctionOf(observation) })

/** "Corrected" alone says not whether it was the best correction or the one worn; nothing is made of it. */
const correctionOf = ({ method }: Loose): AcuityCorrection | undefined =>
  ownOneOf(method, ACUITY_CORRECTIONS) ?? (hasCode(method, UNCORRECTED) ? "uncorrected" : undefined)

export const nearDraft = ({ nearLogMAR }: Acuity, where: WhereInEye): Draft => ({
  ...draft(where, { code: [NEAR_ACUITY, OWN_NEAR_ACUITY], text: `Near visual acuity, ${where.eye} eye` }),
  ...(nearLogMAR === undefined ? {} : { valueQuantity: quantity(nearLogMAR, "logMAR") }),
})
export const nearRead = (observation: Loose): Partial<Acuity> =>
  present({ nearLogMAR: logMAROf(observation) })

/** An acuity in logMAR, or as a decimal where it says that it is one; a bare number can be either and is left. */
function logMAROf({ valueQuantity }: Loose): number | undefined {
  const said = record(valueQuantity)
  const direct = inUnit(said, "logMAR")
  if (direct !== undefined) return direct
  const isDecimal = said.code === "{decimal}" || (said.code === undefined && said.unit === "decimal")
  if (!isDecimal || typeof said.value !== "number" || !(said.value > 0)) return undefined
  return Number(logMARFromDecimal(decimalAcuity(said.value)).toFixed(4)) + 0
}

export const OWN_PRESSURE = own("intraocular-pressure", "Intraocular pressure")

export const pressureDraft = ({ mmHg }: Pressure, where: WhereInEye): Draft => ({
  ...draft(where, { code: [PRESSURE, OWN_PRESSURE], text: `Intraocular pressure, ${where.eye} eye` }),
  valueQuantity: quantity(mmHg, "mmHg"),
})
export function pressureRead(observation: Loose): Pressure | undefined {
  const mmHg = inUnit(record(observation.valueQuantity), "mmHg")
  return mmHg === undefined ? undefined : { mmHg }
}

export const LENS = own("lens-status", "The eye's own lens, none, or an implant")

export const lensDraft = (status: LensStatus, where: WhereInEye): Draft => ({
  ...draft(where, { code: [LENS], text: `Lens, ${where.eye} eye` }),
  valueCodeableConcept: ownConcept(status, status.replaceAll("-", " ")),
})
export const lensRead = (observation: Loose): LensStatus | undefined =>
  ownOneOf(observation.valueCodeableConcept, LENS_STATUSES)

export const DILATION = own("dilation", "Whether the pupil was widened")
const WIDENED = own("widened-pupil", "Diameter of the widened pupil")
const DROP = own("drop-given", "Drop given for the examination")
type Drop = NonNullable<Dilation["drops"]>[number]

export const dilationDraft = ({ dilated, pupilMm, drops = [] }: Dilation, where: WhereInEye): Draft => ({
  ...draft(where, { code: [DILATION], text: `Dilation, ${where.eye} eye` }),
  valueBoolean: dilated,
  ...components(figure(pupilMm, "mm", WIDENED), ...drops.map(dropPart)),
})
function dropPart(drop: Drop): ObservationComponent {
  const part: ObservationComponent = {
    code: { coding: [DROP] },
    valueCodeableConcept: ownConcept(drop.drop, drop.drop),
  }
  return withRemainder(part, { whole: drop, native: nativeDrop(part) })
}
const nativeDrop = (part: object) => present({ drop: ownOneOf(record(part).valueCodeableConcept, EYE_DROPS) })

export function dilationRead(observation: Loose): Partial<Dilation> | undefined {
  const { valueBoolean: dilated } = observation
  if (typeof dilated !== "boolean") return undefined
  const drops = partsWith(observation, DROP).map((part) => withoutLoss(part, nativeDrop(part)) as Drop)
  return present({
    dilated,
    pupilMm: partIn(observation, "mm", WIDENED),
    drops: drops.length === 0 ? undefined : drops,
  })
}
