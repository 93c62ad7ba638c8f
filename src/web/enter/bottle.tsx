import { type FormEvent, useState } from "react"
import { dateWords } from "../../chart/words.js"
import type { SupplyBody } from "../../server/contract/entry.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Dialog } from "../parts/dialog.js"
import { Field } from "../parts/field.js"
import { useRecord } from "../queries.js"
import { parseNumber } from "../visit/readings.js"
import type { EnterProps } from "./enter-props.js"
import { runningTreatments } from "./running-treatments.js"

type BottleField = "dispensed" | "opened" | "beyondUse" | "concentrationPercent" | "volumeMl" | "lot"

const FIELDS: readonly (readonly [BottleField, label: string, type: "date" | "text", note?: string])[] = [
  ["dispensed", "Handed out", "date"],
  ["opened", "Opened", "date"],
  ["beyondUse", "Last day of use", "date", "Once opened."],
  ["concentrationPercent", "Strength, % w/v", "text"],
  ["volumeMl", "Volume, mL", "text"],
  ["lot", "Lot", "text"],
]

export function EnterBottle({ view, reading, onClose, onDone }: EnterProps) {
  const [id] = useState(newEntryId)
  const [typed, setTyped] = useState<Readonly<Record<BottleField, string>>>(() => ({
    dispensed: reading.today,
    opened: "",
    beyondUse: "",
    concentrationPercent: String(
      runningTreatments(view).find(({ treatment }) => treatment.kind === "atropine")?.treatment
        .concentrationPercent ?? "",
    ),
    volumeMl: "",
    lot: "",
  }))
  const record = useRecord<SupplyBody>(view.child.id, "supplies")
  const faults = faultsOf(
    record.error,
    FIELDS.map(([field]) => field),
  )
  const submit = (event: FormEvent) => {
    event.preventDefault()
    record.mutate(
      { ...id, ...bottleBody(typed) },
      { onSuccess: () => onDone(`Recorded: bottle of ${dateWords(typed.dispensed || reading.today)}.`) },
    )
  }
  return (
    <Dialog title="Bottle" onClose={onClose} failure={record.error}>
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <div className="form-row three">
          {FIELDS.map(([field, label, type, note]) => (
            <Field key={field} label={label} note={note} fault={faults.at(field)}>
              {(control) => (
                <input
                  {...control}
                  type={type}
                  autoComplete="off"
                  value={typed[field]}
                  onChange={(event) => setTyped({ ...typed, [field]: event.target.value })}
                />
              )}
            </Field>
          ))}
        </div>
        <p className="soft small">
          Nights with a bottle in date are what counts as treated. Drops are poisonous when swallowed.
        </p>
        <div className="form-actions">
          <button type="submit" className="primary" disabled={record.isPending}>
            Record bottle
          </button>
        </div>
      </form>
    </Dialog>
  )
}

/** What is sent; a figure that is no number is sent as typed, so that the server refuses it at its field. */
function bottleBody(typed: Readonly<Record<BottleField, string>>): SupplyBody {
  const filled = Object.entries(typed).filter(([, text]) => text.trim() !== "")
  return Object.fromEntries(
    filled.map(([field, text]) => [
      field,
      field === "concentrationPercent" || field === "volumeMl" ? (parseNumber(text) ?? text) : text.trim(),
    ]),
  ) as SupplyBody
}
