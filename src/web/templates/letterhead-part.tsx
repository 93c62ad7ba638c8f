import "./templates.css"
import { type FormEvent, useState } from "react"
import { say } from "../../engine/say.js"
import type { FileType } from "../../server/contract/file-types.js"
import { fileUrl, storeFile } from "../consent/stored-file.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Field } from "../parts/field.js"
import { useRecordPaper } from "../queries.js"
import type { SettingsPartProps } from "../settings/settings-part-props.js"
import { LOGO_TYPES, logoFault } from "./logo-fault.js"

/** What stands at the head of every paper of the practice. */
export function LetterheadPart({ practice, rules, onDone }: SettingsPartProps) {
  const paper = rules.papers.findLast(
    ({ kind, supersededBy }) => kind === "letterhead" && supersededBy === null,
  )
  const { letterhead } = practice.rules
  const [id, setId] = useState(newEntryId)
  const [text, setText] = useState((letterhead?.lines ?? []).join("\n"))
  const [logo, setLogo] = useState(letterhead?.logo ?? null)
  const [logoProblem, setLogoProblem] = useState<string | null>(null)
  const record = useRecordPaper("letterhead")
  const faults = faultsOf(record.error, ["body.lines", "body.logo"])
  const choose = async (file: File | null) => {
    if (!file) return
    const fault = logoFault(file)
    setLogoProblem(fault)
    if (fault) return
    try {
      setLogo(await storeFile(file, file.type as FileType))
    } catch (error) {
      const { at, general } = faultsOf(error, ["file"])
      setLogoProblem(at("file") ?? general)
    }
  }
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const lines = text.split("\n").map((line) => line.trim())
    const body = { lines: lines.filter((line) => line !== ""), ...(logo ? { logo } : {}) }
    const superseding = paper ? { supersedes: paper.id, reason: say("letterhead changed") } : {}
    record.mutate(
      { body, ...superseding, ...id },
      {
        onSuccess: () => {
          setId(newEntryId())
          onDone(say("Recorded: the letterhead. It stands on every paper from now on."))
        },
      },
    )
  }
  return (
    <section className="card" aria-label={say("Letterhead")}>
      <p>{say("Stands at the head of every paper, below the practice’s name.")}</p>
      <form className="form letterhead-form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <Field
          label={say("Address and telephone")}
          note={say("A line each; at most 8 lines of 120 characters.")}
          fault={faults.at("body.lines")}
        >
          {(control) => (
            <textarea {...control} rows={5} value={text} onChange={({ target }) => setText(target.value)} />
          )}
        </Field>
        <Field
          label={say("Picture")}
          note={say("PNG or JPEG, at most 1 MB. It stands at the right, 16 mm high.")}
          fault={logoProblem ?? faults.at("body.logo")}
        >
          {(control) => (
            <input
              {...control}
              type="file"
              accept={LOGO_TYPES.join(",")}
              onChange={({ target }) => choose(target.files?.[0] ?? null)}
            />
          )}
        </Field>
        {logo && (
          <p className="letterhead-logo">
            <img src={fileUrl(logo)} alt={say("The picture as it is stored")} />
            <button type="button" className="link" onClick={() => setLogo(null)}>
              {say("Take the picture off")}
            </button>
          </p>
        )}
        <div className="form-actions">
          <button type="submit" className="primary" disabled={record.isPending}>
            {say("Record letterhead")}
          </button>
        </div>
      </form>
    </section>
  )
}
