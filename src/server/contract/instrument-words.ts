import { msg, say } from "../../engine/say.js"
import { type InstrumentEvent, type Outcome, type Refusal, STORED_CLASSES } from "./instruments.js"

/** What the receiver says of itself, once for the page and for finding it there. */

const OUTCOME_WORDS: Readonly<Record<Outcome, string>> = {
  recorded: msg("Recorded under the child"),
  known: msg("Already known: nothing changed"),
  waiting: msg("Waits in the Inbox"),
  refused: msg("Refused"),
}

const BROKEN = msg("What it sent is not DICOM, or breaks its rules ({code}).")

const REFUSAL_WORDS: Readonly<Record<Refusal, string>> = {
  "no-such-application": msg("It asked for something that is not DICOM."),
  "unknown-calling-title": msg("Its title is not among the allowed instruments."),
  "unknown-called-title": msg("It called us by another title than ours."),
  "unknown-protocol-version": msg("It speaks another version of the protocol."),
  "too-many-associations": msg("Too many instruments were sending at once; it may send again."),
  "too-many-connections": msg("Too many connections at once."),
  "no-class-agreed": msg("It offered no kind of object that is taken here."),
  "no-tls": msg("It did not agree on TLS with us."),
  "unknown-pdu": BROKEN,
  "unexpected-pdu": BROKEN,
  "pdu-too-long": BROKEN,
  "malformed-pdu": BROKEN,
  "malformed-command": BROKEN,
  "unexpected-fragment": BROKEN,
  "command-too-long": BROKEN,
  "too-much-dropped": msg("An object far too large was broken off."),
  "request-late": msg("It connected and did not say what it wanted in time."),
  silent: msg("It fell silent in the middle; nothing of the object was kept."),
  "too-slow": msg("It sent too slowly; nothing of the object was kept."),
  "association-too-long": msg("It kept the connection for too long."),
  "cut-short": msg("It left in the middle of an object; nothing of it was kept."),
  "no-longer-allowed": msg("Its title is no longer allowed."),
  "class-not-agreed": msg("It sent another kind of object than was agreed."),
  "unknown-operation": msg("It asked for something other than storing."),
  "invalid-instance": msg("The object has no valid identifier."),
  "does-not-match": msg("The object is another one than was announced."),
  "too-large": msg("The object is too large, or there was no memory for it."),
  "too-many-objects": msg("Too many objects in one connection; it may send the rest in another."),
  "too-fast": msg("Too many objects in a minute; it may send the rest later."),
  "not-taken": msg("The object could not be read."),
  "not-stored": msg("There is no room left on the disk."),
  "our-failure": msg("It could not be stored: a failure of this server. The instrument may send it again."),
}

/** What an object is, or what was asked. */
export function whatInWords({ what }: Pick<InstrumentEvent, "what">): string {
  if (what === "") return say("Connection")
  return Object.hasOwn(STORED_CLASSES, what) ? say(STORED_CLASSES[what as keyof typeof STORED_CLASSES]) : what
}

export const outcomeInWords = ({ outcome }: Pick<InstrumentEvent, "outcome">): string =>
  say(OUTCOME_WORDS[outcome])

/** Why something was refused, in a sentence; null where it was not. */
export function refusalInWords({ refusal }: Pick<InstrumentEvent, "refusal">): string | null {
  if (refusal === null) return null
  const words = REFUSAL_WORDS[refusal]
  return words === BROKEN ? say(BROKEN, { code: refusal }) : say(words)
}

/** Everything an event is found by. */
export const eventInWords = (event: InstrumentEvent): string =>
  [whatInWords(event), outcomeInWords(event), refusalInWords(event) ?? ""].join(" ")
