import { createHash } from "node:crypto"
import { dayNumberOrNull } from "../../engine/calendar.js"
import type { CalendarDate, Visit, VisitSource } from "../../engine/course.js"
import type { VisitChange } from "../../interop/intake/changed-visit.js"
import type { CourseFragment, Fragment, Identity } from "../../interop/intake/fragment.js"
import { nameWords } from "../../interop/intake/name-key.js"
import type { EntryKind, InboxItem } from "../../record/index.js"

/** What an object of the Inbox holds, as it is kept: its papers are stored files. */
export interface InboxContent {
  readonly course: CourseFragment
  readonly documents: readonly KeptDocument[]
  readonly source: VisitSource
  readonly notes: Fragment["notes"]
}

export interface KeptDocument {
  readonly date: CalendarDate
  readonly title: string
  readonly mediaType: string
  /** SHA-256 of the stored file. */
  readonly file: string
}

/** What was recorded of an object, entry by entry. */
export interface InboxResult {
  readonly entries: readonly RecordedPart[]
}

export interface RecordedPart {
  readonly id: string
  readonly kind: EntryKind
  /** For a visit: what the object did to it, and how it then stood. */
  readonly visit?: { readonly asRecorded: Visit; readonly change: VisitChange } | undefined
}

export const contentOf = ({ content }: Pick<InboxItem, "content">) => content as InboxContent
export const identityOf = ({ identity }: Pick<InboxItem, "identity">) => identity as Identity
export const resultOf = ({ result }: Pick<InboxItem, "result">) => (result ?? { entries: [] }) as InboxResult

/** Lists of a course that no instrument measures: they are taken by a person's word only. */
export const WEIGHTY_LISTS = [
  "treatments",
  "supplies",
  "consents",
  "missedNights",
  "decisions",
  "concerns",
  "orders",
  "explanations",
  "payments",
] as const
export type WeightyList = (typeof WEIGHTY_LISTS)[number]

/** Who the file says that it is about, in one writing; null where that could be anybody. */
export function identityKey({ number, name, born, sex }: Identity): string | null {
  const words = name === undefined ? [] : nameWords(name)
  if (born === undefined || (words.length === 0 && !number?.trim())) return null
  return JSON.stringify([number?.trim().toLowerCase() ?? null, words.join(" "), born, sex ?? null])
}

/** The latest day the object speaks of, null when it speaks of none. */
export function dayOfContent({ course, documents }: InboxContent): CalendarDate | null {
  const days = [...(course.visits ?? []), ...documents].map(({ date }) => date)
  return (
    days
      .filter((day) => dayNumberOrNull(day) !== null)
      .sort()
      .at(-1) ?? null
  )
}

export const sha256Of = (bytes: Uint8Array | string): string =>
  createHash("sha256").update(bytes).digest("hex")
