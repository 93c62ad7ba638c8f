import { z } from "zod"
import { msg, say } from "../../engine/say.js"

/** The DICOM receiver: whether it listens, what it took and refused. */

/** Kinds of objects that are taken, by the UID of their storage class. */
export const STORED_CLASSES = {
  "1.2.840.10008.5.1.4.1.1.78.7": msg("Axial measurements"),
  "1.2.840.10008.5.1.4.1.1.78.3": msg("Keratometry"),
  "1.2.840.10008.5.1.4.1.1.78.2": msg("Autorefraction"),
  "1.2.840.10008.5.1.4.1.1.78.4": msg("Subjective refraction"),
  "1.2.840.10008.5.1.4.1.1.78.5": msg("Visual acuity"),
  "1.2.840.10008.5.1.4.1.1.78.1": msg("Lensometry (glasses as worn)"),
  "1.2.840.10008.5.1.4.1.1.104.1": msg("Encapsulated PDF"),
} as const

/** Rules of the conversation that the other side broke. */
export const CONVERSATION_FAULTS = [
  "unknown-pdu",
  "unexpected-pdu",
  "pdu-too-long",
  "malformed-pdu",
  "malformed-command",
  "unexpected-fragment",
  "command-too-long",
  "too-much-dropped",
] as const

/** Why something was refused or came to nothing. */
export const REFUSALS = [
  "no-such-application",
  "unknown-calling-title",
  "unknown-called-title",
  "unknown-protocol-version",
  "too-many-associations",
  "too-many-connections",
  "no-class-agreed",
  "no-tls",
  ...CONVERSATION_FAULTS,
  "request-late",
  "silent",
  "too-slow",
  "association-too-long",
  "cut-short",
  "no-longer-allowed",
  "class-not-agreed",
  "unknown-operation",
  "invalid-instance",
  "does-not-match",
  "too-large",
  "too-many-objects",
  "too-fast",
  "not-taken",
  "not-stored",
  "our-failure",
] as const
export type Refusal = (typeof REFUSALS)[number]

export const OUTCOMES = ["recorded", "known", "waiting", "refused"] as const
export type Outcome = (typeof OUTCOMES)[number]

export const INSTRUMENT_EVENTS_PAGE = 25

export const LISTENER_STATES = ["listening", "off", "unset", "failed", "stopped"] as const
export const LISTENER_PROBLEMS = ["port-taken", "port-not-allowed", "address-not-here", "other"] as const

const instant = z.iso.datetime()

const listener = z.object({
  state: z.enum(LISTENER_STATES),
  host: z.string(),
  port: z.int().nullable().describe("Where it listens or would listen"),
  title: z.string().nullable().describe("The title it is called by"),
  isTls: z.boolean(),
  isPortFromStart: z.boolean().describe("Whether the port was named where the server was started"),
  isSet: z.boolean().describe("Whether the practice has settings of instruments"),
  isOpenToThisMachine: z
    .boolean()
    .describe("Without settings of the practice: programs of this machine may send under any title"),
  isForThisMachineOnly: z.boolean().describe("Whether other machines can reach it at all"),
  problem: z.enum(LISTENER_PROBLEMS).nullable(),
  since: instant.nullable(),
})

const event = z.object({
  id: z.int(),
  at: instant,
  title: z.string().describe("The calling title; empty where none was heard"),
  address: z.string(),
  what: z.string().describe("UID of the storage class, or empty for the association itself"),
  outcome: z.enum(OUTCOMES),
  refusal: z.enum(REFUSALS).nullable(),
  why: z.string().nullable().describe("In the words of who reads the objects"),
  times: z.int().describe("How often in a row"),
})

const heard = z.object({
  title: z.string(),
  address: z.string(),
  isAllowed: z.boolean(),
  lastAt: instant.describe("Last association, accepted or not"),
  lastEchoAt: instant.nullable(),
  lastObjectAt: instant.nullable(),
})

export const instrumentsQuery = z.object({
  search: z
    .string()
    .max(200, { error: () => say("at most {most} characters", { most: 200 }) })
    .default(""),
  only: z
    .enum(["received", "refused"], { error: () => say("one of {list}", { list: "received, refused" }) })
    .optional(),
  page: z.coerce
    .number({ error: () => say("a page number from 1") })
    .pipe(z.int().min(1).max(100_000))
    .default(1),
})

export const instrumentsAnswer = z.object({
  listener,
  heard: z.array(heard),
  counts: z.object({ received: z.int(), refused: z.int() }),
  total: z.int(),
  page: z.int(),
  pageSize: z.int(),
  events: z.array(event),
})

export type InstrumentsAnswer = z.infer<typeof instrumentsAnswer>
export type InstrumentEvent = z.infer<typeof event>
export type HeardInstrument = z.infer<typeof heard>
export type ListenerAnswer = z.infer<typeof listener>
export type InstrumentsQuery = z.infer<typeof instrumentsQuery>

export const instrumentsApi = {
  /** Whether instruments are received, who was heard, and what was taken and refused since the start. */
  instruments: {
    method: "GET",
    url: "/api/instruments",
    query: instrumentsQuery,
    answer: instrumentsAnswer,
  },
} as const
