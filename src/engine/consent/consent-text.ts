import { CHILD_SEVERE_FROM_MG, milligramsIn } from "../compounding/atropine-content.js"
import type { TreatmentChoice } from "../course.js"
import type { ConsentWording, Contacts } from "../practice-rules.js"
import { treatmentName } from "../treatment-name.js"
import { inDigits } from "../words.js"
import { afterStopping } from "./after-stopping.js"
import { alternatives, benefit } from "./benefit.js"
import { type ConsentEvidence, type Facts, fact, NO_FACTS } from "./consent-evidence.js"
import { sideEffects } from "./side-effects.js"

/** A consent as the family reads it. */
export interface ConsentText {
  readonly title: string
  readonly treatment: TreatmentChoice
  readonly wording: { readonly id: string; readonly version: string }
  readonly sections: readonly { readonly heading: string; readonly paragraphs: readonly string[] }[]
  /** Where the figures come from. */
  readonly sources: readonly string[]
}

export interface ConsentTextInput {
  readonly wording: ConsentWording
  readonly treatment: TreatmentChoice
  readonly evidence: ConsentEvidence
  /** What the family pays, in lines; the practice's estimate apart where it has no fees recorded. */
  readonly cost?: readonly string[] | undefined
  /** Sizes of bottle that the practice's pharmacies fill, mL. */
  readonly bottlesMl?: readonly number[] | undefined
  readonly contacts?: Contacts | undefined
}

/** What a wording may have filled in, by its name in braces, as a person who edits one reads it. */
export const FILLED_IN = {
  treatment: "the treatment with its strength",
  benefit: "what trials found that it holds back",
  sideEffects: "unwanted effects at this strength",
  alternatives: "what other treatments hold back",
  afterStopping: "what follows a stop",
  quality: "how exact bottles made to order were found to be",
  contents: "milligrams in a bottle, and from how many it is dangerous",
  cost: "what the family pays",
  poisonCentre: "the poison centre's number",
  urgent: "where to call for same-day care",
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
 * A wording filled in for one treatment, its figures from the evidence. The same input gives the same text to the
 * letter, so that the hash of it says what was read.
 */
export function consentText(input: ConsentTextInput): ConsentText {
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
  return { title, treatment, wording: { id: wording.id, version: wording.version }, sections, sources }
}

/** The text as it is stored and hashed: UTF-8, lines ended by a line feed, nothing of the child in it. */
export function consentPlainText({ title, wording, sections, sources }: ConsentText): string {
  const blocks = [
    `${title}\nWording "${wording.id}", version ${wording.version}`,
    ...sections.map(({ heading, paragraphs }) => [heading, ...paragraphs].join("\n")),
    ...(sources.length > 0 ? [["Where the figures come from", ...sources].join("\n")] : []),
  ]
  return `${blocks.join("\n\n")}\n`.normalize("NFC")
}

// No line ends between a figure and its unit.
const FIGURE_AND_UNIT = /(\d) (?=(?:mm|mL|mg|D|%)(?!\w))/g

const NAME = /\{(\w+)\}/g

function factsFor({
  treatment,
  evidence,
  cost = [],
  bottlesMl = USUAL_BOTTLES_ML,
  contacts = {},
}: ConsentTextInput): Readonly<Record<Filled, Facts>> {
  const { samples, pharmacies, label_claim_percent: claim, source } = evidence.bottleQuality
  return {
    treatment: fact(treatmentName(treatment)),
    benefit: benefit(treatment, evidence),
    sideEffects: sideEffects(treatment, evidence),
    alternatives: alternatives(treatment, evidence),
    afterStopping: afterStopping(treatment, evidence),
    quality: fact(
      `When ${samples} bottles of 0.01 % drops from ${pharmacies} pharmacies were measured, they held between ${claim.min} and ${claim.max} % of the strength on their label.`,
      `treatments/${source}`,
    ),
    contents: contents(treatment, bottlesMl),
    cost:
      cost.length > 0
        ? { lines: cost, sources: [] }
        : fact(
            "We give you the full cost in writing before you decide: the visits, the measuring and what is used up.",
          ),
    poisonCentre: fact(contacts.poisonCentre ?? "the poison centre of your country; ask us for its number"),
    urgent: fact(contacts.urgent ?? "this practice, or an emergency eye service when we are closed"),
  }
}

// The two sizes that surveys of pharmacies found most (evidence: treatments, compounding).
const USUAL_BOTTLES_ML = [5, 10]

function contents({ concentrationPercent }: TreatmentChoice, bottlesMl: readonly number[]): Facts {
  if (concentrationPercent === undefined) return NO_FACTS
  const bottles = [...new Set(bottlesMl)].toSorted((a, b) => a - b)
  const parts = bottles.map(
    (volumeMl) =>
      `a bottle of ${inDigits(volumeMl)} mL holds ${inDigits(milligramsIn({ concentrationPercent, volumeMl }))} mg of it`,
  )
  return fact(
    `At this strength ${parts.join(", ")}; from ${CHILD_SEVERE_FROM_MG} mg a child may be severely poisoned.`,
    "clinical/TOXINFO",
  )
}
