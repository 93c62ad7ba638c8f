import { z } from "zod"
import { TREATMENT_KINDS } from "../../engine/course.js"
import { isTimeZone } from "../../engine/messages/quiet-hours.js"
import { COVERAGES, DATE_ORDERS, type PracticeRules } from "../../engine/practice-rules.js"
import { MEASURES, STAGES } from "../../engine/protocol/protocol.js"
import { LANGUAGES, say, withDecimalSign } from "../../engine/say.js"
import { DOCUMENT_KINDS } from "../../report/document.js"
import { entryIdField, reasonField } from "./entry.js"

/** What a practice sets for itself, field by field; the error text is what is allowed, to stand after "must be". */

const text = (most: number) =>
  z
    .string({ error: () => say("text") })
    .trim()
    .min(1, { error: () => say("text that is not empty") })
    .max(most, { error: () => say("at most {most} characters", { most }) })
const day = z.iso.date({ error: () => say("a day of the calendar written YYYY-MM-DD") })
const whole = (low: number, high: number) => {
  const error = () => say("a whole number from {low} to {high}", { low, high })
  return z.int({ error }).min(low, { error }).max(high, { error })
}
const above0 = (high: number) => {
  const error = () =>
    say("a number above {low} and up to {high}", { low: "0", high: withDecimalSign(String(high)) })
  return z.number({ error }).gt(0, { error }).max(high, { error })
}
const oneOf = <const T extends readonly [string, ...string[]]>(values: T) =>
  z.enum(values, { error: () => say("one of {list}", { list: values.join(", ") }) })

const feeOccasion = z.discriminatedUnion(
  "kind",
  [
    z.object({
      kind: z.literal("examination"),
      stages: z.array(oneOf(STAGES)).min(1, { error: () => say("at least one stage") }),
    }),
    z.object({ kind: z.literal("measure"), measure: oneOf(MEASURES) }),
    z.object({ kind: z.literal("bottle"), concentrationPercent: above0(1.5).nullish() }),
    z.object({ kind: z.literal("device"), treatment: oneOf(TREATMENT_KINDS), everyMonths: whole(1, 60) }),
  ],
  { error: () => say("an examination, a measure, a bottle or a device") },
)

const fees = z.object({
  title: text(200),
  currency: z
    .string({ error: () => say("an ISO 4217 code such as EUR") })
    .regex(/^[A-Z]{3}$/, { error: () => say("an ISO 4217 code such as EUR") }),
  from: day,
  fees: z
    .array(
      z.object({
        id: text(60),
        title: text(200),
        cents: whole(0, 100_000_000),
        coverage: oneOf(COVERAGES),
        charged: feeOccasion,
      }),
    )
    .max(200, { error: () => say("at most 200 fees") }),
})

const wording = z.object({
  id: text(60),
  version: text(60),
  from: day,
  language: text(35),
  title: text(200),
  sections: z
    .array(z.object({ heading: text(200), text: text(5000) }))
    .min(1, { error: () => say("at least one section") })
    .max(60, { error: () => say("at most 60 sections") }),
  isMaterial: z.boolean({ error: () => say("true or false") }),
})

const share = () => {
  const error = () => say("a share from 0 to below 1")
  return z.number({ error }).min(0, { error }).lt(1, { error })
}

const device = z
  .object({
    name: text(60),
    smallestVolumeMl: above0(1000),
    largestVolumeMl: above0(10_000).nullish(),
    graduationMl: above0(100),
    toleranceFraction: share(),
  })
  .refine(
    ({ smallestVolumeMl, largestVolumeMl }) => (largestVolumeMl ?? smallestVolumeMl) >= smallestVolumeMl,
    {
      error: () => say("at least the smallest volume"),
      path: ["largestVolumeMl"],
    },
  )

const pharmacy = z.object({
  id: text(60),
  name: text(200),
  leadDays: whole(0, 120),
  stockPercents: z
    .array(above0(100))
    .min(1, { error: () => say("at least one stock strength") })
    .max(20),
  smallestVolumeMl: above0(50),
  bottleMl: above0(100),
  isPreserved: z.boolean({ error: () => say("true or false") }),
  daysAfterOpening: whole(1, 366),
  devices: z
    .array(device)
    .max(10, { error: () => say("at most 10 devices") })
    .nullish(),
  stockTolerance: share().nullish(),
  contact: text(500).nullish(),
})

const switches = z.record(
  z.string().regex(/^CD-\d{3}$/, { error: () => say("a duty of the evidence such as CD-028") }),
  z.boolean({ error: () => say("true or false") }),
)

const contacts = z.object({
  poisonCentre: text(200).nullish(),
  urgent: text(200).nullish(),
  country: z
    .string()
    .regex(/^[A-Z]{2}$/, { error: () => say("an ISO 3166-1 code such as IE") })
    .nullish(),
})

const letterhead = z.object({
  lines: z.array(text(120)).max(8, { error: () => say("at most 8 lines") }),
  logo: z
    .string()
    .regex(/^[0-9a-f]{64}$/, { error: () => say("the SHA-256 of a stored picture") })
    .nullish(),
})

const template = z.object({
  document: oneOf(DOCUMENT_KINDS),
  language: oneOf(LANGUAGES),
  text: z
    .string({ error: () => say("text") })
    .max(20_000, { error: () => say("at most {most} characters", { most: 20000 }) }),
})

const clockTime = z
  .string({ error: () => say("a time of day written HH:MM") })
  .regex(/^([01]\d|2[0-3]):[0-5]\d$/, { error: () => say("a time of day written HH:MM") })
/** Stands in the head of a message: one line, whatever is pasted. */
const oneLine = (most: number) =>
  text(most).regex(/^[^\p{Cc}]*$/u, { error: () => say("one line without control characters") })

const messages = z.object({
  isOn: z.boolean({ error: () => say("true or false") }),
  sender: oneLine(100),
  from: z
    .email({ error: () => say("an e-mail address") })
    .max(254, { error: () => say("at most {most} characters", { most: 254 }) }),
  replyTo: z
    .email({ error: () => say("an e-mail address") })
    .max(254, { error: () => say("at most {most} characters", { most: 254 }) })
    .nullish(),
  telephone: oneLine(60),
  timeZone: z
    .string({ error: () => say("a time zone of the IANA list such as Europe/Dublin") })
    .refine(isTimeZone, { error: () => say("a time zone of the IANA list such as Europe/Dublin") }),
  quietFrom: clockTime,
  quietTo: clockTime,
  daysBefore: whole(1, 60),
})

/** An application entity title: 1 to 16 characters of the default repertoire, no backslash, no blank at the ends. */
const applicationTitle = z
  .string({ error: () => say("a title of 1 to 16 letters, digits, blanks, - or _") })
  .regex(/^(?! )[A-Za-z0-9 _.-]{1,16}(?<! )$/, {
    error: () => say("a title of 1 to 16 letters, digits, blanks, - or _"),
  })

const instruments = z.object({
  isOn: z.boolean({ error: () => say("true or false") }),
  port: whole(1, 65_535),
  title: applicationTitle,
  allowed: z
    .array(applicationTitle)
    .min(1, { error: () => say("at least one instrument") })
    .max(50, { error: () => say("at most {most} instruments", { most: 50 }) }),
})

const mapping = z.object({
  id: text(60),
  title: text(200),
  rowIs: oneOf(["visit", "eye"]),
  dateOrder: oneOf(DATE_ORDERS),
  decimalSign: oneOf([".", ","]),
  columns: z
    .array(z.object({ heading: text(200), field: text(60), unit: text(20).nullish() }))
    .max(200, { error: () => say("at most {most} columns", { most: 200 }) }),
})

/** The schema of each paper; a protocol is read by the engine's own `protocolProblems`. */
export const paperSchemas = {
  fees,
  wording,
  pharmacy,
  switches,
  contacts,
  letterhead,
  template,
  messages,
  instruments,
  mapping,
} as const

export const paperParams = z.object({
  kind: z.enum([
    "protocol",
    "fees",
    "wording",
    "pharmacy",
    "switches",
    "contacts",
    "letterhead",
    "template",
    "messages",
    "instruments",
    "mapping",
  ]),
})
export const paperBody = z.object({
  body: z.unknown().describe("The paper itself, by the shape of its kind"),
  supersedes: z.uuid({ error: () => say("the id of the paper it takes the place of") }).nullish(),
  reason: reasonField.nullish(),
  id: entryIdField,
})

const papers = z.array(z.looseObject({}))
/** The rules as answered: always sound, so they have the engine's own type. */
export const practiceRules = z
  .object({
    protocols: papers,
    feeSchedules: papers,
    consentWordings: papers,
    pharmacies: papers,
    examinationSwitches: z.record(z.string(), z.boolean()),
    contacts: z.looseObject({}),
    letterhead: z.looseObject({}).optional(),
    templates: papers,
    messages: z.looseObject({}).optional(),
    instruments: z.looseObject({}).optional(),
    mappings: papers.optional(),
  })
  .describe("What the practice has set, as it stands") as unknown as z.ZodType<PracticeRules>

export const rulesAnswer = z.object({
  rules: practiceRules,
  papers: z.array(
    z.object({
      id: z.string(),
      kind: z.string(),
      body: z.unknown(),
      author: z.string(),
      recordedAt: z.iso.datetime(),
      supersedes: z.string().nullable(),
      supersededBy: z.string().nullable(),
      reason: z.string().nullable(),
    }),
  ),
})

export type RulesAnswer = z.infer<typeof rulesAnswer>
export type PaperBody = z.input<typeof paperBody>
