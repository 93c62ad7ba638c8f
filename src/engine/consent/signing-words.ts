import { inLanguage, type Language, msg, say } from "../say.js"

/**
 * What the family reads around the text while it signs, on the screen and on paper: said in the language of the text,
 * whatever language the page around it has.
 */
export const SIGNING = {
  whoConsents: msg("Who consents"),
  whoSigns: msg("Who signs"),
  relation: msg("Relation to the child"),
  childAsked: msg("The child, asked in the four steps of the text"),
  childSaysNo: msg(
    "The child says no. That is recorded with the consent; talk it over before anything is started.",
  ),
  signature: msg("Signature"),
  signHere: msg("Sign here with a pen, a finger or the mouse."),
  signed: msg("Signed."),
  clear: msg("clear the signature"),
  typedName: msg("Name, typed by who signs in place of a signature"),
  isMissing: msg("Something is still missing; see below."),
  needsName: msg("must be the name of who signs"),
  needsRelation: msg("must say how who signs is related to the child"),
  needsAssent: msg("must be chosen"),
  needsTypedName: msg("must be the name, typed by who signs"),
  needsSignature: msg("must be signed; with a keyboard choose “{way}”"),
  paperName: msg("Name of the parent or guardian"),
  paperDate: msg("Date"),
  paperAssent: msg("The child agrees: yes / no / was not asked"),
} as const

/** What a child said when it was asked. */
export const ASSENT_NAMES = {
  given: msg("agrees"),
  declined: msg("does not agree"),
  "not-asked": msg("was not asked"),
} as const

/** Who usually signs; any other relation is written in. */
export const RELATIONS = [
  msg("mother"),
  msg("father"),
  msg("legal guardian"),
  msg("the young person"),
] as const

/** Says a message in a language: that of the text the family reads. */
export const saidIn = (spoken: Language, message: string, values: Record<string, string> = {}): string =>
  inLanguage(spoken, () => say(message, values))
