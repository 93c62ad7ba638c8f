import { z } from "zod"
import { DATE_ORDERS } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"
import { listQuery } from "./child.js"
import { paperSchemas } from "./rules.js"

/** The largest table one import may be. */
export const LARGEST_TABLE_BYTES = 200_000_000

export const IMPORTS_PAGE = 20

const uuid = z.uuid({ error: () => say("a UUID") }).toLowerCase()
export const importParams = z.object({ id: uuid })

export const newImportQuery = z.object({
  name: z
    .string({ error: () => say("the name of the file") })
    .trim()
    .min(1, { error: () => say("the name of the file") })
    .max(200, { error: () => say("at most {most} characters", { most: 200 }) })
    .describe("Name of the file; its bytes are the body, as application/octet-stream"),
})

export const importsQuery = listQuery

const QUESTION_KINDS = [
  "date-order",
  "decimal-sign",
  "date-column",
  "child-column",
  "eye-column",
  "unit",
  "treatment-start",
] as const

export const mappingBody = z.object({
  mapping: paperSchemas.mapping,
  settled: z
    .array(z.enum(QUESTION_KINDS, { error: () => say("one of {list}", { list: QUESTION_KINDS.join(", ") }) }))
    .default([])
    .describe("Questions that a person has answered"),
})

/** As many as a page lists. */
const MOST_DECISIONS = 500
const decision = z.object({
  group: z.int({ error: () => say("a whole number from {low} to {high}", { low: 1, high: 1_000_000_000 }) }),
  as: z
    .union([z.literal("new"), z.literal("leave"), z.object({ child: uuid })], {
      error: () => say("a child that was suggested, another child, or left out"),
    })
    .describe("Whose the rows are"),
})
export const settleBody = z.object({
  decisions: z
    .array(decision)
    .min(1, { error: () => say("at least one decision") })
    .max(MOST_DECISIONS, { error: () => say("at most {most} decisions", { most: MOST_DECISIONS }) }),
})

const question = z.object({
  kind: z.enum(QUESTION_KINDS),
  headings: z.array(z.string()).describe("The columns it is about"),
  choices: z.array(z.string()).describe("What may be answered; empty when a column has to be chosen"),
  why: z.string().describe("The question in words"),
})
export const questionsAnswer = z.object({ questions: z.array(question) })

const problem = z.object({
  line: z.int().nullable(),
  heading: z.string().describe("The column, or whose rows they are"),
  value: z.string(),
  why: z.string(),
})

const whoState = z.enum(["same", "new", "near", "refused", "left"])

const nearMatch = z.object({
  group: z.int(),
  line: z.int().describe("Its first line"),
  rows: z.int(),
  identity: z.object({
    number: z.string().optional(),
    name: z.string().optional(),
    born: z.string().optional(),
    sex: z.string().optional(),
  }),
  candidates: z.array(
    z.object({
      child: z.object({
        id: z.string(),
        name: z.string(),
        number: z.string().nullable(),
        born: z.string(),
        sex: z.string(),
      }),
      why: z.string().describe("What speaks for and against it"),
      isRecorded: z.boolean().describe("Whether it is a child of the practice, or one of the same file"),
    }),
  ),
  mayBeNew: z.boolean(),
})

const check = z.object({
  rows: z.int(),
  children: z.int(),
  childrenNew: z.int(),
  childrenChanged: z.int(),
  visitsNew: z.int(),
  visitsAddedTo: z.int(),
  glasses: z.int().describe("Of the new visits those that are earlier glasses"),
  treatments: z.int(),
  who: z.array(z.object({ state: whoState, groups: z.int(), rows: z.int() })),
  problems: z.object({ listed: z.array(problem), count: z.int() }),
  near: z.array(nearMatch),
  nearCount: z.int(),
  preview: z.array(
    z.object({
      line: z.int(),
      who: z.string(),
      state: whoState,
      visits: z.array(z.looseObject({ date: z.string() })),
    }),
  ),
  fault: z.string().nullable().describe("Why the file can't be read to its end; nothing is then recorded"),
})

const counts = z.object({
  rows: z.int(),
  childrenNew: z.int(),
  childrenKnown: z.int(),
  visitsNew: z.int(),
  visitsAddedTo: z.int(),
  treatments: z.int(),
  skipped: z.int(),
})

const takeBack = z.object({
  children: z.int(),
  childrenGone: z.int(),
  entriesWithdrawn: z.int(),
  visitsRestored: z.int(),
  left: z.array(z.string()).describe("Names of children a person recorded more of since: left as they are"),
})
export const takeBackAnswer = takeBack.meta({ id: "ImportUndone" })

export const WORK_STATES = [
  "chosen",
  "checking",
  "checked",
  "recording",
  "taking-back",
  "done",
  "cancelled",
  "undone",
  "failed",
] as const

const field = z.object({
  id: z.string(),
  title: z.string(),
  group: z.string(),
  perEye: z.boolean(),
  forBoth: z.boolean(),
  unit: z.string().nullable(),
  alternatives: z.array(z.string()),
})

export const importAtWork = z
  .object({
    id: z.string(),
    file: z.string(),
    bytes: z.int(),
    by: z.string().describe("Name of the person"),
    state: z.enum(WORK_STATES),
    progress: z.object({ done: z.number(), total: z.number() }).nullable(),
    table: z
      .object({
        headings: z.array(z.string()),
        hasHeadings: z.boolean(),
        firstRows: z.array(z.array(z.string())),
        dateOrders: z.array(
          z.object({
            heading: z.string(),
            orders: z.array(z.enum(DATE_ORDERS)),
            example: z
              .object({
                text: z.string(),
                days: z.array(z.object({ order: z.enum(DATE_ORDERS), date: z.string() })),
              })
              .nullable()
              .describe("A day of the column that is another one in each order"),
          }),
        ),
        notes: z.array(z.string()),
        fault: z.string().nullable(),
      })
      .nullable()
      .describe("The file's first rows; null while an earlier import is taken back"),
    fields: z.array(field).describe("What a column can be read into"),
    mapping: paperSchemas.mapping.nullable().describe("Guessed, or of a saved one whose columns agree"),
    savedMapping: z.string().nullable().describe("Title of the saved mapping it is"),
    questions: z.array(question),
    check: check.nullable(),
    recorded: z.string().nullable().describe("Id of the import, once it is recorded"),
    counts: counts.nullable(),
    undone: takeBack.nullable(),
    failure: z.string().nullable(),
  })
  .meta({ id: "ImportAtWork" })

const recordedImport = z.object({
  id: z.string(),
  file: z.string(),
  by: z.string(),
  startedAt: z.iso.datetime(),
  changedAt: z.iso.datetime(),
  state: z.enum(["running", "done", "cancelled", "undone", "interrupted"]),
  counts,
  leftChildren: z.array(z.string()),
})

export const importsAnswer = z
  .object({
    total: z.int(),
    page: z.int(),
    pageSize: z.int(),
    imports: z.array(recordedImport),
    atWork: importAtWork.nullable().describe("The one that somebody is at; there is never a second"),
  })
  .meta({ id: "Imports" })

export type ImportAtWork = z.infer<typeof importAtWork>
export type ImportsAnswer = z.infer<typeof importsAnswer>
export type ImportedRow = z.infer<typeof recordedImport>
export type ImportCheck = z.infer<typeof check>
export type ImportQuestion = z.infer<typeof question>
export type ImportField = z.infer<typeof field>
export type TakeBackAnswer = z.infer<typeof takeBack>
export type MappingBody = z.input<typeof mappingBody>
export type SettleBody = z.input<typeof settleBody>

/** Tables of other programs, read into the record as one step that can be taken back. */
export const importsApi = {
  imports: { method: "GET", url: "/api/imports", query: importsQuery, answer: importsAnswer },
  /** The body is the file itself, as application/octet-stream. */
  newImport: { method: "POST", url: "/api/imports", query: newImportQuery, answer: importAtWork },
  importAtWork: { method: "GET", url: "/api/imports/:id", params: importParams, answer: importAtWork },
  /** What is open before the file can be read by this mapping. */
  importQuestions: {
    method: "POST",
    url: "/api/imports/:id/questions",
    params: importParams,
    body: mappingBody,
    answer: questionsAnswer,
  },
  /** Reads the whole file; how far it is, GET tells. Nothing is recorded. */
  checkImport: {
    method: "POST",
    url: "/api/imports/:id/check",
    params: importParams,
    body: mappingBody,
    answer: importAtWork,
  },
  settleImport: {
    method: "POST",
    url: "/api/imports/:id/settle",
    params: importParams,
    body: settleBody,
    answer: importAtWork,
  },
  /** Records what is sound, as one step. */
  runImport: { method: "POST", url: "/api/imports/:id/run", params: importParams, answer: importAtWork },
  /** Stops what is under way; what was recorded so far is taken back. */
  cancelImport: {
    method: "POST",
    url: "/api/imports/:id/cancel",
    params: importParams,
    answer: importAtWork,
  },
  /** Forgets the file that somebody is at. */
  discardImport: { method: "DELETE", url: "/api/imports/:id", params: importParams },
  /** What taking it back would do. */
  importUndoing: {
    method: "GET",
    url: "/api/imports/:id/undo",
    params: importParams,
    answer: takeBackAnswer,
  },
  undoImport: { method: "POST", url: "/api/imports/:id/undo", params: importParams, answer: importAtWork },
  /** What is not taken and why, as a table to download: RFC 4180, UTF-8. */
  importProblems: { method: "GET", url: "/api/imports/:id/problems", params: importParams },
} as const
