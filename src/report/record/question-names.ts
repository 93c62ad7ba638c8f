import { questionOf } from "../../engine/protocol/questions.js"
import { msg, say } from "../../engine/say.js"

/**
 * The names of the questions in every language that a record is read in; a test holds them to the questions themselves.
 * A question that no version of the program knows stands by its id.
 */
export const QUESTION_NAMES: Readonly<Record<string, string>> = {
  flashes: msg("flashes"),
  floaters: msg("floaters"),
  curtain: msg("curtain|sign"),
  "eye-pain": msg("eye pain"),
  "sudden-vision-loss": msg("sudden loss of vision"),
  "heart-condition": msg("heart condition"),
  "respiratory-disease": msg("disease of the lungs or airways"),
  "antimuscarinic-medicines": msg("other medicines that act like atropine"),
  "allergy-drops": msg("allergy to drops"),
  "down-syndrome": msg("Down syndrome"),
  "spastic-paralysis": msg("spastic paralysis"),
  "brain-injury": msg("brain injury"),
  pregnancy: msg("pregnancy"),
  "other-eye-disease": msg("other disease of the eye"),
  "previous-eye-surgery": msg("earlier operation on an eye"),
  prematurity: msg("birth before term"),
  "syndromic-features": msg("signs of a wider condition"),
  "contact-lens-wear": msg("contact lenses"),
  "parents-asked": msg("myopia of the parents"),
  "earlier-records": msg("earlier prescriptions and lengths"),
  "systemic-effects": msg("effects on the whole body"),
  "fever-or-heat": msg("fever or great heat"),
  "missed-drops": msg("missed drops"),
  "technique-checked": msg("technique of the drops"),
  "quality-of-life": msg("quality of life"),
  "outdoor-hours": msg("hours outdoors"),
  "near-work-hours": msg("hours of near work"),
  "reading-distance": msg("reading distance"),
  "breaks-taken": msg("breaks from near work"),
  "alignment-problem": msg("alignment of the eyes"),
  "figures-measured-again": msg("unlikely figures measured again"),
  "lids-or-surface-finding": msg("lids and surface of the eyes"),
  "corneal-irregularity": msg("irregular cornea"),
  "narrow-angle": msg("angle of the anterior chamber"),
  "other-mydriatics": msg("other widening drops"),
  "cycloplegia-timed": msg("time of the cycloplegic drops"),
  "spectacles-updated": msg("spectacles"),
  "fundus-examined": msg("fundus"),
  "fundus-finding": msg("finding in the fundus"),
  "advice-outdoors": msg("advice on time outdoors"),
  "advice-near-work": msg("advice on near work"),
  "advice-long-term-risk": msg("explanation of the long-term risk"),
  "advice-instillation": msg("advice on giving the drops"),
  "advice-storage": msg("advice on storage and poisoning"),
  "advice-glare": msg("advice on glare and near blur"),
  "advice-sun": msg("advice on sun protection"),
  "advice-fever": msg("advice on fever and heat"),
  "advice-report-effects": msg("advice on reporting unwanted effects"),
  "advice-warning-signs": msg("warning signs of the retina"),
  "advice-later-checks": msg("plan for later checks"),
  "report-given": msg("written report"),
}

/** Units of the values beside an answer, as the questions name them. */
export const QUESTION_UNITS: Readonly<Record<string, string>> = {
  "weeks at birth": msg("{value} weeks at birth"),
  "nights a week": msg("{value} nights a week"),
  "hours a day": msg("{value} hours a day"),
  cm: msg("{value} cm"),
  "minutes between breaks": msg("{value} minutes between breaks"),
  "minutes from first drop to reading": msg("{value} minutes from first drop to reading"),
}

export function questionName(id: string): string {
  const name = QUESTION_NAMES[id]
  return name === undefined ? id.replaceAll("-", " ") : say(name)
}

/** A value with the unit of its question. */
export function valueInWords(question: string, value: string): string {
  const unit = questionOf(question)?.value?.unit
  const words = unit === undefined ? undefined : QUESTION_UNITS[unit]
  return words === undefined ? value : say(words, { value })
}
