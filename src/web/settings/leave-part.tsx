import "../styles/tables.css"
import "./leave.css"
import { type FormEvent, useState } from "react"
import { say } from "../../engine/say.js"
import { failureInWords } from "../client.js"
import { faultsOf } from "../faults.js"
import { Field } from "../parts/field.js"
import { Waiting } from "../parts/waiting.js"
import { ArchiveList } from "./archive-list.js"
import { useArchives, useMakeArchive } from "./use-archives.js"

/** Everything the practice recorded, in one open file that it can take elsewhere. */
export function LeavePart() {
  const archives = useArchives()
  const isRunning = archives.data?.archives.some(({ state }) => state === "running") ?? false
  return (
    <div className="leave">
      <section className="card" aria-label={say("Take everything out")}>
        <h2>{say("Take everything out")}</h2>
        <p>
          {say(
            "One file with everything this practice has recorded, which any program can open and a new Lengthwise reads back entry for entry.",
          )}
        </p>
        <ul>
          <li>
            {say(
              "Every entry with its corrections and withdrawals, and the checksum that ties it to the one before.",
            )}
          </li>
          <li>
            {say(
              "Signatures, scans and letters; messages to families; what instruments sent; protocols, fees and settings.",
            )}
          </li>
          <li>{say("Tables for a spreadsheet, and each child’s course as a file of its own.")}</li>
          <li>
            {say(
              "No passwords and no keys: after a restore everybody gets a new password, and family links are handed out anew.",
            )}
          </li>
        </ul>
        <p className="caution">
          {say("The file is not encrypted and names every child. Keep it where nobody else can read it.")}
        </p>
        <NewArchive isRunning={isRunning} />
      </section>
      {archives.isError && <p className="form-fault">{failureInWords(archives.error)}</p>}
      {archives.isPending && <Waiting for={say("the archives")} />}
      {archives.data && <ArchiveList archives={archives.data.archives} />}
      <section className="card" aria-label={say("To restore an archive")}>
        <h2>{say("To restore an archive")}</h2>
        <p>{say("On the command line of the machine that is to hold the record, into a new folder:")}</p>
        <pre className="command">lengthwise import lengthwise-archive.zip --data NEW-FOLDER</pre>
        <p>
          {say(
            "Everything is checked before anything is stored. Stop this installation first, so that no message is sent from both.",
          )}
        </p>
      </section>
    </div>
  )
}

function NewArchive({ isRunning }: { readonly isRunning: boolean }) {
  const [withPapers, setWithPapers] = useState(true)
  const [password, setPassword] = useState("")
  const make = useMakeArchive()
  const faults = faultsOf(make.error, ["password"])
  const submit = (event: FormEvent) => {
    event.preventDefault()
    make.mutate({ withPapers, password }, { onSuccess: () => setPassword("") })
  }
  return (
    <form className="form" onSubmit={submit} noValidate>
      <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
      <label className="leave-tick">
        <input
          type="checkbox"
          checked={withPapers}
          onChange={(event) => setWithPapers(event.target.checked)}
        />
        {say("With the full record of each child as PDF, which takes longer")}
      </label>
      <Field
        label={say("Your password")}
        note={say("Asked again, so that a screen left open is not enough.")}
        fault={faults.at("password")}
      >
        {(control) => (
          <input
            {...control}
            type="password"
            autoComplete="current-password"
            value={password}
            onChange={(event) => setPassword(event.target.value)}
          />
        )}
      </Field>
      <div className="form-actions">
        <button type="submit" className="primary" disabled={make.isPending || isRunning}>
          {say("Make the archive")}
        </button>
      </div>
    </form>
  )
}
