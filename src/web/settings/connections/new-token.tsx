import { type FormEvent, useState } from "react"
import { SCOPES, type Scope } from "../../../engine/access/scopes.js"
import { say } from "../../../engine/say.js"
import { faultsOf } from "../../faults.js"
import { Dialog } from "../../parts/dialog.js"
import { Field } from "../../parts/field.js"
import { SCOPE_WORDS } from "./connection-words.js"
import { ShownOnce } from "./shown-once.js"
import { Ticks } from "./ticks.js"
import { useAddToken } from "./use-connections.js"

const LIVES_DAYS = [30, 90, 365, 731] as const
const USUAL_DAYS = 365

/** Makes a token and shows it, this once. */
export function NewToken({ onClose }: { readonly onClose: () => void }) {
  const add = useAddToken()
  const [name, setName] = useState("")
  const [scopes, setScopes] = useState<readonly Scope[]>(["read"])
  const [days, setDays] = useState<number>(USUAL_DAYS)
  const faults = faultsOf(add.error, ["name", "scopes", "days"])
  const submit = (event: FormEvent) => {
    event.preventDefault()
    add.mutate({ name, scopes: [...scopes], days })
  }
  return (
    <Dialog title={say("New token")} onClose={onClose} failure={add.error}>
      {add.data ? (
        <ShownOnce
          label={say("The token")}
          note={say("This is the only time it is shown. Whoever has it can do what you chose, in your name.")}
          secret={add.data.secret}
          onClose={onClose}
        />
      ) : (
        <form className="form" onSubmit={submit} noValidate>
          <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
          <Field
            label={say("Name")}
            note={say("Which program it is for. What it records is shown with your name.")}
            fault={faults.at("name")}
          >
            {(control) => (
              <input
                {...control}
                type="text"
                autoComplete="off"
                value={name}
                onChange={({ target }) => setName(target.value)}
              />
            )}
          </Field>
          <Ticks
            legend={say("It may")}
            options={SCOPES.map((scope) => [scope, say(SCOPE_WORDS[scope])] as const)}
            chosen={scopes}
            onChange={setScopes}
            fault={faults.at("scopes")}
          />
          <Field label={say("Opens for")} fault={faults.at("days")}>
            {(control) => (
              <select {...control} value={days} onChange={({ target }) => setDays(Number(target.value))}>
                {LIVES_DAYS.map((each) => (
                  <option key={each} value={each}>
                    {say("{days, plural, one {# day} other {# days}}", { days: each })}
                  </option>
                ))}
              </select>
            )}
          </Field>
          <div className="form-actions">
            <button type="submit" className="primary" disabled={add.isPending}>
              {say("Make the token")}
            </button>
          </div>
        </form>
      )}
    </Dialog>
  )
}
