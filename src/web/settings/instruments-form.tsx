import { type FormEvent, useState } from "react"
import type { InstrumentRules } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Field } from "../parts/field.js"
import { useRecordPaper } from "../queries.js"
import { firstRules } from "./first-rules.js"
import { InstrumentRows, rowsOf, type TitleRow, titlesOf } from "./instrument-rows.js"

interface Typed {
  readonly isOn: boolean
  readonly port: string
  readonly title: string
  readonly rows: readonly TitleRow[]
}

/** The settings of the receiver; recording them makes a new version, and it is in force at once. */
export function InstrumentsForm(props: {
  readonly set: InstrumentRules | undefined
  /** Put into the form in place of what is set, for a person to look at and record. */
  readonly proposed: InstrumentRules | null
  readonly supersedes: string | null
  readonly onSaved: (message: string) => void
  readonly onForget: () => void
}) {
  const { set, proposed, supersedes, onSaved, onForget } = props
  const [id, setId] = useState(newEntryId)
  const [typed, setTyped] = useState<Typed>(() => typedOf(proposed ?? set ?? firstRules(null)))
  const change = (fields: Partial<Typed>) => setTyped((before) => ({ ...before, ...fields }))
  const record = useRecordPaper("instruments")
  const faults = faultsOf(record.error, ["body.port", "body.title", "body.allowed"])
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const superseding = supersedes ? { supersedes, reason: "settings of instruments changed" } : {}
    record.mutate(
      { body: rulesOf(typed), ...superseding, ...id },
      {
        onSuccess: () => {
          setId(newEntryId())
          onSaved(
            typed.isOn
              ? say("Recorded: instruments that are allowed may send.")
              : say("Recorded: instruments get no answer."),
          )
        },
      },
    )
  }
  return (
    <section className="card" aria-label={say("Settings of instruments")}>
      <h2>{say("What is allowed")}</h2>
      {proposed && (
        <p className="notice">
          {say("Filled in for you and not recorded yet: look it over, then record it.")}{" "}
          <button type="button" className="link" onClick={onForget}>
            {say("Back to what is recorded")}
          </button>
        </p>
      )}
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <label className="instrument-tick">
          <input
            type="checkbox"
            checked={typed.isOn}
            onChange={(event) => change({ isOn: event.target.checked })}
          />
          {say("Receive from instruments")}
        </label>
        <div className="form-row">
          <Field
            label={say("Title of this practice")}
            note={say(
              "What instruments call Lengthwise by (AE title): 1 to 16 characters, the same on both sides.",
            )}
            fault={faults.at("body.title")}
          >
            {(control) => (
              <input
                {...control}
                autoComplete="off"
                spellCheck={false}
                value={typed.title}
                onChange={(event) => change({ title: event.target.value })}
              />
            )}
          </Field>
          <Field
            label={say("Port")}
            note={say("11112 is registered for DICOM.")}
            fault={faults.at("body.port")}
          >
            {(control) => (
              <input
                {...control}
                inputMode="numeric"
                autoComplete="off"
                value={typed.port}
                onChange={(event) => change({ port: event.target.value })}
              />
            )}
          </Field>
        </div>
        <InstrumentRows
          rows={typed.rows}
          fault={faults.at("body.allowed")}
          onChange={(rows) => change({ rows })}
        />
        <div className="form-actions">
          <button type="submit" className="primary" disabled={record.isPending}>
            {say("Record settings")}
          </button>
        </div>
      </form>
    </section>
  )
}

const typedOf = ({ isOn, port, title, allowed }: InstrumentRules): Typed => ({
  isOn,
  port: String(port),
  title,
  rows: rowsOf(allowed),
})

/** As it is sent; a port that is no number is sent as it was typed, so that the refusal shows it. */
function rulesOf({ isOn, port, title, rows }: Typed): unknown {
  return {
    isOn,
    port: /^\d+$/.test(port.trim()) ? Number(port) : port,
    title: title.trim(),
    allowed: titlesOf(rows),
  }
}
