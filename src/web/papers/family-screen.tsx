import "../family/family.css"
import { useMutation } from "@tanstack/react-query"
import { useNavigate } from "@tanstack/react-router"
import { useEffect, useState } from "react"
import { LANGUAGE_NAMES, LANGUAGES, type Language, say } from "../../engine/say.js"
import { failureInWords } from "../client.js"
import { useNarrow } from "../family/use-narrow.js"
import { Waiting } from "../parts/waiting.js"
import { DocumentView } from "./document-view.js"
import type { PaperChoice } from "./paper-address.js"
import { downloadPaper, usePaper } from "./use-paper.js"

/** The family's report for a screen turned round: large, and nothing of the practice's pages around it. */
export function FamilyScreen({ childId }: { readonly childId: string }) {
  const [language, setLanguage] = useState<Language | null>(null)
  const isNarrow = useNarrow()
  const choice: PaperChoice = { kind: "family", language, paper: "a4", on: isNarrow ? "phone" : "screen" }
  const paper = usePaper(childId, choice, "")
  const download = useMutation({ mutationFn: () => downloadPaper(childId, choice, paper.data?.date ?? "") })
  const navigate = useNavigate()
  const leave = () => navigate({ to: "/children/$childId/$part", params: { childId, part: "papers" } })
  useLeaveByEscape(leave)
  const fault = paper.error ?? download.error
  return (
    <main className={isNarrow ? "family-page family-narrow" : "family-page"}>
      <nav className="family-languages" aria-label={say("Language")}>
        {LANGUAGES.map((each) => (
          <button
            key={each}
            type="button"
            className="link"
            lang={each}
            aria-pressed={each === paper.data?.language}
            onClick={() => setLanguage(each)}
          >
            {LANGUAGE_NAMES[each]}
          </button>
        ))}
        <button type="button" className="link" onClick={() => window.print()}>
          {say("Print")}
        </button>
        <button type="button" className="link" disabled={!paper.data} onClick={() => download.mutate()}>
          {say("Save as PDF")}
        </button>
        <button type="button" className="link" onClick={leave}>
          {say("Close")}
        </button>
      </nav>
      <div role="alert">{fault && <p className="form-fault">{failureInWords(fault)}</p>}</div>
      {paper.isPending && <Waiting for={say("the paper")} />}
      {paper.data && !paper.isError && <DocumentView document={paper.data} size="large" />}
    </main>
  )
}

function useLeaveByEscape(leave: () => void): void {
  useEffect(() => {
    const onKey = ({ key }: KeyboardEvent) => {
      if (key === "Escape") leave()
    }
    addEventListener("keydown", onKey)
    return () => removeEventListener("keydown", onKey)
  })
}
