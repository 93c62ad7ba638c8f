import { inLanguage, type Language } from "../engine/say.js"
import type { PaperDocument, PaperSize } from "../report/document.js"
import { type Pdf, type PdfRefused, pdfOf } from "../report/pdf/pdf.js"
import { learnEveryLanguage } from "../words/index.js"

/** What the process of the typesetter is asked. */
export interface SetRequest {
  readonly id: number
  readonly documents: readonly PaperDocument[]
  readonly paper: PaperSize
  readonly title: string | undefined
  /** Of whoever reads a refusal. */
  readonly language: Language
}

export type SetAnswer = { readonly id: number } & (
  | { readonly result: Pdf | PdfRefused }
  | { readonly failure: string }
)

learnEveryLanguage()
process.on("message", (request: SetRequest) => process.send?.(answerTo(request)))
// Without the server there is nobody to set anything for.
process.on("disconnect", () => process.exit())

function answerTo({ id, documents, paper, title, language }: SetRequest): SetAnswer {
  try {
    return { id, result: inLanguage(language, () => pdfOf(documents, paper, { title })) }
  } catch (cause) {
    return { id, failure: cause instanceof Error ? (cause.stack ?? cause.message) : String(cause) }
  }
}
