import { type FormEvent, useState } from "react"
import { say } from "../../engine/say.js"
import type { InboxItemAnswer } from "../../server/contract/inbox.js"
import { type CHILD_PATHS, ChildFields, childBody, NO_CHILD, type TypedChild } from "../child/child-fields.js"
import { Refused } from "../client.js"
import { Dialog } from "../parts/dialog.js"
import { type Deciding, saidOf } from "./deciding.js"
import { useDecide } from "./use-inbox.js"

/** A child made of what the file says, which a person sees and puts right first. */
export function NewChild({ item, onDone, onClose }: Deciding & { readonly onClose: () => void }) {
  const decide = useDecide(item.id)
  const [typed, setTyped] = useState(() => typedOf(item))
  const faultAt = (path: (typeof CHILD_PATHS)[number]) =>
    decide.error instanceof Refused
      ? decide.error.problems.find((problem) => problem.path === `newChild.${path}`)?.allowed
      : undefined
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const newChild = childBody(typed)
    decide.mutate(
      { to: "take", body: { newChild } },
      {
        onSuccess: () => {
          onClose()
          onDone(say("Put under {name}.", { name: typed.name }))
        },
      },
    )
  }
  return (
    <Dialog title={say("New child from this")} onClose={onClose} failure={decide.error}>
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{decide.error && <p className="form-fault">{saidOf(decide.error)}</p>}</div>
        <ChildFields typed={typed} onChange={setTyped} faultAt={faultAt} />
        <div className="form-actions">
          <button type="submit" className="primary" disabled={decide.isPending}>
            {say("Add child")}
          </button>
        </div>
      </form>
    </Dialog>
  )
}

function typedOf({ identity, childToo }: InboxItemAnswer): TypedChild {
  const { name = "", number = "", born = "", sex = null } = identity
  const { ancestry = NO_CHILD.ancestry, myopicParents } = childToo
  return {
    ...{ name, number, born, sex, ancestry },
    myopicParents: myopicParents === undefined ? "" : String(myopicParents),
  }
}
