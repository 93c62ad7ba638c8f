import { type FormEvent, useState } from "react"
import type { Contacts } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Field } from "../parts/field.js"
import { useRecordPaper } from "../queries.js"
import type { SettingsPartProps } from "./settings-part-props.js"

type Typed = { readonly [Key in keyof Contacts]-?: string }

/** Whom a family calls: the poison centre of the country and the number for care on the same day. */
export function ContactsPart({ practice, rules, onDone }: SettingsPartProps) {
  const paper = rules.papers.findLast(
    ({ kind, supersededBy }) => kind === "contacts" && supersededBy === null,
  )
  const { contacts } = practice.rules
  const [id, setId] = useState(newEntryId)
  const [typed, setTyped] = useState<Typed>({
    poisonCentre: contacts.poisonCentre ?? "",
    urgent: contacts.urgent ?? "",
    country: contacts.country ?? "",
  })
  const change = (fields: Partial<Typed>) => setTyped((before) => ({ ...before, ...fields }))
  const record = useRecordPaper("contacts")
  const faults = faultsOf(record.error, ["body.poisonCentre", "body.urgent", "body.country"])
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const body = Object.fromEntries(
      Object.entries({ ...typed, country: typed.country.toUpperCase() })
        .map(([key, value]) => [key, value.trim()])
        .filter(([, value]) => value !== ""),
    )
    const superseding = paper ? { supersedes: paper.id, reason: say("contacts changed") } : {}
    record.mutate(
      { body, ...superseding, ...id },
      {
        onSuccess: () => {
          setId(newEntryId())
          onDone(say("Recorded: the practice’s contacts."))
        },
      },
    )
  }
  return (
    <section className="card" aria-label={say("Contacts")}>
      <p>
        {say(
          "These stand on every child’s Safety page and on what families are given. Lengthwise ships no numbers: they differ by country, and a wrong one is worse than none.",
        )}
      </p>
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <div className="form-row">
          <Field
            label={say("Poison centre")}
            note={say("Telephone of the poison centre of your country.")}
            fault={faults.at("body.poisonCentre")}
          >
            {(control) => (
              <input
                {...control}
                value={typed.poisonCentre}
                onChange={(event) => change({ poisonCentre: event.target.value })}
              />
            )}
          </Field>
          <Field
            label={say("Urgent contact")}
            note={say("Where a family calls for care on the same day, also outside your hours.")}
            fault={faults.at("body.urgent")}
          >
            {(control) => (
              <input
                {...control}
                value={typed.urgent}
                onChange={(event) => change({ urgent: event.target.value })}
              />
            )}
          </Field>
          <Field
            label={say("Country")}
            note={say("Two letters, such as IE.")}
            fault={faults.at("body.country")}
          >
            {(control) => (
              <input
                {...control}
                value={typed.country}
                maxLength={2}
                onChange={(event) => change({ country: event.target.value })}
              />
            )}
          </Field>
        </div>
        <div className="form-actions">
          <button type="submit" className="primary" disabled={record.isPending}>
            {say("Record contacts")}
          </button>
        </div>
      </form>
    </section>
  )
}
