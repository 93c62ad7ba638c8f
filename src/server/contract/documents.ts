import { z } from "zod"
import { TREATMENT_KINDS } from "../../engine/course.js"
import { LANGUAGES, say } from "../../engine/say.js"
import {
  type Block,
  DOCUMENT_KINDS,
  type DocumentKind,
  PAPERS,
  type PaperDocument,
  type PaperSize,
} from "../../report/document.js"
import { READ_ON } from "../../report/document-input.js"

/** A document as a page shows it: the picture of its letterhead is an address of the kind "data:". */
export interface ShownDocument extends Omit<PaperDocument, "letterhead"> {
  readonly letterhead: {
    readonly practice: string
    readonly lines: readonly string[]
    readonly logo?: string | undefined
  }
  /** What stands over the lines to be signed: name, signature, date, in the paper's language. */
  readonly signatureHead?: readonly string[] | undefined
}

const oneOf = <const T extends readonly [string, ...string[]]>(values: T) =>
  z.enum(values, { error: () => say("one of {list}", { list: values.join(", ") }) })
const place = z.coerce
  .number({ error: () => say("a whole number from 0") })
  .pipe(
    z
      .int({ error: () => say("a whole number from 0") })
      .min(0, { error: () => say("a whole number from 0") }),
  )

const language = oneOf(LANGUAGES).optional()
const paper = oneOf(PAPERS).default("a4")

export const documentParams = z.object({
  id: z.uuid({ error: () => say("a UUID") }).toLowerCase(),
  kind: oneOf(DOCUMENT_KINDS),
})

export const documentQuery = z
  .object({
    language: language.describe(
      "When left out, of a document that families read the family's, of others the reader's",
    ),
    paper,
    on: oneOf(READ_ON)
      .default("paper")
      .describe("What it is read on; a report for families holds more on a screen"),
    as: oneOf(["content", "pdf"]).default("content"),
    treatment: oneOf(TREATMENT_KINDS)
      .optional()
      .describe("For a consent or an estimate; the one in use or planned when left out"),
    concentration: z.coerce
      .number({ error: () => say("a strength above 0 and up to 1.5 % w/v") })
      .gt(0, { error: () => say("a strength above 0 and up to 1.5 % w/v") })
      .max(1.5, { error: () => say("a strength above 0 and up to 1.5 % w/v") })
      .optional(),
    months: z.coerce
      .number({ error: () => say("a whole number from 1 to 120") })
      .pipe(
        z
          .int({ error: () => say("a whole number from 1 to 120") })
          .min(1, { error: () => say("a whole number from 1 to 120") })
          .max(120, { error: () => say("a whole number from 1 to 120") }),
      )
      .optional(),
    order: place.optional().describe("Which of the child's orders, from 0; the latest when left out"),
    concern: place.optional().describe("Which of the child's concerns, from 0; the latest when left out"),
  })
  .refine(({ treatment, concentration }) => concentration === undefined || treatment === "atropine", {
    path: ["concentration"],
    error: () => say("absent: only atropine has a strength"),
  })
  .refine(({ treatment, concentration }) => treatment !== "atropine" || concentration !== undefined, {
    path: ["concentration"],
    error: () => say("the strength of the drops, % w/v"),
  })

/** Either the content as JSON, or with as=pdf the bytes of a PDF. */
export const documentAnswer = z.union([
  z.looseObject({ kind: z.enum(DOCUMENT_KINDS), title: z.string(), blocks: z.array(z.looseObject({})) }),
  z.string().meta({ format: "binary" }),
]) as unknown as z.ZodType<ShownDocument | Uint8Array>

export const MOST_IN_A_BATCH = 200

export const batchBody = z.object({
  children: z
    .array(z.uuid({ error: () => say("a UUID") }).toLowerCase(), {
      error: () => say("a list of the children's ids"),
    })
    .min(1, { error: () => say("at least one child") })
    .max(MOST_IN_A_BATCH, { error: () => say("at most {most} children", { most: MOST_IN_A_BATCH }) })
    .refine((ids) => new Set(ids).size === ids.length, { error: () => say("each child once") }),
  kind: oneOf(DOCUMENT_KINDS),
  language: language.describe("For all of them; when left out each in its own family's, or English"),
  paper,
})

export type { Block, DocumentKind, PaperSize }
