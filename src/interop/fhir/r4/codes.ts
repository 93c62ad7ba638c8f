import type { CodeableConcept, Coding, Reference } from "fhir/r4.js"
import type { Eye } from "../../../engine/course.js"

/**
 * Every code that is written or read. LOINC, SNOMED CT, DICOM and HL7 codes stand here only when they were read in a
 * source (docs/fhir.md says which); everything else is ours, in a system of ours that claims no domain.
 */
export const OWN = "urn:lengthwise:fhir:code"
export const LOINC = "http://loinc.org"
export const SNOMED = "http://snomed.info/sct"
export const DCM = "http://dicom.nema.org/resources/ontology/DCM"
export const UCUM = "http://unitsofmeasure.org"
export const HL7 = "http://terminology.hl7.org/CodeSystem/"

export const own = (code: string, display?: string): Coding => ({
  system: OWN,
  code,
  ...(display === undefined ? {} : { display }),
})
export const ownConcept = (code: string, text: string): CodeableConcept => ({
  coding: [own(code, text)],
  text,
})
export const snomed = (code: string, display: string): Coding => ({ system: SNOMED, code, display })
export const hl7 = (system: string, code: string): Coding => ({ system: `${HL7}${system}`, code })

export const AXIAL_LENGTH: Readonly<Record<Eye, Coding>> = {
  right: { system: LOINC, code: "64742-0", display: "Right eye Axial length" },
  left: { system: LOINC, code: "66067-0", display: "Left eye Axial length" },
}
export const REFRACTION = snomed("251794006", "Refraction")
export const SPHERE = snomed("251795007", "Power of sphere")
export const CYLINDER = snomed("251797004", "Power of cylinder")
export const AXIS = snomed("251799001", "Axis of cylinder")
export const SUBJECTIVE = snomed("397277005", "Subjective refraction")
export const AUTOREFRACTION = snomed("397250001", "Automated infrared optometer")
export const DISTANCE_ACUITY = snomed("251739003", "Distance visual acuity")
export const NEAR_ACUITY = snomed("251743004", "Near visual acuity")
export const CORRECTED = snomed("397536007", "Corrected")
export const UNCORRECTED = snomed("420050001", "Uncorrected")
export const PRESSURE = snomed("41633001", "Intraocular pressure")
export const ATROPINE = snomed("349947003", "Atropine")
export const SIGNAL_TO_NOISE: Coding = { system: DCM, code: "111787", display: "Signal to Noise Ratio" }
export const STANDARD_DEVIATION: Coding = { system: DCM, code: "111786", display: "Standard Deviation" }

const SITES: Readonly<Record<Eye, Coding>> = {
  right: snomed("362502000", "Right eye"),
  left: snomed("362503005", "Left eye"),
}
/** Side alone, as some programs code the body site. */
const SIDES: Readonly<Record<Eye, string>> = { right: "24028007", left: "7771000" }

export const eyeSite = (eye: Eye): CodeableConcept => ({
  coding: [SITES[eye], own(`${eye}-eye`)],
  text: eye === "right" ? "Right eye" : "Left eye",
})
export const isEyeSite = (eye: Eye, { system, code }: { system?: unknown; code?: unknown }): boolean =>
  system === SNOMED
    ? code === SITES[eye].code || code === SIDES[eye]
    : system === OWN && code === `${eye}-eye`

export const referenceTo = (type: string, id: string, display?: string): Reference => ({
  reference: `${type}/${id}`,
  ...(display === undefined ? {} : { display }),
})
