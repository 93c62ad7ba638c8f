import { useEffect, useRef, useState } from "react"
import { LANGUAGE_NAMES, LANGUAGES, type Language, say } from "../../engine/say.js"
import type { ShownDocument } from "../../server/contract/documents.js"
import { failureInWords } from "../client.js"
import { DocumentView } from "../papers/document-view.js"
import { type FetchedFile, fetchedFile } from "./fetched-file.js"
import { useNarrow } from "./use-narrow.js"

interface FamilyDocumentProps {
  readonly document: ShownDocument
  readonly fault: string | null
  readonly onLanguage: (language: Language) => void
  /** Where the same comes as a PDF. */
  readonly pdf: FetchedFile
  /** Where its dates come as a calendar. */
  readonly calendar: FetchedFile
}

/** The family's document as a page: large, calm, and nothing around it but its languages and the way to paper. */
export function FamilyDocument({ document: paper, fault, onLanguage, pdf, calendar }: FamilyDocumentProps) {
  const isNarrow = useNarrow()
  const [fileFault, setFileFault] = useState<string | null>(null)
  const place = useRef<HTMLElement>(null)
  useEffect(() => place.current?.focus(), [])
  const download = async (file: FetchedFile) => {
    try {
      setFileFault(null)
      await fetchedFile(file)
    } catch (error) {
      setFileFault(failureInWords(error))
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
        <button type="button" className="link" onClick={() => download(pdf)}>
          {say("Save as PDF")}
        </button>
        <button type="button" className="link" onClick={() => download(calendar)}>
          {say("Dates for the calendar")}
        </button>
      </nav>
      <div role="alert">{(fault ?? fileFault) && <p className="form-fault">{fault ?? fileFault}</p>}</div>
      <DocumentView document={paper} size="large" />
    </main>
  )
}
