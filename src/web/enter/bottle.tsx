import { type FormEvent, useId, useState } from "react"
import { dateWords } from "../../chart/words.js"
import type { Course } from "../../engine/course.js"
import { msg, say, withDecimalSign } from "../../engine/say.js"
import type { SupplyBody } from "../../server/contract/entry.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Dialog } from "../parts/dialog.js"
import { Field } from "../parts/field.js"
import { useRecord } from "../queries.js"
import { parseNumber } from "../visit/readings.js"
import type { EnterProps } from "./enter-props.js"
import { runningTreatments } from "./running-treatments.js"

type BottleField =
  | "dispensed"
  | "opened"
  | "beyondUse"
  | "concentrationPercent"
  | "volumeMl"
  | "lot"
  | "pharmacy"

const FIELDS: readonly (readonly [BottleField, label: string, type: "date" | "text", note?: string])[] = [
  ["dispensed", msg("Handed out"), "date"],
  ["opened", msg("Opened|bottle"), "date", msg("Blank while it is not open.")],
  ["beyondUse", msg("Last day of use"), "date", msg("Once opened. A month is taken where none is given.")],
  ["concentrationPercent", msg("Strength, % w/v"), "text"],
  ["volumeMl", msg("Volume, mL"), "text"],
  ["lot", msg("Lot"), "text"],
  ["pharmacy", msg("Pharmacy"), "text"],
]

/** A bottle that was handed out, and when it was opened where that is known. */
export function EnterBottle({ view, reading, onClose, onDone }: EnterProps) {
  const [id] = useState(newEntryId)
  const [typed, setTyped] = useState<Readonly<Record<BottleField, string>>>(() => ({
    dispensed: reading.today,
    opened: "",
    beyondUse: "",
    concentrationPercent: withDecimalSign(
      String(
        runningTreatments(view).find(({ treatment }) => treatment.kind === "atropine")?.treatment
          .concentrationPercent ?? "",
      ),
    ),
    volumeMl: "",
    lot: "",
    // The one that made the last bottle, as a rule the one that makes the next.
    pharmacy: (reading.course.supplies ?? []).findLast(({ pharmacy }) => pharmacy)?.pharmacy ?? "",
  }))
  const record = useRecord<SupplyBody>(view.child.id, "supplies")
  const faults = faultsOf(
    record.error,
    FIELDS.map(([field]) => field),
  )
  // The rule about lots names places of the file; here it is said as the person in front of the bottle meets it.
  const faultAt = (field: BottleField) => {
    const fault = faults.at(field)
    return field === "lot" && fault !== undefined && isOfAnotherStrength(reading.course, typed)
      ? say(
          "This lot stands in the record with another strength. One lot is one making: look at the label of both bottles.",
        )
      : fault
  }
  const pharmacies = useId()
  const submit = (event: FormEvent) => {
    event.preventDefault()
    record.mutate(
      { ...id, ...bottleBody(typed) },
      {
        onSuccess: () =>
          onDone(say("Recorded: bottle of {day}.", { day: dateWords(typed.dispensed || reading.today) })),
      },
    )
  }
  return (
    <Dialog title={say("Bottle")} onClose={onClose} failure={record.error}>
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <div className="form-row three">
          {FIELDS.map(([field, label, type, note]) => (
            <Field key={field} label={say(label)} note={note && say(note)} fault={faultAt(field)}>
              {(control) => (
                <input
                  {...control}
                  type={type}
                  autoComplete="off"
                  list={field === "pharmacy" ? pharmacies : undefined}
                  value={typed[field]}
                  onChange={(event) => setTyped({ ...typed, [field]: event.target.value })}
                />
              )}
            </Field>
          ))}
        </div>
        <datalist id={pharmacies}>
          {reading.rules.pharmacies.map(({ id: key, name }) => (
            <option key={key} value={name} />
          ))}
        </datalist>
        <p className="soft small">
          {say(
            "Nights with a bottle in date are what counts as treated. Drops are poisonous when swallowed.",
          )}
        </p>
        <div className="form-actions">
          <button type="submit" className="primary" disabled={record.isPending}>
            {say("Record bottle")}
          </button>
        </div>
      </form>
    </Dialog>
  )
}

/** Whether a bottle of this lot and pharmacy is on record with another strength: the one rule there is about lots. */
function isOfAnotherStrength(
  { supplies = [] }: Course,
  { lot, pharmacy, concentrationPercent }: Readonly<Record<BottleField, string>>,
): boolean {
  const plain = (text: string | undefined) => (text ?? "").trim().toLowerCase()
  const percent = parseNumber(concentrationPercent)
  return supplies.some(
    (bottle) =>
      plain(lot) !== "" &&
      plain(bottle.lot) === plain(lot) &&
      plain(bottle.pharmacy) === plain(pharmacy) &&
      bottle.concentrationPercent !== percent,
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
