import { Link } from "@tanstack/react-router"
import type { ConsentState } from "../../engine/consent/consent-in-force.js"
import { say } from "../../engine/say.js"
import { inWords, sentence } from "../format.js"
import { Field } from "../parts/field.js"

/** Whether a consent in force covers the order; where none does, what to do, and the way past it with a reason. */
export function ConsentNotice(props: {
  readonly consent: ConsentState
  readonly childId: string
  readonly override: string
  readonly fault: string | undefined
  readonly onChange: (override: string) => void
}) {
  const { consent, childId, override, fault, onChange } = props
  if (consent.kind === "in-force")
    return (
      <p className="soft">
        {inWords(say("Consent in force, given on {date}.", { date: consent.consent.date }))}
      </p>
    )
  return (
    <div className="order-blocked">
      <p>
        <strong>{say("Held back for consent.")}</strong> {sentence(consent.why)}{" "}
        <Link to="/children/$childId/$part" params={{ childId, part: "consent" }}>
          {say("To the consent")}
        </Link>
      </p>
      <Field
        label={say("Reason to order all the same")}
        note={say("Kept with the order. Without it the order is not taken.")}
        fault={fault}
      >
        {(control) => (
          <input {...control} value={override} onChange={(event) => onChange(event.target.value)} />
        )}
      </Field>
    </div>
  )
}
