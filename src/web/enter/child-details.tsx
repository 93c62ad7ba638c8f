import { type FormEvent, useState } from "react"
import { protocolsOf } from "../../engine/protocol/protocols-of.js"
import { protocolTitle } from "../../engine/protocol/titles.js"
import { say } from "../../engine/say.js"
import type { ChildView, NewChildBody } from "../../server/contract/child.js"
import { CHILD_PATHS, ChildFields, childBody, type TypedChild } from "../child/child-fields.js"
import { faultsOf } from "../faults.js"
import { Dialog } from "../parts/dialog.js"
import { Field } from "../parts/field.js"
import { useRecord } from "../queries.js"
import type { EnterProps } from "./enter-props.js"

interface Correction {
  readonly child: Omit<NewChildBody, "id">
  readonly reason: string
}

/** Who the child is and which protocol it follows, put right with a reason. */
export function ChildDetails({ view, reading, onClose, onDone }: EnterProps) {
  const [typed, setTyped] = useState(() => typedOf(view))
  const [protocol, setProtocol] = useState(view.course.child.protocol ?? "")
  const [reason, setReason] = useState("")
  const record = useRecord<Correction>(view.child.id, "correction")
  const paths = [...CHILD_PATHS.map((path) => `child.${path}`), "child.protocol", "reason"]
  const faults = faultsOf(record.error, paths)
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const child = { ...childBody(typed), ...(protocol === "" ? {} : { protocol }) }
    record.mutate({ child, reason }, { onSuccess: () => onDone(say("Recorded: details of the child.")) })
  }
  return (
    <Dialog title={say("Details of the child")} onClose={onClose} failure={record.error}>
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <ChildFields typed={typed} onChange={setTyped} faultAt={(path) => faults.at(`child.${path}`)} />
        <div className="form-row">
          <Field
            label={say("Protocol")}
            note={say("In force now: {protocol}.", { protocol: protocolTitle(reading.protocol) })}
            fault={faults.at("child.protocol")}
          >
            {(control) => (
              <select {...control} value={protocol} onChange={(event) => setProtocol(event.target.value)}>
                <option value="">{say("the one that fits the treatment")}</option>
                {protocolsOf(reading.rules).map((one) => (
                  <option key={one.id} value={one.id}>
                    {protocolTitle(one)}
                  </option>
                ))}
              </select>
            )}
          </Field>
          <Field label={say("Why is it changed?")} fault={faults.at("reason")}>
            {(control) => (
              <input {...control} value={reason} onChange={(event) => setReason(event.target.value)} />
            )}
          </Field>
        </div>
        <div className="form-actions">
          <button type="submit" className="primary" disabled={record.isPending}>
            {say("Record")}
          </button>
        </div>
      </form>
    </Dialog>
  )
}

function typedOf({ child, course }: ChildView): TypedChild {
  const { ancestry, myopicParents } = course.child
  return {
    name: child.name,
    number: child.number ?? "",
    born: child.born,
    sex: child.sex,
    ancestry: ancestry ?? "unstated",
    myopicParents: myopicParents === undefined ? "" : String(myopicParents),
  }
}
