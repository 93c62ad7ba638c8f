import { z } from "zod"
import { ANCESTRIES, type Visit } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { listQuery } from "./child.js"
import { visitFields } from "./course-pieces.js"
import { reasonField } from "./entry.js"
import { INBOX_STATES, INBOX_WHYS } from "./inbox-words.js"

export const INBOX_PAGE_SIZE = 50

const day = z.iso.date()
/** As the reader of the file gave it. */
const visit = visitFields as unknown as z.ZodType<Visit>
const uuid = z.uuid({ error: () => say("a UUID") }).toLowerCase()
const identity = z.object({
  number: z.string().optional(),
  name: z.string().optional(),
  born: z.string().optional(),
  sex: z.enum(["female", "male"]).optional(),
})
const child = z.object({ id: z.string(), name: z.string() })
const parents = z.literal([0, 1, 2], { error: () => say("0, 1 or 2") })

const row = {
  id: z.string(),
  file: z.string(),
  sentBy: z.string().describe("The instrument or the person it came from"),
  receivedAt: z.iso.datetime(),
  state: z.enum(INBOX_STATES),
  why: z.enum(INBOX_WHYS).nullable().describe("Why it waits"),
  whyInWords: z.string().nullable(),
  identity: identity.describe("Who the file says that it is about"),
  day: day.nullable().describe("The latest day it speaks of"),
  holds: z.string().describe("What it holds, in words"),
  child: child.nullable().describe("The child it was put under"),
}

export const inboxQuery = z.object({
  state: z
    .enum(INBOX_STATES, { error: () => say("one of {list}", { list: INBOX_STATES.join(", ") }) })
    .optional(),
  ...listQuery.shape,
})
const counts = z.object({ waiting: z.int(), taken: z.int(), "set-aside": z.int() })
export const inboxCountsAnswer = z.object({ counts })
export const inboxAnswer = z.object({
  counts,
  total: z.int(),
  page: z.int(),
  pageSize: z.int(),
  items: z.array(z.object(row)),
})

export const inboxItemParams = z.object({ itemId: uuid })
export const inboxItemQuery = z.object({
  child: uuid.optional().describe("The child it is compared with; the one it is under when absent"),
})
const problem = z.object({
  path: z.string(),
  value: z.unknown(),
  allowed: z.string(),
  message: z.string(),
})
export const inboxItemAnswer = z
  .object({
    ...row,
    reason: z.string().nullable(),
    alike: z.int().describe("How many others wait that name exactly this child, and would follow"),
    notes: z.array(z.object({ kind: z.string(), path: z.string(), why: z.string() })),
    device: z.string().nullable(),
    childToo: z
      .object({ ancestry: z.enum(ANCESTRIES).optional(), myopicParents: parents.optional() })
      .describe("What the file says of the child beyond who it is"),
    visits: z.array(visit).describe("What the file holds"),
    documents: z.array(z.object({ date: day, title: z.string(), file: z.string() })),
    others: z
      .array(z.object({ kind: z.string(), body: z.unknown() }))
      .describe("Treatments, consents and the like, as entries"),
    candidates: z.array(
      z.object({
        id: z.string(),
        name: z.string(),
        number: z.string().nullable(),
        born: day,
        sex: z.enum(["female", "male"]),
        why: z.string(),
      }),
    ),
    compared: z
      .object({
        child: z.object({ id: z.string(), name: z.string(), number: z.string().nullable(), born: day }),
        visits: z.array(
          z.object({
            date: day,
            recorded: visit.nullable(),
            offered: visit,
            added: z.array(z.string()),
            contradictions: z.array(
              z.object({ path: z.string(), recorded: z.unknown(), offered: z.unknown() }),
            ),
          }),
        ),
        others: z.array(z.object({ kind: z.string(), body: z.unknown() })).describe("Not recorded yet"),
        problems: z.array(problem),
        entries: z.int().describe("How many entries would be recorded"),
      })
      .nullable(),
    undo: z
      .array(z.object({ text: z.string(), blocks: z.boolean() }))
      .describe("What taking it back would do, line by line"),
    events: z.array(
      z.object({
        state: z.enum(INBOX_STATES),
        at: z.iso.datetime(),
        by: z.string().nullable(),
        why: z.string().nullable(),
        reason: z.string().nullable(),
      }),
    ),
  })
  .meta({ id: "InboxItem" })

const text = (most: number) =>
  z
    .string()
    .trim()
    .max(most, { error: () => say("at most {most} characters", { most }) })
export const takeInboxBody = z
  .object({
    child: uuid.nullish().describe("The child it is put under"),
    newChild: z
      .object({
        name: text(200),
        number: text(40).nullish(),
        born: z.string(),
        sex: z.enum(["female", "male"], { error: () => say("female or male") }),
        ancestry: z
          .enum(ANCESTRIES, { error: () => say("one of {list}", { list: ANCESTRIES.join(", ") }) })
          .nullish(),
        myopicParents: parents.nullish(),
      })
      .nullish()
      .describe("Or a child that is made for it"),
    settle: z
      .enum(["keep", "correct"], { error: () => say("keep or correct") })
      .nullish()
      .describe("What happens where figures are recorded otherwise"),
    reason: reasonField.nullish(),
  })
  .refine(({ child: known, newChild }) => Boolean(known) !== Boolean(newChild), {
    error: () => say("a child of this practice, or a new one"),
  })
export const setAsideInboxBody = z.object({ reason: reasonField })
export const undoInboxBody = z.object({ reason: reasonField.nullish() })

export const inboxFilesQuery = z.object({
  file: z
    .string({ error: () => say("the name of the file") })
    .min(1, { error: () => say("the name of the file") })
    .max(500, { error: () => say("at most {most} characters", { most: 500 }) })
    .describe("Its name, with the folder it was in"),
})
export const takenAnswer = z.object({
  taken: z.array(
    z.object({
      file: z.string(),
      outcome: z.enum(["recorded", "known", "waiting", "skipped"]),
      why: z.string().optional(),
      child: z.string().optional(),
      inboxId: z.string().optional(),
    }),
  ),
})

/** What instruments and files sent, waiting for a person, and files dropped on the page. */
export const inboxApi = {
  inbox: { method: "GET", url: "/api/inbox", query: inboxQuery, answer: inboxAnswer },
  inboxCounts: { method: "GET", url: "/api/inbox/counts", answer: inboxCountsAnswer },
  /** The body is the file itself, as application/octet-stream. What of it is certain is recorded at once. */
  inboxFiles: { method: "POST", url: "/api/inbox/files", query: inboxFilesQuery, answer: takenAnswer },
  inboxItem: {
    method: "GET",
    url: "/api/inbox/:itemId",
    params: inboxItemParams,
    query: inboxItemQuery,
    answer: inboxItemAnswer,
  },
  /** The bytes as they were received. */
  inboxItemFile: { method: "GET", url: "/api/inbox/:itemId/file", params: inboxItemParams },
  takeInboxItem: {
    method: "POST",
    url: "/api/inbox/:itemId/take",
    params: inboxItemParams,
    body: takeInboxBody,
    answer: inboxItemAnswer,
  },
  setAsideInboxItem: {
    method: "POST",
    url: "/api/inbox/:itemId/set-aside",
    params: inboxItemParams,
    body: setAsideInboxBody,
    answer: inboxItemAnswer,
  },
  /** Takes back what was recorded of it, or what was set aside: it waits again. */
  undoInboxItem: {
    method: "POST",
    url: "/api/inbox/:itemId/undo",
    params: inboxItemParams,
    body: undoInboxBody,
    answer: inboxItemAnswer,
  },
} as const

export type InboxCountsAnswer = z.infer<typeof inboxCountsAnswer>
export type InboxAnswer = z.infer<typeof inboxAnswer>
export type InboxRow = InboxAnswer["items"][number]
export type InboxItemAnswer = z.infer<typeof inboxItemAnswer>
export type TakeInboxBody = z.input<typeof takeInboxBody>
export type TakenAnswer = z.infer<typeof takenAnswer>
