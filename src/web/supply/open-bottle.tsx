import { type FormEvent, useState } from "react"
import { dateWords } from "../../chart/words.js"
import { addDays } from "../../engine/calendar.js"
import { say } from "../../engine/say.js"
import { inDigits } from "../../engine/words.js"
import type { AmendmentBody } from "../../server/contract/entry.js"
import type { EnterProps } from "../enter/enter-props.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { sentence } from "../format.js"
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
      { ...id, fields, reason: say("opened on {date}", { date: opened }) },
      { onSuccess: () => onDone(say("Recorded: bottle opened, {date}.", { date: dateWords(opened) })) },
    )
  }
  return (
    <Dialog title={say("Bottle opened")} onClose={onClose} failure={amend.error}>
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <p>{bottleInWords(known)}</p>
        <div className="form-row">
          <Field label={say("Opened|on")} fault={faults.at("fields.opened")}>
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
            label={say("Last day of use")}
            note={
              pharmacy
                ? say("{pharmacy} states {days, plural, one {# day} other {# days}} after opening.", {
                    pharmacy: pharmacy.name,
                    days: pharmacy.daysAfterOpening,
                  })
                : say("As on its label.")
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
            {say("Record opening")}
          </button>
        </div>
      </form>
    </Dialog>
  )
}

/** Which bottle it is: what is known of it, one after the other. */
function bottleInWords({ concentrationPercent, dispensed, lot }: RecordedBottle["body"]): string {
  const known = [
    concentrationPercent === undefined
      ? say("A bottle")
      : say("A bottle of {percent} %", { percent: inDigits(concentrationPercent) }),
    ...(dispensed ? [say("handed out on {date}", { date: dateWords(dispensed) })] : []),
    ...(lot ? [say("lot {lot}", { lot })] : []),
  ]
  return sentence(known.join(", "))
}
