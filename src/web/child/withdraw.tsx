import { type FormEvent, useState } from "react"
import { dateWords } from "../../chart/words.js"
import { say } from "../../engine/say.js"
import type { ChildView } from "../../server/contract/child.js"
import type { WithdrawalBody } from "../../server/contract/entry.js"
import { faultsOf } from "../faults.js"
import { Dialog } from "../parts/dialog.js"
import { Field } from "../parts/field.js"
import { useRecord } from "../queries.js"
import { entryKindInWords } from "./kind-words.js"

/** Takes an entry back with a reason; it stays in the record. */
export function Withdraw(props: {
  readonly entry: ChildView["entries"][number]
  readonly childId: string
  readonly onClose: () => void
  readonly onDone: (message: string) => void
}) {
  const { entry, childId, onClose, onDone } = props
  const [reason, setReason] = useState("")
  const withdraw = useRecord<WithdrawalBody>(childId, `entries/${entry.id}/withdrawal`)
  const faults = faultsOf(withdraw.error, ["reason"])
  const kind = entryKindInWords(entry.kind)
  const submit = (event: FormEvent) => {
    event.preventDefault()
    withdraw.mutate(
      { reason },
      {
        onSuccess: () => {
          onDone(say("The {kind} is withdrawn; it stays in the record with its reason.", { kind }))
          onClose()
        },
      },
    )
  }
  return (
    <Dialog
      title={
        entry.date
          ? say("Withdraw the {kind} of {day}", { kind, day: dateWords(entry.date) })
          : say("Withdraw the {kind}", { kind })
      }
      onClose={onClose}
      failure={withdraw.error}
    >
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <Field
          label={say("Why?")}
          note={say("For an entry that should not be there at all, such as one made for the wrong child.")}
          fault={faults.at("reason")}
        >
          {(control) => (
            <input {...control} value={reason} onChange={(event) => setReason(event.target.value)} />
          )}
        </Field>
        <div className="form-actions">
          <button type="submit" className="primary" disabled={withdraw.isPending}>
            {say("Withdraw")}
          </button>
        </div>
      </form>
    </Dialog>
  )
}
