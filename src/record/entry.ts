import type {
  Ancestry,
  BottleOrder,
  CalendarDate,
  Consent,
  Decision,
  Explanation,
  MissedNights,
  Payment,
  SafetyConcern,
  Sex,
  Supply,
  Treatment,
  Visit,
  VisitSource,
} from "../engine/course.js"
import type { FamilyContact } from "../engine/messages/family-contact.js"
import type {
  ConsentWording,
  Contacts,
  DocumentTemplate,
  FeeSchedule,
  InstrumentRules,
  MessageRules,
  Pharmacy,
  PracticeLetterhead,
  TableMapping,
} from "../engine/practice-rules.js"
import type { Protocol } from "../engine/protocol/protocol.js"

/** Who the child is, as the practice knows it. */
export interface ChildBody {
  readonly name: string
  /** The practice's own number for the child. */
  readonly number?: string | undefined
  readonly born: CalendarDate
  readonly sex: Sex
  readonly ancestry?: Ancestry | undefined
  readonly myopicParents?: 0 | 1 | 2 | undefined
  /** Id of the protocol the child follows; the one that fits the treatment when absent. */
  readonly protocol?: string | undefined
}

/** A consent as signed: what the course file holds, and how it was signed. */
export interface ConsentBody extends Consent {
  readonly signature?:
    | { readonly kind: "drawn" | "scan" /** SHA-256 of the stored file. */; readonly file: string }
    | { readonly kind: "typed"; readonly name: string }
    | undefined
}

/** A paper that came from outside, kept as it came. */
export interface DocumentBody {
  readonly date: CalendarDate
  readonly title: string
  /** SHA-256 of the stored file. */
  readonly file: string
  readonly mediaType: string
  readonly source?: VisitSource | undefined
}

/** What an entry says. A withdrawal says that the entry it supersedes no longer holds, with nothing in its place. */
export type Content =
  | { readonly kind: "child"; readonly body: ChildBody }
  | { readonly kind: "visit"; readonly body: Visit }
  | { readonly kind: "treatment"; readonly body: Treatment }
  | { readonly kind: "consent"; readonly body: ConsentBody }
  | { readonly kind: "supply"; readonly body: Supply }
  | { readonly kind: "missed-nights"; readonly body: MissedNights }
  | { readonly kind: "decision"; readonly body: Decision }
  | { readonly kind: "concern"; readonly body: SafetyConcern }
  | { readonly kind: "order"; readonly body: BottleOrder }
  | { readonly kind: "explanation"; readonly body: Explanation }
  | { readonly kind: "payment"; readonly body: Payment }
  | { readonly kind: "family"; readonly body: FamilyContact }
  | { readonly kind: "document"; readonly body: DocumentBody }
  | PracticePaper
  | { readonly kind: "withdrawal"; readonly body: Readonly<Record<string, never>> }

export type EntryKind = Content["kind"]

/** What a practice sets for itself. Such an entry stands under the practice's own id in place of a child's. */
export type PracticePaper =
  | { readonly kind: "protocol"; readonly body: Protocol }
  | { readonly kind: "fees"; readonly body: FeeSchedule }
  | { readonly kind: "wording"; readonly body: ConsentWording }
  | { readonly kind: "pharmacy"; readonly body: Pharmacy }
  | { readonly kind: "switches"; readonly body: Readonly<Record<string, boolean>> }
  | { readonly kind: "contacts"; readonly body: Contacts }
  | { readonly kind: "letterhead"; readonly body: PracticeLetterhead }
  | { readonly kind: "template"; readonly body: DocumentTemplate }
  | { readonly kind: "messages"; readonly body: MessageRules }
  | { readonly kind: "instruments"; readonly body: InstrumentRules }
  | { readonly kind: "mapping"; readonly body: TableMapping }

export const PAPER_KINDS = [
  "protocol",
  "fees",
  "wording",
  "pharmacy",
  "switches",
  "contacts",
  "letterhead",
  "template",
  "messages",
  "instruments",
  "mapping",
] as const
export type PaperKind = PracticePaper["kind"]

interface Superseding {
  /** The entry this one takes the place of; then `reason` says why. */
  readonly supersedes?: string | undefined
  readonly reason?: string | undefined
}

/** An entry to be recorded. The same `id` given twice is one entry; left out, the record makes one. */
export type Draft = Content &
  Superseding & {
    readonly id?: string | undefined
    /** The child's id: the id of the entry that first named the child. */
    readonly child: string
    /** Id of a person of the practice. */
    readonly author: string
    /** ISO instant, UTC. */
    readonly recordedAt: string
  }

/** An entry as recorded: nothing of it ever changes. */
export type Entry = Content & {
  readonly practice: string
  readonly position: number
  readonly id: string
  readonly child: string
  readonly author: string
  readonly recordedAt: string
  readonly supersedes: string | null
  readonly reason: string | null
  readonly previousHash: string
  readonly hash: string
}

/** Those of the entries that still hold: neither superseded nor a withdrawal. */
export function currentOf(entries: readonly Entry[]): readonly Entry[] {
  const superseded = new Set(entries.map((entry) => entry.supersedes))
  return entries.filter((entry) => entry.kind !== "withdrawal" && !superseded.has(entry.id))
}

/** The day an entry is about, null when it has none. */
export function dayOf(content: Content): CalendarDate | null {
  switch (content.kind) {
    case "child":
      return content.body.born
    case "visit":
    case "consent":
    case "decision":
    case "order":
    case "explanation":
    case "payment":
    case "document":
      return content.body.date
    case "treatment":
    case "missed-nights":
    case "fees":
    case "wording":
      return content.body.from
    case "family":
      return content.body.agreed?.on ?? null
    case "concern":
      return content.body.opened
    case "supply":
      return content.body.dispensed ?? content.body.opened ?? null
    case "withdrawal":
    case "protocol":
    case "pharmacy":
    case "switches":
    case "contacts":
    case "letterhead":
    case "template":
    case "messages":
    case "instruments":
    case "mapping":
      return null
  }
}
