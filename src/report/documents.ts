import { inLanguage } from "../engine/say.js"
import type { DocumentContent, DocumentKind, DocumentRefused, PaperDocument } from "./document.js"
import type { DocumentInput } from "./document-input.js"
import { adverseEventReport } from "./documents/adverse-event-report.js"
import { compoundingOrderPaper } from "./documents/compounding-order-paper.js"
import { consentPaper } from "./documents/consent-paper.js"
import { costEstimate } from "./documents/cost-estimate.js"
import { doctorLetter } from "./documents/doctor-letter.js"
import { familyReport } from "./documents/family-report.js"
import { fullRecord } from "./documents/full-record.js"
import { travelNote } from "./documents/travel-note.js"
import { inOrder } from "./template/in-order.js"

type MakeContent = (input: DocumentInput) => DocumentContent | DocumentRefused

const CONTENT: Readonly<Record<DocumentKind, MakeContent>> = {
  family: (input) => familyReport(input, { on: input.readOn }),
  consent: consentPaper,
  order: compoundingOrderPaper,
  letter: doctorLetter,
  estimate: costEstimate,
  travel: travelNote,
  "adverse-event": adverseEventReport,
  record: fullRecord,
}

/** What a document consists of, in the language in force. */
export const contentOf = (kind: DocumentKind, input: DocumentInput): DocumentContent | DocumentRefused =>
  CONTENT[kind](input)

/** A document of a child, in the language asked for and in the order of the practice's template. */
export function documentOf(kind: DocumentKind, input: DocumentInput): PaperDocument | DocumentRefused {
  const { language, today: date, letterhead, template } = input
  return inLanguage(language, () => {
    const content = contentOf(kind, input)
    if ("kind" in content) return content
    const blocks = inOrder(content, template)
    return { kind, title: content.title, language, date, letterhead, blocks, foot: content.foot }
  })
}
