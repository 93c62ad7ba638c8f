import { dateWords } from "../../chart/words.js"
import { DECISION_WORDS } from "../../engine/choices/decision-words.js"
import { moneyInWords } from "../../engine/cost/money.js"
import type {
  BottleOrder,
  Child,
  Consent,
  Decision,
  Explanation,
  MissedNights,
  Payment,
  SafetyConcern,
  Supply,
  Treatment,
  Visit,
  VisitSource,
} from "../../engine/course.js"
import type { FamilyContact } from "../../engine/messages/family-contact.js"
import { LANGUAGE_NAMES, msg, say, withDecimalSign } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import type { ChildView } from "../../server/contract/child.js"
import { capitalised } from "../format.js"
import { seriousnessInWords } from "../safety/concern-words.js"
import { girlOrBoy } from "../words.js"
import { ancestryInWords, assentInWords, concernKindInWords, formInWords } from "./kind-words.js"
import { visitWords } from "./visit-words.js"
import { joined, type Part } from "./word-parts.js"

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
  | { readonly kind: "family"; readonly body: FamilyContact }
  | { readonly kind: "document"; readonly body: { readonly title: string; readonly source?: VisitSource } }
  | { readonly kind: "withdrawal"; readonly body: object }

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
      return say("{nights, plural, one {# night} other {# nights}} missed, {from} to {to}", {
        nights,
        from: dateWords(from),
        to: dateWords(to),
      })
    }
    case "decision":
      return decisionWords(content.body)
    case "concern":
      return concernWords(content.body)
    case "order":
      return orderWords(content.body)
    case "explanation":
      return content.body.to
        ? say("results explained, to {whom}", { whom: content.body.to })
        : say("results explained")
    case "payment": {
      const { cents, currency, what } = content.body
      return joined(moneyInWords(cents, currency), what)
    }
    case "family":
      return familyWords(content.body)
    case "document":
      return joined(content.body.title, content.body.source?.device)
    case "withdrawal":
      return say("an entry that no longer holds")
  }
}

/** A message with its day, where there is a day. */
const on = (message: string, date: string | null | undefined): Part =>
  date && say(message, { day: dateWords(date) })

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
    on(msg("born {day}"), born),
    number && say("number {number}", { number }),
    ancestry && ancestryInWords(ancestry),
    myopicParents !== undefined &&
      myopicParents !== null &&
      say("{count, plural, one {# myopic parent} other {# myopic parents}}", { count: myopicParents }),
    protocol && say("protocol {id}", { id: protocol }),
  )
}

function treatmentWords(treatment: Treatment): string {
  const { from, to, eye, nightsPerWeek } = treatment
  return joined(
    say("{treatment} from {day}", { treatment: treatmentName(treatment), day: dateWords(from) }),
    eye && (eye === "right" ? say("right eye only") : say("left eye only")),
    nightsPerWeek &&
      say("{nights, plural, one {# night} other {# nights}} of the week", { nights: nightsPerWeek }),
    to ? say("first day without {day}", { day: dateWords(to) }) : say("going on"),
  )
}

function consentWords({ covers, by, form, wording, assent, until }: Consent): string {
  return joined(
    say("to {treatment}|consent", { treatment: treatmentName(covers) }),
    by?.name && say("by {name}", { name: by.name }),
    by?.relation,
    form && formInWords(form),
    wording && say("wording version {version}", { version: wording.version }),
    assent && assentInWords(assent),
    on(msg("withdrawn from {day}"), until),
  )
}

function supplyWords(supply: Supply): string {
  const { concentrationPercent, volumeMl, lot, pharmacy, dispensed, opened, beyondUse } = supply
  return joined(
    concentrationPercent === undefined
      ? say("strength not stated")
      : treatmentName({ kind: "atropine", concentrationPercent }),
    volumeMl && `${withDecimalSign(String(volumeMl))} mL`,
    pharmacy,
    lot && say("lot {lot}", { lot }),
    on(msg("dispensed {day}"), dispensed),
    on(msg("opened {day}"), opened),
    on(msg("use until {day}"), beyondUse),
  )
}

function decisionWords({ kind, treatment, reason }: Decision): string {
  return joined(
    say(DECISION_WORDS[kind]),
    treatment && treatmentName(treatment),
    say("because: {reason}", { reason }),
  )
}

function concernWords({ kind, what, owner, seriousness, closed, outcome }: SafetyConcern): string {
  return joined(
    `${concernKindInWords(kind)}: ${what}`,
    seriousness && seriousnessInWords(seriousness),
    owner && say("looked after by {owner}", { owner }),
    closed
      ? say("closed {day}: {outcome}", { day: dateWords(closed), outcome: outcome ?? "" })
      : say("open|concern"),
  )
}

function orderWords(order: BottleOrder): string {
  const { concentrationPercent, bottles, volumeMl, pharmacy, confirmed, received, cancelled, override } =
    order
  return joined(
    say("{bottles, plural, one {# bottle} other {# bottles}} of {treatment}, {ml} mL each", {
      bottles,
      treatment: treatmentName({ kind: "atropine", concentrationPercent }),
      ml: withDecimalSign(String(volumeMl)),
    }),
    pharmacy,
    on(msg("confirmed {day}"), confirmed),
    on(msg("received {day}"), received),
    on(msg("called off {day}"), cancelled),
    override && say("without consent in force: {reason}", { reason: override }),
  )
}

const REACHED: Readonly<Record<FamilyContact["reachedBy"], string>> = {
  email: msg("reached by e-mail"),
  sms: msg("reached by SMS"),
  post: msg("reached by post"),
  none: msg("wants no messages"),
}

function familyWords({ name, relation, language, reachedBy, agreed }: FamilyContact): string {
  return joined(
    name,
    relation,
    LANGUAGE_NAMES[language],
    say(REACHED[reachedBy]),
    on(msg("messages agreed to {day}"), agreed?.on),
    on(msg("until {day}"), agreed?.until),
  )
}

/** As a line of the list: with a capital. */
export const entryLine = (entry: Parameters<typeof entryWords>[0]): string => capitalised(entryWords(entry))
