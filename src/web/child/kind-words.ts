import type { Ancestry, Consent } from "../../engine/course.js"
import { msg, say } from "../../engine/say.js"
import type { ChildEntryKind } from "../../server/contract/child.js"
import { kindInWords } from "../format.js"

/** Kinds as a person says them. What is not listed, such as a kind that a course file brought along, is said as it is written. */

type Words = Readonly<Record<string, string>>

const ENTRIES: Words = {
  child: msg("child|entry"),
  visit: msg("visit|entry"),
  treatment: msg("treatment|entry"),
  consent: msg("consent|entry"),
  supply: msg("bottle|entry"),
  "missed-nights": msg("missed nights|entry"),
  decision: msg("decision|entry"),
  concern: msg("concern|entry"),
  order: msg("order|entry"),
  explanation: msg("explanation|entry"),
  payment: msg("payment|entry"),
  family: msg("family|entry"),
  document: msg("document|entry"),
  withdrawal: msg("withdrawal|entry"),
}

const CONCERNS: Words = {
  "red-flag": msg("red flag|concern"),
  contraindication: msg("contraindication|concern"),
  "systemic-effects": msg("systemic effects|concern"),
  pupil: msg("pupil|concern"),
  accommodation: msg("accommodation|concern"),
  "near-acuity": msg("near acuity|concern"),
  "distance-acuity": msg("distance acuity|concern"),
  "intraocular-pressure": msg("intraocular pressure|concern"),
  washout: msg("washout|concern"),
  "light-sensitivity": msg("light sensitivity"),
  "near-blur": msg("near blur"),
  stinging: msg("stinging"),
  redness: msg("redness"),
  itching: msg("itching"),
  headache: msg("headache"),
  symptom: msg("symptom|concern"),
  allergy: msg("allergy|concern"),
  vision: msg("vision|concern"),
  "wrong-drops": msg("wrong drops|concern"),
  "swallowed-drops": msg("swallowed drops|concern"),
  "something-else": msg("something else|concern"),
  other: msg("other|concern, small"),
}

const ANCESTRIES: Readonly<Record<Ancestry, string>> = {
  "east-asian": msg("ancestry east asian"),
  european: msg("ancestry european"),
  "south-asian": msg("ancestry south asian"),
  african: msg("ancestry african"),
  other: msg("ancestry other"),
  unstated: msg("ancestry unstated"),
}

const ASSENTS: Readonly<Record<NonNullable<Consent["assent"]>, string>> = {
  given: msg("assent of the child given"),
  declined: msg("assent of the child declined"),
  "not-asked": msg("assent of the child not asked"),
}

const FORMS: Readonly<Record<NonNullable<Consent["form"]>, string>> = {
  screen: msg("on screen"),
  paper: msg("on paper"),
}

/** A kind of entry: a supply is a bottle. */
export const entryKindInWords = (kind: ChildEntryKind): string => known(ENTRIES, kind)
export const concernKindInWords = (kind: string): string => known(CONCERNS, kind)
export const ancestryInWords = (ancestry: Ancestry): string => say(ANCESTRIES[ancestry])
export const assentInWords = (assent: keyof typeof ASSENTS): string => say(ASSENTS[assent])
export const formInWords = (form: keyof typeof FORMS): string => say(FORMS[form])

function known(words: Words, kind: string): string {
  const text = Object.hasOwn(words, kind) ? words[kind] : undefined
  return text === undefined ? kindInWords(kind) : say(text)
}
