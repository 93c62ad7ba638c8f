import { askedAbout } from "../../engine/consent/asked-about.js"
import { consentInForce } from "../../engine/consent/consent-in-force.js"
import {
  type ConsentText,
  consentText,
  sourcesHeading,
  wordingInWords,
} from "../../engine/consent/consent-text.js"
import { costLines } from "../../engine/consent/cost-lines.js"
import { isShipped, wordingIn, wordingsFor } from "../../engine/consent/default-wording.js"
import { SIGNING } from "../../engine/consent/signing-words.js"
import type { TreatmentChoice } from "../../engine/course.js"
import type { ConsentWording } from "../../engine/practice-rules.js"
import { dayInWords, say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { capitalised } from "../../engine/words.js"
import { consentEvidence } from "../../evidence/consent.js"
import type { Block, DocumentContent, DocumentRefused } from "../document.js"
import type { DocumentInput } from "../document-input.js"

/**
 * The text of a consent to be read and signed on paper: the same text, section for section, as on the screen. The
 * wording is one part, which a template can put somewhere and can't cut: what is signed is a version as a whole.
 */
export function consentPaper(input: DocumentInput): DocumentContent | DocumentRefused {
  const asked = treatmentOf(input)
  if (asked.kind === "refused") return asked
  const { course, rules, today, childName, language } = input
  const { pharmacies, contacts, consentWordings } = rules
  const wordings = wordingsFor({ kind: asked.kind, on: today, wordings: consentWordings })
  const wording = wordingIn(language, wordings)
  const text = consentText({
    wording,
    treatment: asked,
    evidence: consentEvidence,
    cost: () => costLines({ treatment: asked, course, rules, today }),
    contacts,
    ...(pharmacies.length > 0 ? { bottlesMl: pharmacies.map(({ bottleMl }) => bottleMl) } : {}),
  })
  return {
    title: text.title,
    parts: [
      { name: "who", blocks: [{ kind: "pairs", pairs: pairsOf(input, asked) }] },
      { name: "caution", blocks: [{ kind: "caution", lines: cautionLines(input, asked) }] },
      { name: "text", blocks: text.sections.flatMap(sectionBlocks) },
      { name: "signatures", blocks: signatureBlocks(input, { text, wording, wordings }) },
      { name: "sources", blocks: sourceBlocks(text) },
    ],
    values: {
      treatment: treatmentName(asked),
      date: dayInWords(today),
      version: wording.version,
      child: childName ?? say("your child"),
    },
    foot: say(
      "For your decision with your eye doctor, whose advice it does not replace. Local law, product licences and the pharmacist decide. Not a medical device.",
    ),
  }
}

/** The treatment asked about; else the first in use, planned or decided that lacks a consent, else the first at all. */
function treatmentOf(input: DocumentInput): TreatmentChoice | DocumentRefused {
  const { course, rules, today, treatment: asked } = input
  if (asked !== undefined) {
    if (asked.kind === "none") return refused(say("nobody consents to having no treatment"))
    if (asked.kind === "atropine" && asked.concentrationPercent === undefined)
      return refused(say("a consent to drops names their strength, and none is given"))
    return asked
  }
  const likely = askedAbout({ course, today }).map(({ treatment }) => treatment)
  const lacking = likely.find(
    (treatment) =>
      consentInForce({ course, treatment, on: today, wordings: rules.consentWordings }).kind !== "in-force",
  )
  const found = lacking ?? likely[0]
  return (
    found ??
    refused(
      say("no treatment that needs a consent is asked about, in use, planned or decided for this child"),
    )
  )
}

const refused = (why: string): DocumentRefused => ({ kind: "refused", why })

function pairsOf(
  { course, childName, childNumber, today }: DocumentInput,
  treatment: TreatmentChoice,
): readonly (readonly [string, string])[] {
  return [
    ...(childName === null ? [] : [[say("Child"), childName] as const]),
    [say("Born"), dayInWords(course.child.born)],
    ...(childNumber == null ? [] : [[say("Number"), childNumber] as const]),
    [say("Treatment"), capitalised(treatmentName(treatment))],
    [say("Printed on"), dayInWords(today)],
  ]
}

function cautionLines({ rules: { contacts } }: DocumentInput, { kind }: TreatmentChoice): readonly string[] {
  const urgent = contacts.urgent ?? say("this practice, or an emergency eye service when we are closed")
  const sameDay = say(
    "Flashes, floaters, a curtain over the sight, pain or sudden loss of sight: have the eye seen on the same day. Call: {urgent}.",
    { urgent },
  )
  if (kind !== "atropine") return [sameDay]
  const poisonCentre =
    contacts.poisonCentre ?? say("the poison centre of your country; ask us for its number")
  const poison = say(
    "These drops are poisonous when swallowed: keep them from children. If a child may have swallowed some, do not wait. Call: {poisonCentre}.",
    { poisonCentre },
  )
  return [poison, sameDay]
}

const NUMBERED = /^\d+\. /

/** Steps that are numbered in the wording are a list; everything else stands as it is read on the screen. */
function sectionBlocks({ heading, paragraphs }: ConsentText["sections"][number]): readonly Block[] {
  const blocks: Block[] = [{ kind: "heading", level: 1, text: heading }]
  const steps = paragraphs.filter((paragraph) => NUMBERED.test(paragraph))
  for (const paragraph of paragraphs) {
    if (!NUMBERED.test(paragraph)) blocks.push({ kind: "text", text: paragraph })
    else if (paragraph === steps[0])
      blocks.push({ kind: "list", isNumbered: true, items: steps.map((step) => step.replace(NUMBERED, "")) })
  }
  return blocks
}

interface WhatIsSigned {
  readonly text: ConsentText
  readonly wording: ConsentWording
  readonly wordings: readonly ConsentWording[]
}

function signatureBlocks({ author }: DocumentInput, signed: WhatIsSigned): readonly Block[] {
  return [
    { kind: "heading", level: 1, text: say(SIGNING.whoConsents) },
    {
      kind: "text",
      text: say(
        "I have read this text or had it read to me, my questions were answered, and I consent. I may change my mind at any time.",
      ),
    },
    { kind: "text", text: say(SIGNING.paperAssent) },
    {
      kind: "signatures",
      lines: [
        { role: say("Parent or guardian, and relation to the child"), name: "" },
        { role: say("The child, if able and willing to sign"), name: "" },
        { role: say("Clinician who explained it"), name: author ?? "" },
      ],
    },
    { kind: "notes", lines: wordingLines(signed) },
  ]
}

/** Which version is signed, and that it is not the practice's own where it has one in another language. */
function wordingLines({ text, wording, wordings }: WhatIsSigned): readonly string[] {
  if (!isShipped(wording) || wordings.every(isShipped)) return [wordingInWords(text)]
  return [
    wordingInWords(text),
    say("The practice has no wording of its own in force in this language: this is the one that ships."),
  ]
}

// One after the other, so that a page is not spent on a list that few read.
const sourceBlocks = (text: ConsentText): readonly Block[] => [
  { kind: "heading", level: 2, text: sourcesHeading(text) },
  { kind: "notes", lines: [text.sources.join(" · ")] },
]
