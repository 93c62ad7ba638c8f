import type { Channel, MessageTopic, ReachedBy } from "../../engine/messages/family-contact.js"
import type { MessageProblem, MessageState } from "../../engine/messages/message-states.js"
import type { MessageKind } from "../../engine/messages/planned-messages.js"
import { msg, say, shortDayInWords } from "../../engine/say.js"
import type { LookAnswer, MessagesAnswer, TestMailAnswer } from "../../server/contract/messages.js"

/** What stands on the page of messages, in the reader's language: `say(STATE_WORDS[state])`. */

export const STATE_WORDS: Readonly<Record<MessageState, string>> = {
  waiting: msg("Waiting"),
  sending: msg("Being sent"),
  sent: msg("Sent"),
  failed: msg("Not accepted"),
  unknown: msg("Unknown"),
  cancelled: msg("Called off"),
}

export const KIND_WORDS: Readonly<Record<MessageKind, string>> = {
  "visit-ahead": msg("Time to book"),
  "visit-due": msg("Visit due soon"),
  "visit-overdue": msg("Visit not made"),
  bottle: msg("Bottle running out"),
}

export const CHANNEL_WORDS: Readonly<Record<Channel, string>> = {
  email: msg("e-mail"),
  sms: msg("SMS"),
  post: msg("post"),
}

export const REACHED_WORDS: Readonly<Record<ReachedBy, string>> = {
  email: msg("By e-mail"),
  sms: msg("By SMS"),
  post: msg("By post"),
  none: msg("No messages"),
}

export const TOPIC_WORDS: Readonly<Record<MessageTopic, string>> = {
  visits: msg("Reminders of visits"),
  bottles: msg("Notice of a bottle running out"),
}

const PROBLEM_WORDS: Readonly<Record<MessageProblem, string>> = {
  "put-off": msg("The mail server asked to try again later."),
  refused: msg("The mail server does not take it."),
  interrupted: msg("The connection ended while it was being sent. Nobody can know whether it arrived."),
  "no-longer-due": msg("Nothing is left to say: what it was about is done or was taken back."),
  "due-again": msg("It is due again."),
  "told-sent": msg("A person said that it was sent."),
  again: msg("A person asked for another attempt."),
  "taken-back": msg("The list it was handed over in was taken back."),
}

const SERVER_PROBLEM_WORDS: Readonly<
  Record<NonNullable<MessagesAnswer["health"]["failure"]>["problem"], string>
> = {
  unreachable: msg("The mail server does not answer."),
  "no-tls": msg("The mail server offers no encryption that can be trusted, and nothing is sent without it."),
  "log-in-refused": msg("The mail server refuses the user or the password."),
  "sender-refused": msg("The mail server refuses the practice’s address as sender."),
}

export const problemInWords = (problem: MessageProblem): string => say(PROBLEM_WORDS[problem])
export const serverProblemInWords = (problem: keyof typeof SERVER_PROBLEM_WORDS): string =>
  say(SERVER_PROBLEM_WORDS[problem])

/** "25 Nov 2026, 14:05", by the clock of the reader's machine. */
export function instantInWords(instant: string): string {
  const at = new Date(instant)
  const twoDigits = (value: number) => String(value).padStart(2, "0")
  const date = `${at.getFullYear()}-${twoDigits(at.getMonth() + 1)}-${twoDigits(at.getDate())}`
  const time = `${twoDigits(at.getHours())}:${twoDigits(at.getMinutes())}`
  return say("{day}, {time}", { day: shortDayInWords(date), time })
}

/** What one look at the outbox did, in a sentence. */
export function lookInWords({ added, sent, held, unknown, refused }: LookAnswer): string {
  if (held === "off") return say("Messages are turned off; nothing was sent.")
  if (held === "no-server") return say("No mail server is set; everything waits.")
  if (held === "quiet") return say("These are quiet hours; everything waits until they end.")
  if (held === "server-down") return say("The mail server takes nothing at the moment; everything waits.")
  if (unknown + refused > 0)
    return say(
      "{sent, plural, one {# e-mail sent} other {# e-mails sent}}; {open, plural, one {# message needs} other {# messages need}} a person: see Unknown and Not accepted.",
      { sent, open: unknown + refused },
    )
  return say(
    "{added, plural, one {# new message} other {# new messages}}, {sent, plural, one {# e-mail sent} other {# e-mails sent}}.",
    { added, sent },
  )
}

/** What the mail server said to a test. */
export function testInWords({ outcome, problem, reply }: TestMailAnswer): string {
  if (outcome === "accepted") return say("The mail server took the test. See whether it arrives.")
  if (problem !== null) return serverProblemInWords(problem)
  return outcome === "no-answer"
    ? say("The connection ended before the mail server had answered.")
    : say("The mail server did not take the test: {reply}", { reply })
}
