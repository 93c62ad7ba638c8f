import { useNavigate } from "@tanstack/react-router"
import { type FormEvent, useState } from "react"
import type { Ancestry, Sex } from "../../engine/course.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Dialog } from "../parts/dialog.js"
import { Choices, Field } from "../parts/field.js"
import { useAddChild } from "../queries.js"

const ANCESTRIES: readonly (readonly [Ancestry, string])[] = [
  ["unstated", "not stated"],
  ["east-asian", "East Asian"],
  ["european", "European"],
  ["south-asian", "South Asian"],
  ["african", "African"],
  ["other", "other"],
]

const SEXES: readonly (readonly [Sex, string])[] = [
  ["female", "girl"],
  ["male", "boy"],
]

export function AddChild({ onClose }: { readonly onClose: () => void }) {
  const navigate = useNavigate()
  const addChild = useAddChild()
  const [id] = useState(newEntryId)
  const [name, setName] = useState("")
  const [number, setNumber] = useState("")
  const [born, setBorn] = useState("")
  const [sex, setSex] = useState<Sex | null>(null)
  const [ancestry, setAncestry] = useState<Ancestry>("unstated")
  const [myopicParents, setMyopicParents] = useState("")
  const faults = faultsOf(addChild.error, ["name", "number", "born", "sex", "ancestry", "myopicParents"])

  const submit = (event: FormEvent) => {
    event.preventDefault()
    addChild.mutate(
      {
        ...id,
        name,
        ...(number.trim() ? { number } : {}),
        born,
        // What was not chosen is sent as not chosen: the server says so at the field.
        sex: sex as Sex,
        ancestry,
        ...(myopicParents === "" ? {} : { myopicParents: Number(myopicParents) as 0 | 1 | 2 }),
      },
      {
        onSuccess: ({ child }) => navigate({ to: "/children/$childId", params: { childId: child.id } }),
      },
    )
  }

  return (
    <Dialog title="Add child" onClose={onClose} failure={addChild.error}>
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <div className="form-row">
          <Field label="Name" fault={faults.at("name")}>
            {(control) => (
              <input
                {...control}
                autoComplete="off"
                value={name}
                onChange={(event) => setName(event.target.value)}
              />
            )}
          </Field>
          <Field label="Number" note="The practice's own, if there is one." fault={faults.at("number")}>
            {(control) => (
              <input
                {...control}
                autoComplete="off"
                value={number}
                onChange={(event) => setNumber(event.target.value)}
              />
            )}
          </Field>
        </div>
        <div className="form-row">
          <Field label="Birth date" fault={faults.at("born")}>
            {(control) => (
              <input
                {...control}
                type="date"
                value={born}
                onChange={(event) => setBorn(event.target.value)}
              />
            )}
          </Field>
          <Choices
            legend="Girl or boy"
            options={SEXES}
            value={sex}
            onChange={setSex}
            note="Growth and reference differ by sex."
            fault={faults.at("sex")}
          />
        </div>
        <div className="form-row">
          <Field
            label="Ancestry"
            note="Chooses the expected growth and the reference; both are always named on the page."
            fault={faults.at("ancestry")}
          >
            {(control) => (
              <select
                {...control}
                value={ancestry}
                onChange={(event) => setAncestry(event.target.value as Ancestry)}
              >
                {ANCESTRIES.map(([value, label]) => (
                  <option key={value} value={value}>
                    {label}
                  </option>
                ))}
              </select>
            )}
          </Field>
          <Field label="Myopic parents" fault={faults.at("myopicParents")}>
            {(control) => (
              <select
                {...control}
                value={myopicParents}
                onChange={(event) => setMyopicParents(event.target.value)}
              >
                <option value="">not known</option>
                <option value="0">none</option>
                <option value="1">one</option>
                <option value="2">both</option>
              </select>
            )}
          </Field>
        </div>
        <div className="form-actions">
          <button type="submit" className="primary" disabled={addChild.isPending}>
            Add child
          </button>
        </div>
      </form>
    </Dialog>
  )
}
