import { type FormEvent, useState } from "react"
import type { Pharmacy } from "../../engine/practice-rules.js"
import { msg, say } from "../../engine/say.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Dialog } from "../parts/dialog.js"
import { Choices, Field } from "../parts/field.js"
import { useRecordPaper } from "../queries.js"
import { DeviceRows } from "./device-rows.js"
import { DilutionExample } from "./dilution-example.js"
import { draftOf, isWorkable, type PharmacyDraft, pharmacyOfDraft } from "./pharmacy-draft.js"
import { pharmacyRefusal } from "./pharmacy-faults.js"

type TextField = Exclude<keyof PharmacyDraft, "isPreserved" | "devices">

/** Label, the place of its fault in the paper, and what is said under it. */
const FIELDS: readonly (readonly [TextField, label: string, path: string, note?: string])[] = [
  ["name", msg("Name"), "body.name"],
  ["contact", msg("Contact"), "body.contact", msg("For the order; may stay empty.")],
  ["stocks", msg("Stock, % w/v"), "body.stockPercents", msg("Several with a space between.")],
  [
    "stockTolerance",
    msg("Tolerance of the stock, %"),
    "body.stockTolerance",
    msg("How far it may be off its label; empty while not known."),
  ],
  ["bottleMl", msg("Volume of a bottle, mL"), "body.bottleMl"],
  ["daysAfterOpening", msg("Days of use after opening"), "body.daysAfterOpening"],
  ["leadDays", msg("Days from order to bottle"), "body.leadDays"],
  ["smallestVolumeMl", msg("Smallest volume measured, mL"), "body.smallestVolumeMl"],
]

/** One pharmacy, new or edited, with what its figures do to a dilution. */
export function PharmacyForm(props: {
  readonly pharmacy: Pharmacy
  readonly supersedes: string | null
  readonly onClose: () => void
  readonly onDone: (message: string) => void
}) {
  const { pharmacy, supersedes, onClose, onDone } = props
  const [id] = useState(newEntryId)
  const [draft, setDraft] = useState(() => draftOf(pharmacy))
  const record = useRecordPaper("pharmacy")
  const faults = faultsOf(pharmacyRefusal(record.error), [
    ...FIELDS.map(([, , path]) => path),
    "body.devices",
  ])
  const sent = pharmacyOfDraft(pharmacy.id, draft)
  const submit = (event: FormEvent) => {
    event.preventDefault()
    record.mutate(
      { ...id, body: sent, ...(supersedes ? { supersedes, reason: say("edited in the settings") } : {}) },
      { onSuccess: () => onDone(say("Recorded: {what}.", { what: sent.name })) },
    )
  }
  return (
    <Dialog
      title={supersedes ? pharmacy.name : say("Add pharmacy")}
      wide
      onClose={onClose}
      failure={record.error}
    >
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <div className="form-row">
          {FIELDS.map(([field, label, path, note]) => (
            <Field key={field} label={say(label)} note={note && say(note)} fault={faults.at(path)}>
              {(control) => (
                <input
                  {...control}
                  autoComplete="off"
                  value={draft[field]}
                  onChange={(event) => setDraft({ ...draft, [field]: event.target.value })}
                />
              )}
            </Field>
          ))}
        </div>
        <Choices
          legend={say("Bottles")}
          options={[
            ["no", say("without preservative")],
            ["yes", say("with preservative")],
          ]}
          value={draft.isPreserved ? "yes" : "no"}
          onChange={(value) => setDraft({ ...draft, isPreserved: value === "yes" })}
        />
        <DeviceRows
          devices={draft.devices}
          fault={faults.at("body.devices")}
          onChange={(devices) => setDraft({ ...draft, devices })}
        />
        {isWorkable(sent) && <DilutionExample pharmacy={sent} />}
        <div className="form-actions">
          <button type="submit" className="primary" disabled={record.isPending}>
            {say("Record")}
          </button>
        </div>
      </form>
    </Dialog>
  )
}
