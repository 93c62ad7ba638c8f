import { useQueryClient } from "@tanstack/react-query"
import { Link } from "@tanstack/react-router"
import { type DragEvent, useRef, useState } from "react"
import { msg, say } from "../../engine/say.js"
import { type ChosenFile, droppedFiles, type FileOutcome, plainFiles, sendFile } from "./sent-files.js"

interface Sending {
  readonly total: number
  readonly done: number
  readonly outcomes: readonly FileOutcome[]
  readonly state: "under-way" | "done" | "cancelled"
}

/** Files and folders dropped or chosen are sent one by one; at the end stands what became of each. */
export function DropFiles() {
  const client = useQueryClient()
  const [sending, setSending] = useState<Sending | null>(null)
  const [over, setOver] = useState(false)
  const stop = useRef<AbortController | null>(null)
  const folder = useRef<HTMLInputElement>(null)
  const isBusy = sending?.state === "under-way"

  const send = async (files: readonly ChosenFile[]) => {
    if (files.length === 0) return
    const control = new AbortController()
    stop.current = control
    const outcomes: FileOutcome[] = []
    const show = (done: number, state: Sending["state"]) =>
      setSending({ total: files.length, done, outcomes: [...outcomes], state })
    let done = 0
    show(done, "under-way")
    for (const file of files) {
      const became = await sendFile(file, control.signal)
      // A file whose sending was broken off may have arrived: sent again, it is known already.
      if (became === "cancelled") break
      outcomes.push(...became)
      done += 1
      show(done, "under-way")
      if (control.signal.aborted) break
    }
    show(done, done < files.length ? "cancelled" : "done")
    await client.invalidateQueries({ predicate: ({ queryKey }) => queryKey[0] !== "session" })
  }
  const drop = async (event: DragEvent) => {
    event.preventDefault()
    setOver(false)
    if (!isBusy) await send(await droppedFiles(event.dataTransfer))
  }

  return (
    <section className="card drop-files" aria-label={say("Take in files")}>
      {/* Dropping is an addition: the buttons below do the same. */}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: see above */}
      <div
        className={over ? "drop over" : "drop"}
        onDragOver={(event) => {
          event.preventDefault()
          setOver(true)
        }}
        onDragLeave={() => setOver(false)}
        onDrop={drop}
      >
        <p>
          {say("Drop files or folders here: DICOM, FHIR, course files.")}{" "}
          <Link to="/import">{say("Tables have a page of their own")}</Link>
        </p>
        <div className="form-actions">
          <Pick label={say("Choose files")} disabled={isBusy} onFiles={send} />
          <button type="button" disabled={isBusy} onClick={() => folder.current?.click()}>
            {say("Choose a folder")}
          </button>
          <input
            ref={(element) => {
              folder.current = element
              element?.setAttribute("webkitdirectory", "")
            }}
            type="file"
            multiple
            hidden
            aria-label={say("Choose a folder")}
            onChange={(event) => {
              send(plainFiles(event.target.files ?? []))
              event.target.value = ""
            }}
          />
        </div>
      </div>
      {sending && (
        <>
          <div className="drop-progress">
            <progress max={sending.total} value={sending.done} aria-label={say("Files taken in")} />
            <span role="status">
              {sending.state === "cancelled"
                ? say("Cancelled after {done} of {total} files.", countsOf(sending))
                : say("{done} of {total} files", countsOf(sending))}
            </span>
            {isBusy && (
              <button type="button" onClick={() => stop.current?.abort()}>
                {say("Cancel")}
              </button>
            )}
          </div>
          {!isBusy && <Report outcomes={sending.outcomes} />}
        </>
      )}
    </section>
  )
}

const countsOf = ({ done, total }: Sending) => ({ done, total })

function Pick(props: {
  readonly label: string
  readonly disabled: boolean
  readonly onFiles: (files: readonly ChosenFile[]) => void
}) {
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <button
        type="button"
        className="primary"
        disabled={props.disabled}
        onClick={() => input.current?.click()}
      >
        {props.label}
      </button>
      <input
        ref={input}
        type="file"
        multiple
        hidden
        aria-label={props.label}
        onChange={(event) => {
          props.onFiles(plainFiles(event.target.files ?? []))
          event.target.value = ""
        }}
      />
    </>
  )
}

const OUTCOMES: Readonly<Record<FileOutcome["outcome"], string>> = {
  recorded: msg("Recorded|outcome"),
  known: msg("Known already|outcome"),
  waiting: msg("Waits|outcome"),
  skipped: msg("Skipped|outcome"),
}

/** What became of each file: searchable, and as text for the clipboard. */
function Report({ outcomes }: { readonly outcomes: readonly FileOutcome[] }) {
  const [search, setSearch] = useState("")
  const [copied, setCopied] = useState(false)
  const line = ({ file, outcome, why }: FileOutcome) => [file, say(OUTCOMES[outcome]), why ?? ""].join("\t")
  const words = search.toLowerCase().split(/\s+/).filter(Boolean)
  const shown = outcomes.filter((one) => words.every((word) => line(one).toLowerCase().includes(word)))
  const count = (outcome: FileOutcome["outcome"]) => outcomes.filter((one) => one.outcome === outcome).length
  return (
    <div className="drop-report">
      <p>
        {say("{recorded} recorded, {known} known already, {waiting} waiting, {skipped} skipped.", {
          recorded: count("recorded"),
          known: count("known"),
          waiting: count("waiting"),
          skipped: count("skipped"),
        })}
      </p>
      <div className="form-actions">
        <label>
          {say("Find")}{" "}
          <input type="search" value={search} onChange={(event) => setSearch(event.target.value)} />
        </label>
        <button
          type="button"
          onClick={async () => {
            await navigator.clipboard.writeText(outcomes.map(line).join("\n"))
            setCopied(true)
          }}
        >
          {copied ? say("Copied") : say("Copy")}
        </button>
        <button type="button" onClick={() => window.print()}>
          {say("Print")}
        </button>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a long table scrolls by itself, and the keyboard must reach it */}
      <section className="scroll" tabIndex={0} aria-label={say("What became of each file")}>
        <table className="data">
          <thead>
            <tr>
              <th scope="col">{say("File")}</th>
              <th scope="col">{say("What became of it")}</th>
            </tr>
          </thead>
          <tbody>
            {shown.map((one, place) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a file may hold several children
              <tr key={`${one.file} ${place}`}>
                <th scope="row">
                  <bdi>{one.file}</bdi>
                </th>
                <td>
                  {one.inboxId ? (
                    <Link to="/inbox/$itemId" params={{ itemId: one.inboxId }}>
                      {say(OUTCOMES[one.outcome])}
                    </Link>
                  ) : (
                    say(OUTCOMES[one.outcome])
                  )}
                  {one.why && <span className="soft small">{one.why}</span>}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </div>
  )
}
