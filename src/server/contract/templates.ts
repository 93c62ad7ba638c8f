import { z } from "zod"
import { LANGUAGES, say } from "../../engine/say.js"
import { DOCUMENT_KINDS, type DocumentKind } from "../../report/document.js"
import type { ShownDocument } from "./documents.js"

/** A template that is not recorded yet, to be looked at with a child's figures. */
export const templateTrialBody = z.object({
  document: z.enum(DOCUMENT_KINDS),
  language: z.enum(LANGUAGES),
  text: z
    .string({ error: () => say("text") })
    .max(20_000, { error: () => say("at most {most} characters", { most: 20000 }) }),
  child: z.string({ error: () => say("the id of a child") }).max(60),
})

export const templateTrialAnswer = z.object({
  problems: z.array(z.object({ line: z.int(), message: z.string() })),
  /** Null while the template has a fault, or the child has no such document. */
  document: z.unknown() as z.ZodType<ShownDocument | null>,
  /** Why there is no document though the template is sound. */
  refused: z.string().nullable(),
})

export const templateNamesAnswer = z.object({
  documents: z.array(
    z.object({
      document: z.enum(DOCUMENT_KINDS),
      parts: z.array(z.string()),
      required: z.array(z.string()),
      values: z.array(z.string()),
    }),
  ),
})

export type TemplateTrialBody = z.input<typeof templateTrialBody>
export type TemplateTrialAnswer = z.infer<typeof templateTrialAnswer>
export type TemplateNamesAnswer = z.infer<typeof templateNamesAnswer>
export type { DocumentKind }
