import { CHILD_SEVERE_FROM_MG, milligramsIn } from "../compounding/atropine-content.js"
import type { TreatmentChoice } from "../course.js"
import type { ConsentWording, Contacts } from "../practice-rules.js"
import { inLanguage, type Language, language, listed, msg, say, withDecimalSign } from "../say.js"
import { treatmentName } from "../treatment-name.js"
import { inDigits } from "../words.js"
import { afterStopping } from "./after-stopping.js"
import { alternatives, benefit } from "./benefit.js"
import { type ConsentEvidence, type Facts, fact, NO_FACTS } from "./consent-evidence.js"
import { sideEffects } from "./side-effects.js"
import { spokenFor } from "./wording-language.js"

/** A consent as the family reads it. */
export interface ConsentText {
  readonly title: string
  readonly treatment: TreatmentChoice
  /** `language` as the wording names its own, BCP 47. */
  readonly wording: { readonly id: string; readonly version: string; readonly language: string }
  /** In what language the figures are told: the wording's, or English beside a wording in one we do not speak. */
  readonly spoken: Language
  readonly sections: readonly { readonly heading: string; readonly paragraphs: readonly string[] }[]
  /** Where the figures come from. */
  readonly sources: readonly string[]
}

export interface ConsentTextInput {
  readonly wording: ConsentWording
  readonly treatment: TreatmentChoice
  readonly evidence: ConsentEvidence
  /** What the family pays, in lines of the language in force; an estimate apart where there are none. */
  readonly cost?: (() => readonly string[]) | undefined
  /** Sizes of bottle that the practice's pharmacies fill, mL. */
  readonly bottlesMl?: readonly number[] | undefined
  readonly contacts?: Contacts | undefined
}

/** What a wording may have filled in, by its name in braces; the words are for who edits one, and are said there. */
export const FILLED_IN = {
  treatment: msg("the treatment with its strength"),
  benefit: msg("what trials found that it holds back"),
  sideEffects: msg("unwanted effects at this strength"),
  alternatives: msg("what other treatments hold back"),
  afterStopping: msg("what follows a stop"),
  quality: msg("how exact bottles made to order were found to be"),
  contents: msg("milligrams in a bottle, and from how many it is dangerous"),
  cost: msg("what the family pays"),
  poisonCentre: msg("the poison centre's number"),
  urgent: msg("where to call for same-day care"),
} as const
type Filled = keyof typeof FILLED_IN

/** Names in braces that nothing is known for: a wording that has any would show them to a family as they stand. */
export function unknownNames({
  title,
  sections,
}: Pick<ConsentWording, "title" | "sections">): readonly string[] {
  const texts = [title, ...sections.flatMap(({ heading, text }) => [heading, text])]
  const names = texts.flatMap((text) => [...text.matchAll(NAME)].map(([, name = ""]) => name))
  return [...new Set(names.filter((name) => !Object.hasOwn(FILLED_IN, name)))]
}

/**
 * A wording filled in for one treatment, its figures from the evidence and told in the wording's language. The same input gives the same text to the
 * letter, so that the hash of it says what was read.
 */
export function consentText(input: ConsentTextInput): ConsentText {
  const spoken = spokenFor(input.wording.language) ?? "en"
  return inLanguage(spoken, () => filledIn(input))
}

function filledIn(input: ConsentTextInput): ConsentText {
  const { wording, treatment } = input
  if (treatment.kind === "atropine" && treatment.concentrationPercent === undefined)
    throw new RangeError("a consent to drops names their strength")
  const facts = factsFor(input)
  const used = new Set<string>()
  const filled = (text: string) =>
    text.replace(NAME, (whole, name: string) => {
      if (!Object.hasOwn(facts, name)) return whole
      const { lines, sources } = facts[name as Filled]
      for (const source of sources) used.add(source)
      return lines.join("\n")
    })
  const held = (text: string) => text.replace(FIGURE_AND_UNIT, "$1\u00a0")
  const title = held(filled(wording.title))
  const sections = wording.sections.map(({ heading, text }) => ({
    heading: held(filled(heading)),
    paragraphs: held(filled(text))
      .split("\n")
      .map((line) => line.trim())
      .filter((line) => line !== ""),
  }))
  const sources = [...used].map((id) => input.evidence.citation(id) ?? id)
  const { id, version } = wording
  return {
    title,
    treatment,
    wording: { id, version, language: wording.language },
    spoken: language(),
    sections,
    sources,
  }
}

/** The text as it is stored and hashed: UTF-8, lines ended by a line feed, nothing of the child in it. */
export function consentPlainText(text: ConsentText): string {
  const { title, sections, sources } = text
  const blocks = [
    `${title}\n${wordingInWords(text)}`,
    ...sections.map(({ heading, paragraphs }) => [heading, ...paragraphs].join("\n")),
    ...(sources.length > 0 ? [[sourcesHeading(text), ...sources].join("\n")] : []),
  ]
  return `${blocks.join("\n\n")}\n`.normalize("NFC")
}

/** Which wording it is, in its own language: 'Wording "drops", version 1, en'. */
export const wordingInWords = ({ wording, spoken }: Pick<ConsentText, "wording" | "spoken">): string =>
  inLanguage(spoken, () => say('Wording "{id}", version {version}, {language}', { ...wording }))

export const sourcesHeading = ({ spoken }: Pick<ConsentText, "spoken">): string =>
  inLanguage(spoken, () => say("Where the figures come from"))

// No line ends between a figure and its unit.
const FIGURE_AND_UNIT = /(\d) (?=(?:mm|mL|mg|D|%)(?!\w))/g

const NAME = /\{(\w+)\}/g

function factsFor({
  treatment,
  evidence,
  cost = () => [],
  bottlesMl = USUAL_BOTTLES_ML,
  contacts = {},
}: ConsentTextInput): Readonly<Record<Filled, Facts>> {
  const paid = cost()
  const { samples, pharmacies, label_claim_percent: claim, source } = evidence.bottleQuality
  return {
    treatment: fact(treatmentName(treatment)),
    benefit: benefit(treatment, evidence),
    sideEffects: sideEffects(treatment, evidence),
    alternatives: alternatives(treatment, evidence),
    afterStopping: afterStopping(treatment, evidence),
    quality: fact(
      say(
        "When {samples} bottles of {percent} % drops from {pharmacies} pharmacies were measured, they held between {min} and {max} % of the strength on their label.",
        {
          samples,
          pharmacies,
          percent: withDecimalSign("0.01"),
          min: withDecimalSign(String(claim.min)),
          max: withDecimalSign(String(claim.max)),
        },
      ),
      `treatments/${source}`,
    ),
    contents: contents(treatment, bottlesMl),
    cost:
      paid.length > 0
        ? { lines: paid, sources: [] }
        : fact(
            say(
              "We give you the full cost in writing before you decide: the visits, the measuring and what is used up.",
            ),
          ),
    poisonCentre: fact(
      contacts.poisonCentre ?? say("the poison centre of your country; ask us for its number"),
    ),
    urgent: fact(contacts.urgent ?? say("this practice, or an emergency eye service when we are closed")),
  }
}

// The two sizes that surveys of pharmacies found most (evidence: treatments, compounding).
const USUAL_BOTTLES_ML = [5, 10]

function contents({ concentrationPercent }: TreatmentChoice, bottlesMl: readonly number[]): Facts {
  if (concentrationPercent === undefined) return NO_FACTS
  const bottles = [...new Set(bottlesMl)].toSorted((a, b) => a - b)
  const parts = bottles.map((volumeMl) =>
    say("a bottle of {volume} mL holds {mg} mg of it", {
      volume: inDigits(volumeMl),
      mg: inDigits(milligramsIn({ concentrationPercent, volumeMl })),
    }),
  )
  return fact(
    say("At this strength {bottles}; from {mg} mg a child may be severely poisoned.", {
      bottles: listed(parts),
      mg: inDigits(CHILD_SEVERE_FROM_MG),
    }),
    "clinical/TOXINFO",
  )
}
