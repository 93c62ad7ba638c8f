import type { CalendarDate } from "../engine/course.js"
import type { Channel } from "../engine/messages/family-contact.js"
import type { MessageProblem, MessageState } from "../engine/messages/message-states.js"
import type { MessageKind } from "../engine/messages/planned-messages.js"
import type { Language } from "../engine/say.js"

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
  readonly state: MessageState
  readonly attempts: number
  /** ISO instant, null for at once. */
  readonly nextAttemptAt: string | null
  readonly messageId: string
  readonly problem: MessageProblem | null
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
  readonly state: MessageState
  readonly at: string
  readonly by: string | null
  readonly problem: MessageProblem | null
  readonly reply: string | null
}

export interface OutboxChange {
  readonly id: string
  /** The change is made only from one of these states. */
  readonly from: readonly MessageState[]
  readonly state: MessageState
  readonly at: string
  readonly by?: string | undefined
  readonly problem?: MessageProblem | undefined
  readonly reply?: string | undefined
  readonly attempts?: number | undefined
  readonly nextAttemptAt?: string | undefined
  /** Kept as it is when not named. */
  readonly list?: string | null | undefined
}

export interface OutboxQuery {
  readonly search?: string | undefined
  readonly state?: MessageState | undefined
  readonly page: number
  readonly pageSize: number
}
