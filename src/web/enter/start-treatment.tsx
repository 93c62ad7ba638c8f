import { type FormEvent, useState } from "react"
import { dateWords } from "../../chart/words.js"
import { say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import type { TreatmentBody } from "../../server/contract/entry.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { capitalised } from "../format.js"
import { Dialog } from "../parts/dialog.js"
import { Field } from "../parts/field.js"
import { useRecord } from "../queries.js"
import type { EnterProps } from "./enter-props.js"
import { runningTreatments } from "./running-treatments.js"
import { TreatmentFields, type TypedTreatment, treatmentBody } from "./treatment-fields.js"

export function StartTreatment({ view, reading, onClose, onDone }: EnterProps) {
  const [id] = useState(newEntryId)
  const [treatment, setTreatment] = useState<TypedTreatment>({ kind: "atropine", strength: "" })
  const [from, setFrom] = useState(reading.today)
  const record = useRecord<TreatmentBody>(view.child.id, "treatments")
  const faults = faultsOf(record.error, ["kind", "concentrationPercent", "from"])
  const running = runningTreatments(view).find(({ treatment: { kind } }) => kind === treatment.kind)
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const body = { ...id, ...treatmentBody(treatment), from }
    record.mutate(body, {
      onSuccess: () =>
        onDone(
          say("Recorded: {treatment} from {day}.", { treatment: treatmentName(body), day: dateWords(from) }),
        ),
    })
  }
  return (
    <Dialog title={say("Start of a treatment")} onClose={onClose} failure={record.error}>
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <div className="form-row">
          <TreatmentFields
            value={treatment}
            onChange={setTreatment}
            kindFault={faults.at("kind")}
            strengthFault={faults.at("concentrationPercent")}
          />
          <Field label={say("First day")} fault={faults.at("from")}>
            {(control) => (
              <input
                {...control}
                type="date"
                value={from}
                onChange={(event) => setFrom(event.target.value)}
              />
            )}
          </Field>
        </div>
        {running && (
          <p className="field-caution">
            {capitalised(
              say(
                "{treatment} is running since {day}. For another strength, close this and choose “Change of a treatment”.",
                { treatment: treatmentName(running.treatment), day: dateWords(running.treatment.from) },
              ),
            )}
          </p>
        )}
        <p className="soft small">
          {say("Off-label use needs consent; it is entered apart, with its own date.")}
        </p>
        <div className="form-actions">
          <button type="submit" className="primary" disabled={record.isPending}>
            {say("Record start")}
          </button>
        </div>
      </form>
    </Dialog>
  )
}
