import { type FormEvent, useState } from "react"
import { dateWords } from "../../chart/words.js"
import { say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import type { TreatmentEndBody } from "../../server/contract/entry.js"
import { faultsOf } from "../faults.js"
import { Dialog } from "../parts/dialog.js"
import { Field } from "../parts/field.js"
import { useRecord } from "../queries.js"
import type { EnterProps } from "./enter-props.js"
import { RunningChoice } from "./running-choice.js"
import { runningTreatments } from "./running-treatments.js"

export function StopTreatment({ view, reading, onClose, onDone }: EnterProps) {
  const running = runningTreatments(view)
  const [entryId, setEntryId] = useState(running[0]?.entryId ?? "")
  const [to, setTo] = useState(reading.today)
  const [reason, setReason] = useState("")
  const record = useRecord<TreatmentEndBody>(view.child.id, `treatments/${entryId}/end`)
  const faults = faultsOf(record.error, ["to", "reason"])
  const chosen = running.find((candidate) => candidate.entryId === entryId)
  const submit = (event: FormEvent) => {
    event.preventDefault()
    record.mutate(
      { to, ...(reason.trim() ? { reason } : {}) },
      {
        onSuccess: () =>
          onDone(
            say("Recorded: {treatment} stopped, {day}.", {
              treatment: chosen ? treatmentName(chosen.treatment) : say("treatment"),
              day: dateWords(to),
            }),
          ),
      },
    )
  }
  return (
    <Dialog title={say("Stop of a treatment")} onClose={onClose} failure={record.error}>
      {running.length === 0 ? (
        <p>{say("No treatment is running.")}</p>
      ) : (
        <form className="form" onSubmit={submit} noValidate>
          <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
          <RunningChoice label={say("Treatment")} running={running} value={entryId} onChange={setEntryId} />
          <div className="form-row">
            <Field label={say("First day without it")} fault={faults.at("to")}>
              {(control) => (
                <input {...control} type="date" value={to} onChange={(event) => setTo(event.target.value)} />
              )}
            </Field>
          </div>
          <Field label={say("Why")} note={say("Not required.")} fault={faults.at("reason")}>
            {(control) => (
              <input {...control} value={reason} onChange={(event) => setReason(event.target.value)} />
            )}
          </Field>
          <div className="form-actions">
            <button type="submit" className="primary" disabled={record.isPending}>
              {say("Record stop")}
            </button>
          </div>
        </form>
      )}
    </Dialog>
  )
}
