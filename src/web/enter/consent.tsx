import { type FormEvent, useState } from "react"
import { dateWords } from "../../chart/words.js"
import { treatmentName } from "../../engine/treatment-name.js"
import type { ConsentBody } from "../../server/contract/entry.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Dialog } from "../parts/dialog.js"
import { Field } from "../parts/field.js"
import { useRecord } from "../queries.js"
import type { EnterProps } from "./enter-props.js"
import { TreatmentFields, type TypedTreatment, treatmentBody } from "./treatment-fields.js"

export function EnterConsent({ view, reading, onClose, onDone }: EnterProps) {
  const [id] = useState(newEntryId)
  const [date, setDate] = useState(reading.today)
  const [covers, setCovers] = useState<TypedTreatment>({ kind: "atropine", strength: "" })
  const record = useRecord<ConsentBody>(view.child.id, "consents")
  const faults = faultsOf(record.error, ["date", "covers.kind", "covers.concentrationPercent"])
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const body = { ...id, date, covers: treatmentBody(covers) }
    record.mutate(body, {
      onSuccess: () => onDone(`Recorded: consent of ${dateWords(date)} to ${treatmentName(body.covers)}.`),
    })
  }
  return (
    <Dialog title="Consent" onClose={onClose} failure={record.error}>
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <div className="form-row">
          <Field label="Given on" fault={faults.at("date")}>
            {(control) => (
              <input
                {...control}
                type="date"
                value={date}
                onChange={(event) => setDate(event.target.value)}
              />
            )}
          </Field>
          <TreatmentFields
            value={covers}
            onChange={setCovers}
            kindFault={faults.at("covers.kind")}
            strengthFault={faults.at("covers.concentrationPercent")}
          />
        </div>
        <p className="soft small">
          The strength is the highest one agreed to. The signed paper stays with the practice.
        </p>
        <div className="form-actions">
          <button type="submit" className="primary" disabled={record.isPending}>
            Record consent
          </button>
        </div>
      </form>
    </Dialog>
  )
}
