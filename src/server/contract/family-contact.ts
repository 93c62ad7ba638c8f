import { z } from "zod"
import { MESSAGE_TOPICS, REACHED_BY } from "../../engine/messages/family-contact.js"
import { LANGUAGES, say } from "../../engine/say.js"
import { entryIdField, reasonField } from "./entry.js"

const oneOf = <const T extends readonly [string, ...string[]]>(values: T) =>
  z.enum(values, { error: () => say("one of {list}", { list: values.join(", ") }) })
const line = (most: number) =>
  z
    .string({ error: () => say("text") })
    .trim()
    .min(1, { error: () => say("text that is not empty") })
    .max(most, { error: () => say("at most {most} characters", { most }) })
    // Names and addresses stand in the head of a message, where a line of its own would be another header.
    .regex(/^[^\p{Cc}]*$/u, { error: () => say("one line without control characters") })
const day = z.iso.date({ error: () => say("a day of the calendar written YYYY-MM-DD") })

const agreement = z
  .object({
    on: day,
    to: z.array(oneOf(MESSAGE_TOPICS)).min(1, { error: () => say("at least one kind of message") }),
    until: day.nullish().transform((until) => until ?? undefined),
  })
  .refine(({ on, until }) => until === undefined || until >= on, {
    error: () => say("a day not before the agreement"),
    path: ["until"],
  })

const optional = <T extends z.ZodType>(schema: T) => schema.nullish().transform((value) => value ?? undefined)

/** Whom the practice speaks with about a child. What a way of reaching a family needs must be there. */
export const familyContactFields = z
  .object({
    name: line(200),
    relation: line(60),
    language: oneOf(LANGUAGES),
    email: optional(
      z
        .email({ error: () => say("an e-mail address") })
        .max(254, { error: () => say("at most {most} characters", { most: 254 }) }),
    ),
    telephone: optional(
      z.string({ error: () => say("a telephone number") }).regex(/^\+?[\d ()./-]{4,40}$/, {
        error: () => say("a telephone number of digits, blanks and + ( ) . / -"),
      }),
    ),
    address: optional(
      z
        .string({ error: () => say("text") })
        .trim()
        .min(1, { error: () => say("text that is not empty") })
        .max(500, { error: () => say("at most {most} characters", { most: 500 }) }),
    ),
    reachedBy: oneOf(REACHED_BY),
    childCalled: optional(line(60)),
    agreed: optional(agreement),
  })
  .superRefine((contact, { addIssue }) => {
    const { reachedBy, email, telephone, address, agreed } = contact
    const needed = { email, sms: telephone, post: address, none: "" }[reachedBy]
    const fault = (path: string, message: string) => addIssue({ code: "custom", path: [path], message })
    if (needed === undefined && reachedBy === "email")
      fault("email", say("an e-mail address, since the family is reached by e-mail"))
    if (needed === undefined && reachedBy === "sms")
      fault("telephone", say("a telephone number, since the family is reached by SMS"))
    if (needed === undefined && reachedBy === "post")
      fault("address", say("a postal address, since the family is reached by post"))
    if (reachedBy === "none" && agreed && agreed.until === undefined)
      fault("reachedBy", say("a way of reaching the family, since it agreed to messages"))
  })

/** Supersedes the contact that is there, which it must name: nobody overwrites what somebody else has just put right. */
export const familyContactBody = z.object({
  contact: familyContactFields,
  supersedes: z.uuid({ error: () => say("the id of the contact it takes the place of") }).nullish(),
  reason: reasonField.nullish(),
  id: entryIdField,
})

export type FamilyContactBody = z.input<typeof familyContactBody>
