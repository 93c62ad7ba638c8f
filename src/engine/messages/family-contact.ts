import type { CalendarDate } from "../course.js"
import type { Language } from "../say.js"

/** What a family may agree to be told of, each by itself. */
export const MESSAGE_TOPICS = ["visits", "bottles"] as const
export type MessageTopic = (typeof MESSAGE_TOPICS)[number]

export const CHANNELS = ["email", "sms", "post"] as const
export type Channel = (typeof CHANNELS)[number]

/** How a family wishes to be reached; `none` where it wants no messages at all. */
export const REACHED_BY = [...CHANNELS, "none"] as const
export type ReachedBy = (typeof REACHED_BY)[number]

/** Whom the practice speaks with about a child. Names: so it stands in the record and never in a course file. */
export interface FamilyContact {
  readonly name: string
  /** In the family's own word: mother, grandfather, guardian. */
  readonly relation: string
  /** The language of messages and papers for this family. */
  readonly language: Language
  readonly email?: string | undefined
  readonly telephone?: string | undefined
  /** Postal address, a line each. */
  readonly address?: string | undefined
  readonly reachedBy: ReachedBy
  /** What messages call the child, such as the first name; "your child" when absent, since no name shows which part is the surname. */
  readonly childCalled?: string | undefined
  /** Messages are agreed to, never assumed. */
  readonly agreed?: Agreement | undefined
}

export interface Agreement {
  readonly on: CalendarDate
  readonly to: readonly MessageTopic[]
  /** First day on which it no longer holds. */
  readonly until?: CalendarDate | undefined
}

/** Where messages go, null for a family that can't be or does not want to be reached. */
export function reachOf(
  contact: Pick<FamilyContact, "reachedBy" | "email" | "telephone" | "address">,
): { readonly channel: Channel; readonly to: string } | null {
  const { reachedBy, email, telephone, address } = contact
  if (reachedBy === "none") return null
  const to = { email, sms: telephone, post: address }[reachedBy]
  return to ? { channel: reachedBy, to } : null
}

/** Whether the family has agreed to messages about this, on this day. */
export function agreesTo(
  { agreed }: Pick<FamilyContact, "agreed">,
  { topic, today }: { readonly topic: MessageTopic; readonly today: CalendarDate },
): boolean {
  if (!agreed?.to.includes(topic) || agreed.on > today) return false
  return agreed.until === undefined || today < agreed.until
}
