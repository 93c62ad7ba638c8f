import { type FormEvent, type ReactNode, useState } from "react"
import { MESSAGE_TOPICS, type MessageTopic, REACHED_BY } from "../../engine/messages/family-contact.js"
import { LANGUAGE_NAMES, LANGUAGES, say } from "../../engine/say.js"
import type { FamilyContactBody } from "../../server/contract/family-contact.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Choices, Field } from "../parts/field.js"
import { useRecord } from "../queries.js"
import { type ContactDraft, contactOf } from "./contact-draft.js"
import { REACHED_WORDS, TOPIC_WORDS } from "./messages-words.js"

const FIELDS = [
  "name",
  "relation",
  "childCalled",
  "language",
  "email",
  "telephone",
  "address",
  "reachedBy",
  "agreed",
]

interface ContactFormProps {
  readonly childId: string
  /** The contact it takes the place of. */
  readonly entryId: string | undefined
  readonly today: string
  readonly start: ContactDraft
  readonly onDone: () => void
}

/** Who is spoken with about a child, in which language, how, and about what. */
export function ContactForm({ childId, entryId, today, start, onDone }: ContactFormProps) {
  const [id] = useState(newEntryId)
  const [typed, setTyped] = useState(start)
  const change = (fields: Partial<ContactDraft>) => setTyped((before) => ({ ...before, ...fields }))
  const record = useRecord<FamilyContactBody>(childId, "family")
  const faults = faultsOf(
    record.error,
    FIELDS.map((field) => `contact.${field}`),
  )
  const at = (field: string) => faults.at(`contact.${field}`)
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const superseding = entryId ? { supersedes: entryId, reason: "contact changed" } : {}
    record.mutate({ contact: contactOf(typed), ...superseding, ...id }, { onSuccess: onDone })
  }
  const text = (
    field: "name" | "relation" | "childCalled" | "email" | "telephone",
    {
      label,
      note,
      type = "text",
    }: { readonly label: string; readonly note?: ReactNode; readonly type?: string },
  ) => (
    <Field label={label} note={note} fault={at(field)}>
      {(control) => (
        <input
          {...control}
          type={type}
          autoComplete="off"
          value={typed[field]}
          onChange={(event) => change({ [field]: event.target.value })}
        />
      )}
    </Field>
  )
  const agree = (topic: MessageTopic, isOn: boolean) =>
    change({
      agreedTo: MESSAGE_TOPICS.filter((one) => (one === topic ? isOn : typed.agreedTo.includes(one))),
    })
  return (
    <form className="form" onSubmit={submit} noValidate>
      <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
      <div className="form-row">
        {text("name", { label: say("Name") })}
        {text("relation", {
          label: say("Relation to the child"),
          note: say("Such as mother, grandfather, guardian."),
        })}
        {text("childCalled", {
          label: say("Messages call the child"),
          note: say("Such as the first name. Left empty, they say “your child”."),
        })}
      </div>
      <Choices
        legend={say("Language of messages")}
        options={LANGUAGES.map((language) => [language, LANGUAGE_NAMES[language]] as const)}
        value={typed.language}
        onChange={(language) => change({ language })}
        fault={at("language")}
      />
      <div className="form-row">
        {text("email", { label: say("E-mail"), type: "email" })}
        {text("telephone", {
          label: say("Telephone"),
          note: say("With its country code, such as +353 1 555 0100."),
          type: "tel",
        })}
      </div>
      <Field label={say("Postal address")} fault={at("address")}>
        {(control) => (
          <textarea
            {...control}
            rows={3}
            value={typed.address}
            onChange={(event) => change({ address: event.target.value })}
          />
        )}
      </Field>
      <Choices
        legend={say("How the family wishes to be reached")}
        options={REACHED_BY.map((reached) => [reached, say(REACHED_WORDS[reached])] as const)}
        value={typed.reachedBy}
        onChange={(reachedBy) => change({ reachedBy })}
        fault={at("reachedBy")}
      />
      <fieldset className="field">
        <legend>{say("The family agreed to")}</legend>
        <div className="ticks">
          {MESSAGE_TOPICS.map((topic) => (
            <label key={topic}>
              <input
                type="checkbox"
                checked={typed.agreedTo.includes(topic)}
                onChange={(event) => agree(topic, event.target.checked)}
              />
              {say(TOPIC_WORDS[topic])}
            </label>
          ))}
        </div>
        <p className="field-note">
          {say(
            "Tick only what the family said. Without it no message is ever sent; it can be withdrawn at any time.",
          )}
        </p>
      </fieldset>
      {typed.agreedTo.length > 0 && (
        <Field label={say("Agreed on")} fault={at("agreed")}>
          {(control) => (
            <input
              {...control}
              type="date"
              max={today}
              value={typed.agreedOn}
              onChange={(event) => change({ agreedOn: event.target.value })}
            />
          )}
        </Field>
      )}
      <div className="form-actions">
        <button type="submit" className="primary" disabled={record.isPending}>
          {say("Record contact")}
        </button>
      </div>
    </form>
  )
}
