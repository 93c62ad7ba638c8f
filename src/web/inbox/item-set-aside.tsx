import { type FormEvent, useState } from "react"
import { say } from "../../engine/say.js"
import { Dialog } from "../parts/dialog.js"
import { Field } from "../parts/field.js"
import { type Deciding, saidOf } from "./deciding.js"
import { useDecide } from "./use-inbox.js"

/** Leaves an object out, with a reason. */
export function SetAside({ item, onDone, onClose }: Deciding & { readonly onClose: () => void }) {
  const decide = useDecide(item.id)
  const [reason, setReason] = useState("")
  const submit = (event: FormEvent) => {
    event.preventDefault()
    decide.mutate(
      { to: "set-aside", body: { reason } },
      {
        onSuccess: () => {
          onClose()
          onDone(say("Set aside. Nothing was recorded, and the file is kept."))
        },
      },
    )
  }
  return (
    <Dialog title={say("Set aside")} onClose={onClose} failure={decide.error}>
      <form className="form" onSubmit={submit} noValidate>
        <Field label={say("Reason")} fault={decide.error ? saidOf(decide.error) : undefined}>
          {(control) => (
            <input {...control} value={reason} onChange={(event) => setReason(event.target.value)} />
          )}
        </Field>
        <div className="form-actions">
          <button type="submit" className="primary" disabled={decide.isPending}>
            {say("Set aside")}
          </button>
        </div>
      </form>
    </Dialog>
  )
}
