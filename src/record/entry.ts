import type { Ancestry, CalendarDate, Consent, Sex, Supply, Treatment, Visit } from "../engine/course.js"

/** Who the child is, as the practice knows it. */
export interface ChildBody {
  readonly name: string
  /** The practice's own number for the child. */
  readonly number?: string | undefined
  readonly born: CalendarDate
  readonly sex: Sex
  readonly ancestry?: Ancestry | undefined
  readonly myopicParents?: 0 | 1 | 2 | undefined
}

/** What an entry says. A withdrawal says that the entry it supersedes no longer holds, with nothing in its place. */
export type Content =
  | { readonly kind: "child"; readonly body: ChildBody }
  | { readonly kind: "visit"; readonly body: Visit }
  | { readonly kind: "treatment"; readonly body: Treatment }
  | { readonly kind: "consent"; readonly body: Consent }
  | { readonly kind: "supply"; readonly body: Supply }
  | { readonly kind: "withdrawal"; readonly body: Readonly<Record<string, never>> }

export type EntryKind = Content["kind"]

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

/** The day an entry is about, null when it has none. */
export function dayOf(content: Content): CalendarDate | null {
  switch (content.kind) {
    case "child":
      return content.body.born
    case "visit":
    case "consent":
      return content.body.date
    case "treatment":
      return content.body.from
    case "supply":
      return content.body.dispensed ?? content.body.opened ?? null
    case "withdrawal":
      return null
  }
}
