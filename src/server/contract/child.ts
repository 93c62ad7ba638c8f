import { z } from "zod"
import { say } from "../../engine/say.js"
import { childFields, courseAnswer } from "./course-pieces.js"
import { entryIdField, reasonField } from "./entry.js"

const name = z
  .string({ error: () => say("the child's name") })
  .trim()
  .min(1, { error: () => say("the child's name") })
  .max(200, { error: () => say("at most {most} characters", { most: 200 }) })
const number = z
  .string({ error: () => say("text") })
  .trim()
  .min(1, { error: () => say("a number, or nothing") })
  .max(40, { error: () => say("at most {most} characters", { most: 40 }) })
  .nullish()
  .describe("The practice's own number for the child")

const namedChild = childFields.omit({ id: true }).extend({ name, number })

/** `id` may be given so that a request can be repeated safely. */
export const newChildBody = namedChild.extend({ id: entryIdField })
export const childCorrectionBody = z.object({ child: namedChild, reason: reasonField })

const day = z.iso.date()
const entryKind = z.enum([
  "child",
  "visit",
  "treatment",
  "consent",
  "supply",
  "missed-nights",
  "decision",
  "concern",
  "order",
  "explanation",
  "payment",
  "family",
  "document",
  "withdrawal",
])
export type ChildEntryKind = z.infer<typeof entryKind>

export const childView = z
  .object({
    child: z.object({
      id: z.string(),
      name: z.string(),
      number: z.string().nullable(),
      born: day,
      sex: z.enum(["female", "male"]),
    }),
    course: courseAnswer,
    entries: z.array(
      z.object({
        id: z.string(),
        kind: entryKind,
        body: z.unknown().describe("What the entry says, in the fields of the course file"),
        date: day.nullable().describe("The day the entry is about"),
        author: z.string(),
        recordedAt: z.iso.datetime(),
        supersedes: z.string().nullable(),
        supersededBy: z.string().nullable(),
        reason: z.string().nullable(),
      }),
    ),
  })
  .meta({ id: "Child" })

export const PAGE_SIZE = 50

export const listQuery = z.object({
  search: z
    .string()
    .max(200, { error: () => say("at most {most} characters", { most: 200 }) })
    .default(""),
  page: z.coerce
    .number({ error: () => say("a page number from 1") })
    .pipe(z.int().min(1).max(100_000))
    .default(1),
})

/** What the engine says of a child in one line. */
const childSummary = z.object({
  ageYears: z.number(),
  growth: z.object({
    state: z.enum(["near-normal", "slowed-growth", "as-untreated", "faster", "unclear"]),
    mmPerYear: z.number().nullable(),
  }),
  finding: z.object({ state: z.enum(["slowed", "not-slowed", "cannot-tell-yet", "no-treatment"]) }),
  nextDuty: z
    .object({ step: z.string(), due: day, state: z.enum(["open", "overdue", "upcoming"]) })
    .nullable(),
  treatment: z.string().nullable().describe("The treatment in use, in words"),
})

const childRow = z.object({
  id: z.string(),
  name: z.string(),
  number: z.string().nullable(),
  born: day,
  sex: z.enum(["female", "male"]),
  lastVisit: day.nullable(),
  ...childSummary.shape,
})

export const childList = z.object({
  total: z.int(),
  page: z.int(),
  pageSize: z.int(),
  children: z.array(childRow),
})

export type NewChildBody = z.input<typeof newChildBody>
export type ChildView = z.infer<typeof childView>
export type ChildSummary = z.infer<typeof childSummary>
export type ChildRow = z.infer<typeof childRow>
export type ChildList = z.infer<typeof childList>
