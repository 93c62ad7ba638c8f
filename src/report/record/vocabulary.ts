import type {
  AccommodationMethod,
  AcuityCorrection,
  Ancestry,
  Answer,
  Consent,
  EyeDrop,
  LengthMethod,
  LensStatus,
  RefractionMethod,
  SafetyConcern,
  Sex,
  SourceKind,
  SymptomKind,
} from "../../engine/course.js"
import { msg, say } from "../../engine/say.js"

/** What a course keeps as a code, as a person reads it. Texts of the practice stay as they were written. */

type Words<Code extends string> = Readonly<Record<Code, string>>

export const SEX_WORDS: Words<Sex> = { female: msg("girl"), male: msg("boy") }

export const ANCESTRY_WORDS: Words<Ancestry> = {
  "east-asian": msg("East Asian"),
  european: msg("European"),
  "south-asian": msg("South Asian"),
  african: msg("African"),
  other: msg("other|ancestry"),
  unstated: msg("not stated"),
}

export const LENGTH_METHOD_WORDS: Words<LengthMethod> = {
  "optical-biometry": msg("optical biometry"),
  ultrasound: msg("ultrasound"),
}

export const REFRACTION_METHOD_WORDS: Words<RefractionMethod> = {
  autorefraction: msg("autorefraction"),
  subjective: msg("subjective"),
  retinoscopy: msg("retinoscopy"),
}

export const ACCOMMODATION_METHOD_WORDS: Words<AccommodationMethod> = {
  "push-up": msg("push-up"),
  retinoscopy: msg("retinoscopy"),
}

export const ACUITY_CORRECTION_WORDS: Words<AcuityCorrection> = {
  uncorrected: msg("no correction"),
  worn: msg("the glasses worn"),
  best: msg("the best correction"),
}

export const LENS_WORDS: Words<LensStatus> = {
  phakic: msg("own lens"),
  aphakic: msg("no lens"),
  pseudophakic: msg("artificial lens"),
  "phakic-lens-implant": msg("own lens and an implanted one"),
}

export const EYE_DROP_WORDS: Words<EyeDrop> = {
  atropine: msg("atropine|drops"),
  cyclopentolate: msg("cyclopentolate|drops"),
  tropicamide: msg("tropicamide|drops"),
  phenylephrine: msg("phenylephrine|drops"),
  other: msg("other drops|drops"),
}

export const SOURCE_KIND_WORDS: Words<SourceKind> = {
  dicom: msg("DICOM object"),
  fhir: msg("FHIR resource"),
  table: msg("row of a table"),
  "course-file": msg("course file|source"),
}

export const SYMPTOM_WORDS: Words<SymptomKind> = {
  "light-sensitivity": msg("light sensitivity"),
  "near-blur": msg("near blur"),
  stinging: msg("stinging"),
  redness: msg("redness"),
  itching: msg("itching"),
  headache: msg("headache"),
  other: msg("other|symptom"),
}

export const ANSWER_WORDS: Words<Answer["answer"]> = {
  yes: msg("yes|answer"),
  no: msg("no|answer"),
  "not-done": msg("not done"),
}

export const FORM_WORDS: Words<NonNullable<Consent["form"]>> = {
  screen: msg("signed on screen"),
  paper: msg("signed on paper"),
}

export const ASSENT_WORDS: Words<NonNullable<Consent["assent"]>> = {
  given: msg("the child agreed"),
  declined: msg("the child declined"),
  "not-asked": msg("the child was not asked"),
}

export const SERIOUSNESS_WORDS: Words<NonNullable<SafetyConcern["seriousness"]>> = {
  mild: msg("mild|effect"),
  moderate: msg("moderate|effect"),
  serious: msg("serious|effect"),
}

export const RELATEDNESS_WORDS: Words<NonNullable<SafetyConcern["relatedness"]>> = {
  unlikely: msg("unlikely"),
  possible: msg("possible"),
  probable: msg("probable"),
}

/** Kinds that the program itself opens; another kind is the practice's own word. */
const CONCERN_WORDS: Readonly<Record<string, string>> = {
  ...SYMPTOM_WORDS,
  "red-flag": msg("warning sign"),
  contraindication: msg("contraindication"),
  "systemic-effects": msg("effects outside the eye"),
  pupil: msg("wide pupil"),
  accommodation: msg("low accommodation"),
  "near-acuity": msg("loss of near acuity"),
  "distance-acuity": msg("loss of distance acuity"),
  "intraocular-pressure": msg("raised intraocular pressure"),
  washout: msg("values not back after the stop"),
}

export const concernName = (kind: string): string => {
  const known = CONCERN_WORDS[kind]
  return known === undefined ? kind.replaceAll("-", " ") : say(known)
}

/** A code in words, or null where none is recorded. */
export const inWords = <Code extends string>(words: Words<Code>, code: Code | undefined): string | null =>
  code === undefined ? null : say(words[code])
