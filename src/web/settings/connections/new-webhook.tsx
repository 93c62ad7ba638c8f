import { type FormEvent, useState } from "react"
import { WEBHOOK_EVENTS, type WebhookEvent } from "../../../engine/access/webhook-events.js"
import { say } from "../../../engine/say.js"
import { faultsOf } from "../../faults.js"
import { Dialog } from "../../parts/dialog.js"
import { Field } from "../../parts/field.js"
import { EVENT_WORDS } from "./connection-words.js"
import { ShownOnce } from "./shown-once.js"
import { Ticks } from "./ticks.js"
import { useAddWebhook } from "./use-connections.js"

/** Adds an address and shows the secret that signs what it is sent, this once. */
export function NewWebhook({ onClose }: { readonly onClose: () => void }) {
  const add = useAddWebhook()
  const [url, setUrl] = useState("")
  const [events, setEvents] = useState<readonly WebhookEvent[]>(WEBHOOK_EVENTS)
  const faults = faultsOf(add.error, ["url", "events"])
  const submit = (event: FormEvent) => {
    event.preventDefault()
    add.mutate({ url, events: [...events] })
  }
  return (
    <Dialog title={say("New address")} onClose={onClose} failure={add.error}>
      {add.data ? (
        <ShownOnce
          label={say("The secret of the signature")}
          note={say(
            "This is the only time it is shown. By it the other program knows that a notice comes from here.",
          )}
          secret={add.data.secret}
          onClose={onClose}
        />
      ) : (
        <form className="form" onSubmit={submit} noValidate>
          <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
          <Field
            label={say("Address")}
            note={say("It begins with https and leads to the internet, or names this machine itself.")}
            fault={faults.at("url")}
          >
            {(control) => (
              <input
                {...control}
                type="url"
                autoComplete="off"
                value={url}
                onChange={({ target }) => setUrl(target.value)}
              />
            )}
          </Field>
          <Ticks
            legend={say("It is told when")}
            options={WEBHOOK_EVENTS.map((event) => [event, say(EVENT_WORDS[event])] as const)}
            chosen={events}
            onChange={setEvents}
            fault={faults.at("events")}
          />
          <div className="form-actions">
            <button type="submit" className="primary" disabled={add.isPending}>
              {say("Add the address")}
            </button>
          </div>
        </form>
      )}
    </Dialog>
  )
}
