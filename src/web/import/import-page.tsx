import "./import.css"
import { useDeferredValue, useEffect, useRef, useState } from "react"
import { say } from "../../engine/say.js"
import type { ImportAtWork } from "../../server/contract/imports.js"
import { failureInWords } from "../client.js"
import { faultsOf } from "../faults.js"
import { PageHeading } from "../parts/page-heading.js"
import { Waiting } from "../parts/waiting.js"
import { CheckCard } from "./check-card.js"
import { ColumnsCard } from "./columns-card.js"
import { DoneCard } from "./done-card.js"
import { EarlierImports } from "./earlier-imports.js"
import { ProgressCard } from "./progress-card.js"
import { isBusy, useDiscard, useImports, useUpload } from "./use-import.js"

/** A table of another program: chosen, its columns named, checked, recorded, and taken back if need be. */
export function ImportPage() {
  const [typed, setTyped] = useState("")
  const [page, setPage] = useState(1)
  const list = useImports({ search: useDeferredValue(typed.trim()), page })
  const work = list.data?.atWork ?? null
  const [again, setAgain] = useState(false)
  const step = useStepFocus(list.data && `${work?.id} ${work?.state} ${again}`)
  return (
    <>
      <div className="page-head">
        <PageHeading title={say("Import a table")} />
        {work && (work.state === "chosen" || work.state === "checked") && <Discard work={work} />}
      </div>
      {list.error && <p className="form-fault">{failureInWords(list.error)}</p>}
      {!list.data && !list.error && <Waiting for={say("the imports")} />}
      {list.data && (
        <div className="import-steps">
          <div ref={step} className="import-step">
            <Step work={work} again={again} onAgain={setAgain} />
          </div>
          <EarlierImports
            answer={list.data}
            search={typed}
            onSearch={(text) => {
              setTyped(text)
              setPage(1)
            }}
            onPage={setPage}
          />
        </div>
      )}
    </>
  )
}

/** Moves the focus to the heading of a step once it follows another one: what had it is gone. */
function useStepFocus(name: string | undefined) {
  const step = useRef<HTMLDivElement>(null)
  const before = useRef<string | undefined>(undefined)
  useEffect(() => {
    if (before.current !== undefined && before.current !== name)
      step.current?.querySelector<HTMLElement>("h2, input[type=file]")?.focus({ preventScroll: true })
    before.current = name
  }, [name])
  return step
}

function Step({
  work,
  again,
  onAgain,
}: {
  readonly work: ImportAtWork | null
  /** Back to the columns after a check. */
  readonly again: boolean
  readonly onAgain: (again: boolean) => void
}) {
  if (!work) return <ChooseFile />
  if (isBusy(work)) return <ProgressCard work={work} />
  if (work.table && (work.state === "chosen" || (again && work.state === "checked")))
    return <ColumnsCard key={work.id} work={work} onChecking={() => onAgain(false)} />
  if (work.state === "checked" && work.check)
    return <CheckCard work={work} check={work.check} onBack={() => onAgain(true)} />
  return (
    <>
      <DoneCard work={work} />
      <ChooseFile />
    </>
  )
}

function ChooseFile() {
  const upload = useUpload()
  const [over, setOver] = useState(false)
  const { general, at } = faultsOf(upload.error, ["file"])
  const fault = general ?? at("file")
  return (
    // Dropping is an addition: the button beside it does the same.
    <section
      className={over ? "card import-drop over" : "card import-drop"}
      aria-label={say("Choose a file")}
      onDragOver={(event) => {
        event.preventDefault()
        setOver(true)
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault()
        setOver(false)
        const file = event.dataTransfer.files[0]
        if (file) upload.mutate(file)
      }}
    >
      <p>
        {say(
          "Lengths, refractions and years of old glasses from another program: CSV, tab-separated text or an Excel workbook, up to 200 MB.",
        )}
      </p>
      <p className="soft">
        {say(
          "Nothing is recorded before you have seen what will be, and the whole import can be taken back in one step.",
        )}
      </p>
      <div role="alert">{fault && <p className="form-fault">{fault}</p>}</div>
      <label className="button primary" htmlFor="table-file">
        {upload.isPending ? say("Sending the file …") : say("Choose a file")}
      </label>
      <input
        id="table-file"
        className="unseen"
        type="file"
        accept=".csv,.tsv,.tab,.txt,.xlsx"
        disabled={upload.isPending}
        onChange={({ target }) => {
          const file = target.files?.[0]
          if (file) upload.mutate(file)
          target.value = ""
        }}
      />
      <span className="soft small">{say("or drop it here")}</span>
    </section>
  )
}

function Discard({ work }: { readonly work: ImportAtWork }) {
  const discard = useDiscard()
  return (
    <div className="actions">
      <span className="soft small">{say("chosen by {name}", { name: work.by })}</span>
      <button type="button" disabled={discard.isPending} onClick={() => discard.mutate(work.id)}>
        {say("Leave this file")}
      </button>
    </div>
  )
}
