/**
 * `sending` is written to the disk before a mail server hears of the message. So whatever is found in it by a process that
 * is not sending it was under way when another one ended: nobody can know whether it arrived (`unknown`), and a person
 * decides. Every other state is certain.
 */
export const MESSAGE_STATES = ["waiting", "sending", "sent", "failed", "unknown", "cancelled"] as const
export type MessageState = (typeof MESSAGE_STATES)[number]

export const MESSAGE_PROBLEMS = [
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
export type MessageProblem = (typeof MESSAGE_PROBLEMS)[number]
