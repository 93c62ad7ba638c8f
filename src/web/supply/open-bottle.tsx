import { type FormEvent, useState } from "react"
import { dateWords } from "../../chart/words.js"
import { addDays } from "../../engine/calendar.js"
import type { AmendmentBody } from "../../server/contract/entry.js"
import type { EnterProps } from "../enter/enter-props.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Dialog } from "../parts/dialog.js"
import { Field } from "../parts/field.js"
import { useRecord } from "../queries.js"
import type { RecordedBottle } from "./recorded-bottles.js"

/** A bottle handed out earlier was opened: the entry is taken further, nothing is lost. */
export function OpenBottle({
  bottle,
  view,
  reading,
  onClose,
  onDone,
}: EnterProps & { readonly bottle: RecordedBottle }) {
  const [id] = useState(newEntryId)
  const known = bottle.body
  const pharmacy = reading.rules.pharmacies.find(({ name }) => name === known.pharmacy)
  const lastDayOf = (opened: string) =>
    known.beyondUse ?? (opened && pharmacy ? addDays(opened, pharmacy.daysAfterOpening) : "")
  const [opened, setOpened] = useState(reading.today)
  const [beyondUse, setBeyondUse] = useState(lastDayOf(reading.today))
  const amend = useRecord<AmendmentBody>(view.child.id, `entries/${bottle.entryId}/amendment`)
  const faults = faultsOf(amend.error, ["fields.opened", "fields.beyondUse"])
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const fields = { ...known, opened: opened || undefined, ...(beyondUse ? { beyondUse } : {}) }
    amend.mutate(
      { ...id, fields, reason: `opened on ${opened}` },
      { onSuccess: () => onDone(`Recorded: bottle opened, ${dateWords(opened)}.`) },
    )
  }
  return (
    <Dialog title="Bottle opened" onClose={onClose} failure={amend.error}>
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <p>
          {known.concentrationPercent === undefined
            ? "A bottle"
            : `A bottle of ${known.concentrationPercent} %`}
          {known.dispensed && `, handed out on ${dateWords(known.dispensed)}`}
          {known.lot && `, lot ${known.lot}`}.
        </p>
        <div className="form-row">
          <Field label="Opened" fault={faults.at("fields.opened")}>
            {(control) => (
              <input
                {...control}
                type="date"
                value={opened}
                onChange={(event) => {
                  setOpened(event.target.value)
                  setBeyondUse(lastDayOf(event.target.value))
                }}
              />
            )}
          </Field>
          <Field
            label="Last day of use"
            note={
              pharmacy
                ? `${pharmacy.name} states ${pharmacy.daysAfterOpening} days after opening.`
                : "As on its label."
            }
            fault={faults.at("fields.beyondUse")}
          >
            {(control) => (
              <input
                {...control}
                type="date"
                value={beyondUse}
                onChange={(event) => setBeyondUse(event.target.value)}
              />
            )}
          </Field>
        </div>
        <div className="form-actions">
          <button type="submit" className="primary" disabled={amend.isPending || opened === ""}>
            Record opening
          </button>
        </div>
      </form>
    </Dialog>
  )
}
