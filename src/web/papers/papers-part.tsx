import "./papers.css"
import { useMutation } from "@tanstack/react-query"
import { Link } from "@tanstack/react-router"
import { useState } from "react"
import { say } from "../../engine/say.js"
import type { ExplanationBody } from "../../server/contract/entry.js"
import type { ChildPartProps } from "../child/child-part-props.js"
import { failureInWords, Refused } from "../client.js"
import { newEntryId } from "../entry-id.js"
import { inWords, sentence } from "../format.js"
import { Waiting } from "../parts/waiting.js"
import { useRecord } from "../queries.js"
import { DOCUMENT_NAMES } from "./document-names.js"
import { DocumentView } from "./document-view.js"
import type { PaperChoice } from "./paper-address.js"
import { PaperFields } from "./paper-fields.js"
import { downloadPaper, usePaper } from "./use-paper.js"

/** The papers of a child: chosen, looked at, printed, kept as PDF. */
export function PapersPart({ view, reading, onDone }: ChildPartProps) {
  const { id } = view.child
  const { today } = reading
  const [choice, setChoice] = useState<PaperChoice>({ kind: "family", language: null, paper: "a4" })
  const paper = usePaper(id, choice, `${today} ${view.entries.length}`)
  const download = useMutation({ mutationFn: () => downloadPaper(id, choice, today) })
  const refusal = paper.error instanceof Refused && paper.error.status === 422 ? paper.error : null
  // A paper that is refused is not the one still in view from before.
  const document = paper.isError ? undefined : paper.data
  return (
    <div className="papers-part">
      <section className="card papers-choice" aria-labelledby="papers-choice">
        <h2 id="papers-choice">{say("Which paper")}</h2>
        <PaperFields
          choice={choice}
          spoken={document?.language}
          reading={reading}
          onChange={(changed) => {
            download.reset()
            setChoice(changed)
          }}
        />
        {document && (
          <div className="form-actions">
            <button
              type="button"
              className="primary"
              disabled={download.isPending || paper.isPlaceholderData}
              onClick={() => download.mutate()}
            >
              {say("Download PDF")}
            </button>
            <button type="button" disabled={paper.isPlaceholderData} onClick={() => window.print()}>
              {say("Print")}
            </button>
            {choice.kind === "family" && <Given childId={id} today={today} onDone={onDone} />}
          </div>
        )}
        <p role="alert" className={download.error ? "form-fault" : undefined}>
          {download.error && failureInWords(download.error)}
        </p>
        {choice.kind === "family" && (
          <p>
            <Link to="/children/$childId/family" params={{ childId: id }}>
              {say("Turn the screen round")}
            </Link>{" "}
            <span className="soft small">
              {say("The same page large, with nothing of the practice’s around it.")}
            </span>
          </p>
        )}
      </section>
      <section
        className="card papers-preview"
        aria-label={say(DOCUMENT_NAMES[choice.kind])}
        aria-busy={paper.isFetching}
      >
        {document && <DocumentView document={document} canKeepFigures />}
        {paper.isPending && <Waiting for={say("the paper")} />}
        {refusal && (
          <div className="papers-refused" role="status">
            <h2>{say("This paper cannot be made yet")}</h2>
            {refusal.problems.map(({ message }) => (
              <p key={message}>{sentence(message)}</p>
            ))}
          </div>
        )}
        {paper.error && !refusal && (
          <p className="form-fault" role="alert">
            {failureInWords(paper.error)}
          </p>
        )}
      </section>
    </div>
  )
}

/** One press that records that the family has the report: with it the results are told. */
function Given({
  childId,
  today,
  onDone,
}: {
  readonly childId: string
  readonly today: string
  readonly onDone: (message: string) => void
}) {
  const [id, setId] = useState(newEntryId)
  const record = useRecord<ExplanationBody>(childId, "explanations")
  const give = () =>
    record.mutate(
      { ...id, date: today, to: "family" },
      {
        onSuccess: () => {
          setId(newEntryId)
          onDone(say("Recorded: report given to the family, {day}.", { day: inWords(today) }))
        },
      },
    )
  return (
    <>
      <button type="button" disabled={record.isPending} onClick={give}>
        {say("Given to the family")}
      </button>
      {record.error && <span role="alert">{failureInWords(record.error)}</span>}
    </>
  )
}
