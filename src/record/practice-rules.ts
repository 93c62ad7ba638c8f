import type {
  InstrumentRules,
  MessageRules,
  PracticeLetterhead,
  PracticeRules,
} from "../engine/practice-rules.js"
import { currentOf, type Entry, type PaperKind, type PracticePaper } from "./entry.js"

/** What the practice has set, from the papers that still hold. */
export function practiceRulesFrom(papers: readonly Entry[]): PracticeRules {
  const current = currentOf(papers)
  const of = <Kind extends PaperKind>(kind: Kind) =>
    current
      .filter((entry) => entry.kind === kind)
      .map((entry) => entry.body as Extract<PracticePaper, { kind: Kind }>["body"])
  return {
    protocols: of("protocol"),
    feeSchedules: of("fees"),
    consentWordings: of("wording"),
    pharmacies: of("pharmacy"),
    examinationSwitches: Object.assign({}, ...of("switches")),
    contacts: Object.assign({}, ...of("contacts")),
    ...letterheadOf(of("letterhead")),
    templates: of("template"),
    ...messagesOf(of("messages")),
    ...instrumentsOf(of("instruments")),
    mappings: of("mapping"),
  }
}

/** The latest, when there is any. */
function letterheadOf(letterheads: readonly PracticeLetterhead[]): Pick<PracticeRules, "letterhead"> {
  const letterhead = letterheads.at(-1)
  return letterhead ? { letterhead } : {}
}

/** The latest, when there is any. */
function messagesOf(papers: readonly MessageRules[]): Pick<PracticeRules, "messages"> {
  const messages = papers.at(-1)
  return messages ? { messages } : {}
}

/** The latest, when there is any. */
function instrumentsOf(papers: readonly InstrumentRules[]): Pick<PracticeRules, "instruments"> {
  const instruments = papers.at(-1)
  return instruments ? { instruments } : {}
}
