import { type FormEvent, useState } from "react"
import { dateWords } from "../../chart/words.js"
import type { CalendarDate } from "../../engine/course.js"
import { msg, say } from "../../engine/say.js"
import type { AmendmentBody } from "../../server/contract/entry.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Dialog } from "../parts/dialog.js"
import { Field } from "../parts/field.js"
import { useRecord } from "../queries.js"
import type { RecordedOrder } from "./recorded-orders.js"

export type StepKind = "confirm" | "cancel"

const STEPS = {
  confirm: {
    title: msg("Confirmed by the pharmacy"),
    field: "confirmed",
    label: msg("Confirmed on"),
    action: msg("Record"),
    done: msg("Recorded: the pharmacy confirmed the order of {date}."),
  },
  cancel: {
    title: msg("Call off the order"),
    field: "cancelled",
    label: msg("Called off on"),
    action: msg("Call off"),
    done: msg("Called off: the order of {date}."),
  },
} as const

/** The pharmacy said yes, or the order is called off: a day, and for the latter why. */
export function OrderStep(props: {
  readonly kind: StepKind
  readonly order: RecordedOrder
  readonly childId: string
  readonly today: CalendarDate
  readonly onClose: () => void
  readonly onDone: (message: string) => void
}) {
  const { kind, order, childId, today, onClose, onDone } = props
  const { title, field, label, action, done } = STEPS[kind]
  const [id] = useState(newEntryId)
  const [day, setDay] = useState(today)
  const [reason, setReason] = useState("")
  const amend = useRecord<AmendmentBody>(childId, `entries/${order.entryId}/amendment`)
  const faults = faultsOf(amend.error, [`fields.${field}`, "reason"])
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const why = kind === "confirm" ? say("the pharmacy confirmed it") : reason
    amend.mutate(
      { ...id, fields: { ...order.body, [field]: day }, reason: why },
      { onSuccess: () => onDone(say(done, { date: dateWords(order.body.date) })) },
    )
  }
  return (
    <Dialog title={say(title)} onClose={onClose} failure={amend.error}>
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <Field label={say(label)} fault={faults.at(`fields.${field}`)}>
          {(control) => (
            <input {...control} type="date" value={day} onChange={(event) => setDay(event.target.value)} />
          )}
        </Field>
        {kind === "cancel" && (
          <Field label={say("Why?")} fault={faults.at("reason")}>
            {(control) => (
              <input {...control} value={reason} onChange={(event) => setReason(event.target.value)} />
            )}
          </Field>
        )}
        <div className="form-actions">
          <button type="submit" className="primary" disabled={amend.isPending}>
            {say(action)}
          </button>
        </div>
      </form>
    </Dialog>
  )
}
