import { useEffect, useRef, useState } from "react"
import { LANGUAGE_NAMES, LANGUAGES, type Language, say } from "../../engine/say.js"
import type { ShownDocument } from "../../server/contract/documents.js"
import { failureInWords } from "../client.js"
import { DocumentView } from "../papers/document-view.js"
import { fetchedPdf } from "./fetched-pdf.js"
import { useNarrow } from "./use-narrow.js"

interface FamilyDocumentProps {
  readonly document: ShownDocument
  readonly fault: string | null
  readonly onLanguage: (language: Language) => void
  /** Where the same comes as a PDF, and what is sent to get it. */
  readonly pdf: { readonly url: string; readonly body: object }
}

/** The family's document as a page: large, calm, and nothing around it but its languages and the way to paper. */
export function FamilyDocument({ document: paper, fault, onLanguage, pdf }: FamilyDocumentProps) {
  const isNarrow = useNarrow()
  const [pdfFault, setPdfFault] = useState<string | null>(null)
  const place = useRef<HTMLElement>(null)
  useEffect(() => place.current?.focus(), [])
  const download = async () => {
    try {
      setPdfFault(null)
      await fetchedPdf(pdf)
    } catch (error) {
      setPdfFault(failureInWords(error))
    }
  }
  return (
    <main
      ref={place}
      tabIndex={-1}
      className={isNarrow ? "family-page family-narrow" : "family-page"}
      lang={paper.language}
    >
      <nav className="family-languages" aria-label={say("Language")}>
        {LANGUAGES.map((each) => (
          <button
            key={each}
            type="button"
            className="link"
            lang={each}
            aria-pressed={each === paper.language}
            onClick={() => onLanguage(each)}
          >
            {LANGUAGE_NAMES[each]}
          </button>
        ))}
        <button type="button" className="link" onClick={() => window.print()}>
          {say("Print")}
        </button>
        <button type="button" className="link" onClick={download}>
          {say("Save as PDF")}
        </button>
      </nav>
      <div role="alert">{(fault ?? pdfFault) && <p className="form-fault">{fault ?? pdfFault}</p>}</div>
      <DocumentView document={paper} size="large" />
    </main>
  )
}
