import { type FormEvent, useState } from "react"
import { addDays } from "../../engine/calendar.js"
import { pharmacyInWords } from "../../engine/compounding/usual-pharmacy.js"
import { say } from "../../engine/say.js"
import { inDigits } from "../../engine/words.js"
import type { ChildView } from "../../server/contract/child.js"
import type { AmendmentBody, SupplyBody } from "../../server/contract/entry.js"
import type { PracticeAnswer } from "../../server/contract/practice.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Dialog } from "../parts/dialog.js"
import { Field } from "../parts/field.js"
import { useRecord } from "../queries.js"
import { pharmacyOf } from "./order-sheet.js"
import type { RecordedOrder } from "./recorded-orders.js"

type ReceivedField = "received" | "lot" | "dispensed" | "opened" | "beyondUse"

/** The bottles came: the order is closed, and each bottle is entered with its lot. */
export function ReceiveOrder(props: {
  readonly order: RecordedOrder
  readonly view: ChildView
  readonly practice: PracticeAnswer
  readonly onClose: () => void
  readonly onDone: (message: string) => void
}) {
  const { order, view, practice, onClose, onDone } = props
  const { today } = practice
  const { bottles, concentrationPercent, volumeMl, preserved, pharmacy } = order.body
  // One id each for the order and its bottles: a second attempt after a failure records nothing twice.
  const [ids] = useState(() => Array.from({ length: bottles + 1 }, newEntryId))
  const [typed, setTyped] = useState<Readonly<Record<ReceivedField, string>>>({
    received: today,
    lot: "",
    dispensed: today,
    opened: "",
    beyondUse: "",
  })
  const amend = useRecord<AmendmentBody>(view.child.id, `entries/${order.entryId}/amendment`)
  const record = useRecord<SupplyBody>(view.child.id, "supplies")
  const error = amend.error ?? record.error
  const faults = faultsOf(error, ["fields.received", "lot", "dispensed", "opened", "beyondUse"])

  const submit = async (event: FormEvent) => {
    event.preventDefault()
    const bottle = {
      concentrationPercent,
      volumeMl,
      ...(pharmacy === undefined ? {} : { pharmacy }),
      ...(preserved === undefined ? {} : { preserved }),
      ...filled({ lot: typed.lot, dispensed: typed.dispensed }),
    }
    try {
      // Bottles first: a fault in what is on them must not leave an order closed without its bottles.
      for (let index = 0; index < bottles; index++) {
        const inUse = index === 0 ? filled({ opened: typed.opened, beyondUse: typed.beyondUse }) : {}
        await record.mutateAsync({ ...ids[index + 1], ...bottle, ...inUse })
      }
      const fields = { ...order.body, received: typed.received }
      await amend.mutateAsync({ ...ids[0], fields, reason: say("the bottles came") })
      onDone(
        typed.lot
          ? say("Recorded: {bottles, plural, one {# bottle} other {# bottles}} received, lot {lot}.", {
              bottles,
              lot: typed.lot,
            })
          : say("Recorded: {bottles, plural, one {# bottle} other {# bottles}} received.", { bottles }),
      )
    } catch {
      // Said at the field, from the state of the request.
    }
  }
  const open = (opened: string) => {
    const { daysAfterOpening } = pharmacyOf(order.body, practice)
    const beyondUse = opened === "" ? "" : addDays(opened, daysAfterOpening)
    setTyped({ ...typed, opened, beyondUse })
  }
  const input = (field: ReceivedField, type: "date" | "text", change?: (value: string) => void) => {
    const set = change ?? ((value: string) => setTyped({ ...typed, [field]: value }))
    return (control: object) => (
      <input
        {...control}
        type={type}
        autoComplete="off"
        value={typed[field]}
        onChange={(event) => set(event.target.value)}
      />
    )
  }
  return (
    <Dialog
      title={say("{bottles, plural, one {# bottle} other {# bottles}} received", { bottles })}
      onClose={onClose}
      failure={error}
    >
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <p className="soft">
          {whatCame(order)} {say("Each is entered as a bottle of its own.")}
        </p>
        <div className="form-row three">
          <Field label={say("Received|on")} fault={faults.at("fields.received")}>
            {input("received", "date")}
          </Field>
          <Field label={say("Lot")} note={say("As on the label.")} fault={faults.at("lot")}>
            {input("lot", "text")}
          </Field>
          <Field label={say("Handed out|on")} fault={faults.at("dispensed")}>
            {input("dispensed", "date")}
          </Field>
          <Field
            label={say("First one opened")}
            note={say("Left empty until it is.")}
            fault={faults.at("opened")}
          >
            {input("opened", "date", open)}
          </Field>
          <Field label={say("Its last day of use")} fault={faults.at("beyondUse")}>
            {input("beyondUse", "date")}
          </Field>
        </div>
        <p className="soft small">
          {say(
            "Check strength, lot and date on every label against the order. Drops are poisonous when swallowed.",
          )}
        </p>
        <div className="form-actions">
          <button type="submit" className="primary" disabled={amend.isPending || record.isPending}>
            {say("Record")}
          </button>
        </div>
      </form>
    </Dialog>
  )
}

function whatCame({ body: { concentrationPercent, volumeMl, pharmacy } }: RecordedOrder): string {
  const drops = { percent: inDigits(concentrationPercent), volume: inDigits(volumeMl) }
  return pharmacy
    ? say("Atropine {percent} %, {volume} mL, from {pharmacy}.", {
        ...drops,
        pharmacy: pharmacyInWords(pharmacy),
      })
    : say("Atropine {percent} %, {volume} mL.", drops)
}

const filled = (fields: Readonly<Record<string, string>>) =>
  Object.fromEntries(Object.entries(fields).filter(([, text]) => text.trim() !== ""))
