import type { CalendarDate } from "../engine/course.js"
import type { Channel } from "../engine/messages/family-contact.js"
import type { MessageKind } from "../engine/messages/planned-messages.js"
import type { Language } from "../engine/say.js"

/**
 * `sending` is written to the disk before a mail server hears of the message. So whatever is found in it by a process that
 * is not sending it was under way when another one ended: nobody can know whether it arrived (`unknown`), and a person
 * decides. Every other state is certain.
 */
export const OUTBOX_STATES = ["waiting", "sending", "sent", "failed", "unknown", "cancelled"] as const
export type OutboxState = (typeof OUTBOX_STATES)[number]

export const OUTBOX_PROBLEMS = [
  /** The mail server asked to try again later. */
  "put-off",
  /** The mail server will not take it. */
  "refused",
  /** The connection or the program ended while the message was under way. */
  "interrupted",
  /** The visit was made, the bottle received, the agreement withdrawn: there is nothing left to say. */
  "no-longer-due",
  /** What was withdrawn is to be said after all. */
  "due-again",
  /** A person said that it had arrived. */
  "told-sent",
  /** A person asked for another attempt. */
  "again",
  /** A person took a handed-over list back. */
  "taken-back",
] as const
export type OutboxProblem = (typeof OUTBOX_PROBLEMS)[number]

export interface OutboxMessage {
  readonly id: string
  readonly key: string
  readonly child: string
  readonly kind: MessageKind
  readonly channel: Channel
  readonly recipient: string
  readonly name: string
  readonly language: Language
  readonly subject: string
  readonly text: string
  readonly due: CalendarDate
  readonly plannedFor: CalendarDate
  readonly state: OutboxState
  readonly attempts: number
  /** ISO instant, null for at once. */
  readonly nextAttemptAt: string | null
  readonly messageId: string
  readonly problem: OutboxProblem | null
  readonly reply: string | null
  readonly createdAt: string
  readonly changedAt: string
  /** Id of the person who brought it into its state; null for the program. */
  readonly changedBy: string | null
  readonly list: string | null
}

/** What a message says and to whom: rewritten while it waits, never afterwards. */
export type OutboxWording = Pick<
  OutboxMessage,
  "channel" | "recipient" | "name" | "language" | "subject" | "text"
>

export type NewOutboxMessage = OutboxWording &
  Pick<OutboxMessage, "key" | "child" | "kind" | "due" | "plannedFor" | "messageId">

export interface OutboxEvent {
  readonly state: OutboxState
  readonly at: string
  readonly by: string | null
  readonly problem: OutboxProblem | null
  readonly reply: string | null
}

export interface OutboxChange {
  readonly id: string
  /** The change is made only from one of these states. */
  readonly from: readonly OutboxState[]
  readonly state: OutboxState
  readonly at: string
  readonly by?: string | undefined
  readonly problem?: OutboxProblem | undefined
  readonly reply?: string | undefined
  readonly attempts?: number | undefined
  readonly nextAttemptAt?: string | undefined
  /** Kept as it is when not named. */
  readonly list?: string | null | undefined
}

export interface OutboxQuery {
  readonly search?: string | undefined
  readonly state?: OutboxState | undefined
  readonly page: number
  readonly pageSize: number
}
