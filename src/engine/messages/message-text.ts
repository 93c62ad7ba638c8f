import type { CalendarDate } from "../course.js"
import type { Contacts, MessageRules } from "../practice-rules.js"
import { dayInWords, inLanguage, msg, say } from "../say.js"
import type { FamilyContact } from "./family-contact.js"
import type { MessageKind, PlannedMessage } from "./planned-messages.js"

export interface MessageText {
  /** Of an e-mail and of a letter; names no child and nothing of health, since it is read over shoulders. */
  readonly subject: string
  /** Plain text, paragraphs parted by an empty line. */
  readonly text: string
}

export interface MessageTextInput {
  readonly message: PlannedMessage
  readonly contact: FamilyContact
  readonly today: CalendarDate
  readonly rules: Pick<MessageRules, "sender" | "telephone">
  readonly contacts: Pick<Contacts, "urgent">
}

/** What is written to the family, in its language: no figure of the child, no diagnosis, no treatment by name. */
export function messageText(input: MessageTextInput): MessageText {
  return inLanguage(input.message.language, () => ({
    subject: say(SUBJECTS[input.message.kind]),
    text: input.message.channel === "sms" ? shortText(input) : letterText(input),
  }))
}

const SUBJECTS: Readonly<Record<MessageKind, string>> = {
  "visit-ahead": msg("Time to book a visit"),
  "visit-due": msg("A visit is coming up"),
  "visit-overdue": msg("A visit has not been made yet"),
  bottle: msg("Something to arrange with us soon"),
}

function letterText(input: MessageTextInput): string {
  const { message, contact, rules, contacts } = input
  const { telephone } = rules
  const why =
    message.channel === "email"
      ? say(
          "You agreed to such messages on {day}. To stop them, answer this message with the word stop, or call us.",
          { day: dayInWords(contact.agreed?.on ?? message.on) },
        )
      : say("You agreed to such messages on {day}. To stop them, call us.", {
          day: dayInWords(contact.agreed?.on ?? message.on),
        })
  return [
    say("Hello {name},", { name: message.name }),
    sentences(input).join(" "),
    say("You reach us by telephone at {telephone}.", { telephone }),
    contacts.urgent
      ? say("Please do not write to us about anything urgent. Urgent contact: {urgent}.", {
          urgent: contacts.urgent,
        })
      : say("Please do not write to us about anything urgent: call us."),
    rules.sender,
    why,
  ].join("\n\n")
}

/** One paragraph, for a telephone. */
function shortText(input: MessageTextInput): string {
  const { sender, telephone } = input.rules
  return [
    ...sentences(input),
    say("{practice}, telephone {telephone}. To stop these messages, call us.", {
      practice: sender,
      telephone,
    }),
  ].join(" ")
}

function sentences(input: MessageTextInput): readonly string[] {
  switch (input.message.kind) {
    case "visit-ahead":
      return [bookSentence(input), ifBooked()]
    case "visit-due":
      return [dueSentence(input), ifBooked()]
    case "visit-overdue":
      return [overdueSentence(input), say("Please call us to find a new day.")]
    case "bottle":
      return [
        bottleSentence(input),
        say("Please call us about the next one."),
        say("Please do not use a bottle after its date."),
      ]
  }
}

const ifBooked = () => say("If a day is agreed already, there is nothing else to do.")

function bookSentence({ message, contact: { childCalled: child }, today }: MessageTextInput): string {
  const [from, until] = [dayInWords(message.opens), dayInWords(message.closes)]
  if (message.opens <= today)
    return child
      ? say("It is time to book the next visit of {child}: please call us for a day until {until}.", {
          child,
          until,
        })
      : say("It is time to book your child’s next visit: please call us for a day until {until}.", { until })
  return child
    ? say("It is time to book the next visit of {child}: please call us for a day from {from} to {until}.", {
        child,
        from,
        until,
      })
    : say("It is time to book your child’s next visit: please call us for a day from {from} to {until}.", {
        from,
        until,
      })
}

function dueSentence({ message, contact: { childCalled: child } }: MessageTextInput): string {
  const day = dayInWords(message.due)
  return child
    ? say("The next visit of {child} is planned for about {day}: please call us if no day is agreed yet.", {
        child,
        day,
      })
    : say("Your child’s next visit is planned for about {day}: please call us if no day is agreed yet.", {
        day,
      })
}

function overdueSentence({ message, contact: { childCalled: child } }: MessageTextInput): string {
  const day = dayInWords(message.due)
  return child
    ? say("By our records the visit of {child} that was planned for about {day} has not been made yet.", {
        child,
        day,
      })
    : say("By our records your child’s visit that was planned for about {day} has not been made yet.", {
        day,
      })
}

function bottleSentence({ message, contact: { childCalled: child }, today }: MessageTextInput): string {
  const day = dayInWords(message.due)
  if (message.due < today)
    return child
      ? say("By our records the last bottle for {child} was good until {day}.", { child, day })
      : say("By our records your child’s last bottle was good until {day}.", { day })
  return child
    ? say("By our records the last bottle for {child} is good until {day}.", { child, day })
    : say("By our records your child’s last bottle is good until {day}.", { day })
}
