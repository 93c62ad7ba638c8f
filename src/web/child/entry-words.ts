import { dateWords, dioptreWords, fixed, mmWords, symptomWords } from "../../chart/words.js"
import { DECISION_WORDS } from "../../engine/choices/decision-words.js"
import { moneyInWords } from "../../engine/cost/money.js"
import {
  type BottleOrder,
  type Child,
  type Consent,
  type Decision,
  type Explanation,
  EYES,
  type EyeExamination,
  type MissedNights,
  type Payment,
  type SafetyConcern,
  type Supply,
  type Treatment,
  type Visit,
} from "../../engine/course.js"
import { sphericalEquivalent } from "../../engine/optics/spherical-equivalent.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { counted } from "../../engine/words.js"
import type { ChildEntryKind, ChildView } from "../../server/contract/child.js"
import { capitalised, kindInWords } from "../format.js"
import { girlOrBoy } from "../words.js"

/** An entry's body by its kind, in the fields of the course file. */
type Content =
  | { readonly kind: "child"; readonly body: Child & { readonly name: string; readonly number?: string } }
  | { readonly kind: "visit"; readonly body: Visit }
  | { readonly kind: "treatment"; readonly body: Treatment }
  | { readonly kind: "consent"; readonly body: Consent }
  | { readonly kind: "supply"; readonly body: Supply }
  | { readonly kind: "missed-nights"; readonly body: MissedNights }
  | { readonly kind: "decision"; readonly body: Decision }
  | { readonly kind: "concern"; readonly body: SafetyConcern }
  | { readonly kind: "order"; readonly body: BottleOrder }
  | { readonly kind: "explanation"; readonly body: Explanation }
  | { readonly kind: "payment"; readonly body: Payment }
  | { readonly kind: "withdrawal"; readonly body: object }

/** A kind of entry as a person says it: a supply is a bottle. */
export const entryKindInWords = (kind: ChildEntryKind): string =>
  kind === "supply" ? "bottle" : kindInWords(kind)

/**
 * What an entry says, in one line.
 *
 * @example
 * // a treatment => "atropine 0.05 % from 10 Jan 2025, going on"
 */
export function entryWords({ kind, body }: Pick<ChildView["entries"][number], "kind" | "body">): string {
  // The server's answer holds the fields of the course file: both sides are built from the same schema.
  const content = { kind, body } as Content
  switch (content.kind) {
    case "child":
      return childWords(content.body)
    case "visit":
      return visitWords(content.body)
    case "treatment":
      return treatmentWords(content.body)
    case "consent":
      return consentWords(content.body)
    case "supply":
      return supplyWords(content.body)
    case "missed-nights": {
      const { nights, from, to } = content.body
      return `${counted(nights, "night")} missed, ${dateWords(from)} to ${dateWords(to)}`
    }
    case "decision":
      return decisionWords(content.body)
    case "concern":
      return concernWords(content.body)
    case "order":
      return orderWords(content.body)
    case "explanation":
      return joined("results explained", content.body.to && `to ${content.body.to}`)
    case "payment": {
      const { cents, currency, what } = content.body
      return joined(moneyInWords(cents, currency), what)
    }
    case "withdrawal":
      return "an entry that no longer holds"
  }
}

type Part = string | 0 | false | null | undefined

const joined = (...parts: readonly Part[]): string => parts.filter((part) => part).join(", ")

const on = (what: string, date: string | null | undefined): Part => date && `${what} ${dateWords(date)}`

function childWords({
  name,
  number,
  born,
  sex,
  ancestry,
  myopicParents,
  protocol,
}: Child & {
  readonly name: string
  readonly number?: string
}): string {
  return joined(
    name,
    girlOrBoy(sex),
    on("born", born),
    number && `number ${number}`,
    ancestry && `ancestry ${kindInWords(ancestry)}`,
    myopicParents !== undefined && myopicParents !== null && `${counted(myopicParents, "myopic parent")}`,
    protocol && `protocol ${protocol}`,
  )
}

function visitWords({ right, left, symptoms = [], answers = [], from }: Visit): string {
  const eyes = EYES.flatMap((eye) => {
    const examination = { right, left }[eye]
    const words = examination ? eyeWords(examination) : ""
    return words === "" ? [] : [`${eye} ${words}`]
  })
  const felt = symptoms.map(({ kind, grade }) => `${symptomWords(kind)} grade ${grade}`)
  return [
    ...eyes,
    ...(felt.length === 0 ? [] : [`symptoms: ${felt.join(", ")}`]),
    ...(answers.length === 0 ? [] : [counted(answers.length, "answer")]),
    ...(from ? [`from ${from}`] : []),
  ].join("; ")
}

function eyeWords({
  axialLength,
  refraction,
  pupil,
  accommodation,
  acuity,
  intraocularPressure,
}: EyeExamination): string {
  const distance = acuity?.distanceLogMAR
  const near = acuity?.nearLogMAR
  return joined(
    axialLength && mmWords(axialLength.mm),
    refraction && dioptreWords(sphericalEquivalent(refraction)),
    pupil?.photopic !== undefined && `pupil ${fixed(pupil.photopic, 1)} mm`,
    accommodation && `accommodation ${fixed(accommodation.dioptres, 1)} D`,
    distance !== undefined && `distance ${fixed(distance, 2)} logMAR`,
    near !== undefined && `near ${fixed(near, 2)} logMAR`,
    intraocularPressure && `pressure ${fixed(intraocularPressure.mmHg, 0)} mmHg`,
  )
}

function treatmentWords(treatment: Treatment): string {
  const { from, to, eye, nightsPerWeek } = treatment
  return joined(
    `${treatmentName(treatment)} from ${dateWords(from)}`,
    eye && `${eye} eye only`,
    nightsPerWeek && `${nightsPerWeek} nights of the week`,
    to ? `first day without ${dateWords(to)}` : "going on",
  )
}

function consentWords({ covers, by, form, wording, assent, until }: Consent): string {
  return joined(
    `to ${treatmentName(covers)}`,
    by?.name && `by ${by.name}`,
    by?.relation,
    form && `on ${form}`,
    wording && `wording version ${wording.version}`,
    assent && `assent of the child ${kindInWords(assent)}`,
    on("withdrawn from", until),
  )
}

function supplyWords(supply: Supply): string {
  const { concentrationPercent, volumeMl, lot, pharmacy, dispensed, opened, beyondUse } = supply
  return joined(
    concentrationPercent === undefined
      ? "strength not stated"
      : treatmentName({ kind: "atropine", concentrationPercent }),
    volumeMl && `${volumeMl} mL`,
    pharmacy,
    lot && `lot ${lot}`,
    on("dispensed", dispensed),
    on("opened", opened),
    on("use until", beyondUse),
  )
}

function decisionWords({ kind, treatment, reason }: Decision): string {
  return joined(DECISION_WORDS[kind], treatment && treatmentName(treatment), `because: ${reason}`)
}

function concernWords({ kind, what, owner, seriousness, closed, outcome }: SafetyConcern): string {
  return joined(
    `${kindInWords(kind)}: ${what}`,
    seriousness,
    owner && `looked after by ${owner}`,
    closed ? `closed ${dateWords(closed)}: ${outcome}` : "open",
  )
}

function orderWords(order: BottleOrder): string {
  const { concentrationPercent, bottles, volumeMl, pharmacy, confirmed, received, cancelled, override } =
    order
  return joined(
    `${counted(bottles, "bottle")} of ${treatmentName({ kind: "atropine", concentrationPercent })}, ${volumeMl} mL each`,
    pharmacy,
    on("confirmed", confirmed),
    on("received", received),
    on("called off", cancelled),
    override && `without consent in force: ${override}`,
  )
}

/** As a line of the list: with a capital. */
export const entryLine = (entry: Parameters<typeof entryWords>[0]): string => capitalised(entryWords(entry))
