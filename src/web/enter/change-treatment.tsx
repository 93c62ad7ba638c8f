import { type FormEvent, useState } from "react"
import { dateWords } from "../../chart/words.js"
import { say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import type { TreatmentChangeBody } from "../../server/contract/entry.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Dialog } from "../parts/dialog.js"
import { Field } from "../parts/field.js"
import { useRecord } from "../queries.js"
import type { EnterProps } from "./enter-props.js"
import { RunningChoice } from "./running-choice.js"
import { runningTreatments } from "./running-treatments.js"
import { TreatmentFields, type TypedTreatment, treatmentBody } from "./treatment-fields.js"

/** Another strength or another treatment from a day on: one act, which ends the old one on that day. */
export function ChangeTreatment({ view, reading, onClose, onDone }: EnterProps) {
  const [id] = useState(newEntryId)
  const running = runningTreatments(view)
  const [entryId, setEntryId] = useState(running[0]?.entryId ?? "")
  const [next, setNext] = useState<TypedTreatment>({
    kind: running[0]?.treatment.kind ?? "atropine",
    strength: "",
  })
  const [to, setTo] = useState(reading.today)
  const [reason, setReason] = useState("")
  const record = useRecord<TreatmentChangeBody>(view.child.id, `treatments/${entryId}/change`)
  const faults = faultsOf(record.error, ["to", "kind", "concentrationPercent", "reason"])
  const old = running.find((candidate) => candidate.entryId === entryId)?.treatment
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const treatment = treatmentBody(next)
    record.mutate(
      { ...id, ...treatment, to, ...(reason.trim() ? { reason } : {}) },
      {
        onSuccess: () =>
          onDone(
            say("Recorded: {treatment} in place of {former} from {day}.", {
              treatment: treatmentName(treatment),
              former: old ? treatmentName(old) : say("the former"),
              day: dateWords(to),
            }),
          ),
      },
    )
  }
  return (
    <Dialog title={say("Change of a treatment")} onClose={onClose} failure={record.error}>
      {running.length === 0 ? (
        <p>{say("No treatment is running. Enter the start of one instead.")}</p>
      ) : (
        <form className="form" onSubmit={submit} noValidate>
          <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
          <RunningChoice label={say("In place of")} running={running} value={entryId} onChange={setEntryId} />
          <div className="form-row">
            <TreatmentFields
              label={say("New treatment")}
              value={next}
              onChange={setNext}
              kindFault={faults.at("kind")}
              strengthFault={faults.at("concentrationPercent")}
            />
            <Field label={say("First day")} fault={faults.at("to")}>
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
          <p className="soft small">
            {say(
              "The old treatment ends on the day the new one starts. Off-label use needs consent to the new strength; it is entered apart, with its own date.",
            )}
          </p>
          <div className="form-actions">
            <button type="submit" className="primary" disabled={record.isPending}>
              {say("Record change")}
            </button>
          </div>
        </form>
      )}
    </Dialog>
  )
}
