import { type FormEvent, useState } from "react"
import { dateWords } from "../../chart/words.js"
import { say } from "../../engine/say.js"
import { isPluralName, treatmentName } from "../../engine/treatment-name.js"
import type { ChildView } from "../../server/contract/child.js"
import type { AmendmentBody } from "../../server/contract/entry.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { capitalised } from "../format.js"
import { Dialog } from "../parts/dialog.js"
import { Field } from "../parts/field.js"
import { useRecord } from "../queries.js"
import type { CourseReading } from "../reading.js"
import { treatmentsOn } from "../treatments-on.js"
import type { ConsentRow } from "./consent-rows.js"

/** The family takes its consent back: it no longer holds from a day on, and stays in the record. */
export function WithdrawConsent(props: {
  readonly row: ConsentRow
  readonly view: ChildView
  readonly reading: CourseReading
  readonly onClose: () => void
  readonly onDone: (message: string) => void
}) {
  const { row, view, reading, onClose, onDone } = props
  const { consent, entry } = row
  const name = treatmentName(consent.covers)
  const [id] = useState(newEntryId)
  const [until, setUntil] = useState(reading.today)
  const [reason, setReason] = useState("")
  const record = useRecord<AmendmentBody>(view.child.id, `entries/${entry.id}/amendment`)
  const faults = faultsOf(record.error, ["fields.until", "reason"])
  const isInUse = treatmentsOn(reading.course, reading.today).some(
    (treatment) => treatmentName(treatment) === name,
  )
  const submit = (event: FormEvent) => {
    event.preventDefault()
    record.mutate(
      { ...id, fields: { ...consent, until }, reason },
      {
        onSuccess: () => {
          onDone(
            say("Withdrawn from {date}: the consent to {treatment}. It stays in the record.", {
              date: dateWords(until),
              treatment: name,
            }),
          )
          onClose()
        },
      },
    )
  }
  return (
    <Dialog
      title={say("Withdraw the consent to {treatment}", { treatment: name })}
      onClose={onClose}
      failure={record.error}
    >
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <Field label={say("First day it no longer holds")} fault={faults.at("fields.until")}>
          {(control) => (
            <input
              {...control}
              type="date"
              value={until}
              onChange={(event) => setUntil(event.target.value)}
            />
          )}
        </Field>
        <Field
          label={say("Why, as the family says")}
          note={say("No family has to give a reason: “none given” is one.")}
          fault={faults.at("reason")}
        >
          {(control) => (
            <input {...control} value={reason} onChange={(event) => setReason(event.target.value)} />
          )}
        </Field>
        {isInUse && (
          <p className="field-caution">
            {say(
              "{treatment} {verb, select, plural {are in use} other {is in use}}. The stop is entered apart, on the child’s page; until then a consent is owed.",
              { treatment: capitalised(name), verb: isPluralName(name) ? "plural" : "singular" },
            )}
          </p>
        )}
        <div className="form-actions">
          <button type="submit" className="primary" disabled={record.isPending}>
            {say("Withdraw consent")}
          </button>
        </div>
      </form>
    </Dialog>
  )
}
