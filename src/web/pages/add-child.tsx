import { useNavigate } from "@tanstack/react-router"
import { type FormEvent, useState } from "react"
import { say } from "../../engine/say.js"
import { CHILD_PATHS, ChildFields, childBody, NO_CHILD } from "../child/child-fields.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Dialog } from "../parts/dialog.js"
import { useAddChild } from "../queries.js"

export function AddChild({ onClose }: { readonly onClose: () => void }) {
  const navigate = useNavigate()
  const addChild = useAddChild()
  const [id] = useState(newEntryId)
  const [typed, setTyped] = useState(NO_CHILD)
  const faults = faultsOf(addChild.error, CHILD_PATHS)

  const submit = (event: FormEvent) => {
    event.preventDefault()
    addChild.mutate(
      { ...id, ...childBody(typed) },
      {
        onSuccess: ({ child }) => navigate({ to: "/children/$childId", params: { childId: child.id } }),
      },
    )
  }

  return (
    <Dialog title={say("Add child")} onClose={onClose} failure={addChild.error}>
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <ChildFields typed={typed} onChange={setTyped} faultAt={faults.at} />
        <div className="form-actions">
          <button type="submit" className="primary" disabled={addChild.isPending}>
            {say("Add child")}
          </button>
        </div>
      </form>
    </Dialog>
  )
}
