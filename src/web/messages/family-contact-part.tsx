import "./messages.css"
import { useState } from "react"
import type { FamilyContact } from "../../engine/messages/family-contact.js"
import { LANGUAGE_NAMES, listed, say, shortDayInWords } from "../../engine/say.js"
import type { FamilyContactBody } from "../../server/contract/family-contact.js"
import type { ChildPartProps } from "../child/child-part-props.js"
import { failureInWords } from "../client.js"
import { newEntryId } from "../entry-id.js"
import { Dialog } from "../parts/dialog.js"
import { useRecord } from "../queries.js"
import { contactDraft, contactOf } from "./contact-draft.js"
import { ContactForm } from "./contact-form.js"
import { REACHED_WORDS, TOPIC_WORDS } from "./messages-words.js"

/** Whom the practice speaks with about this child, how, and what that family agreed to be told. */
export function FamilyContactPart({ view, practice, onDone }: ChildPartProps) {
  const entry = view.entries.findLast(({ kind, supersededBy }) => kind === "family" && supersededBy === null)
  const contact = entry ? (entry.body as FamilyContact) : null
  const [editing, setEditing] = useState(false)
  const form = { childId: view.child.id, entryId: entry?.id, today: practice.today }
  return (
    <section className="card family-contact" aria-label={say("Contact")}>
      {contact === null && (
        <ContactForm
          {...form}
          start={contactDraft(null, practice.today)}
          onDone={() => onDone(say("Recorded: the family’s contact."))}
        />
      )}
      {contact !== null && (
        <>
          <Facts contact={contact} />
          <div className="form-actions">
            <button type="button" className="primary" onClick={() => setEditing(true)}>
              {say("Put right …")}
            </button>
            {contact.agreed && contact.agreed.until === undefined && (
              <Stop {...form} contact={contact} onDone={onDone} />
            )}
          </div>
        </>
      )}
      {editing && contact && (
        <Dialog title={say("Contact")} onClose={() => setEditing(false)} wide>
          <ContactForm
            {...form}
            start={contactDraft(contact, practice.today)}
            onDone={() => {
              setEditing(false)
              onDone(say("Recorded: the family’s contact."))
            }}
          />
        </Dialog>
      )}
    </section>
  )
}

function Facts({ contact }: { readonly contact: FamilyContact }) {
  const { name, relation, language, email, telephone, address, reachedBy, childCalled } = contact
  return (
    <dl className="facts">
      <dt>{say("Name")}</dt>
      <dd>
        <bdi>{name}</bdi>, {relation}
      </dd>
      <dt>{say("Language of messages")}</dt>
      <dd lang={language}>{LANGUAGE_NAMES[language]}</dd>
      {email && (
        <>
          <dt>{say("E-mail")}</dt>
          <dd>{email}</dd>
        </>
      )}
      {telephone && (
        <>
          <dt>{say("Telephone")}</dt>
          <dd>{telephone}</dd>
        </>
      )}
      {address && (
        <>
          <dt>{say("Postal address")}</dt>
          <dd className="address">{address}</dd>
        </>
      )}
      {childCalled && (
        <>
          <dt>{say("Messages call the child")}</dt>
          <dd>{childCalled}</dd>
        </>
      )}
      <dt>{say("Reached")}</dt>
      <dd>{say(REACHED_WORDS[reachedBy])}</dd>
      <dt>{say("Agreed to")}</dt>
      <dd>{agreementInWords(contact)}</dd>
    </dl>
  )
}

function agreementInWords({ agreed }: FamilyContact): string {
  if (!agreed) return say("Nothing: no message is sent.")
  const what = listed(agreed.to.map((topic) => say(TOPIC_WORDS[topic])))
  const on = shortDayInWords(agreed.on)
  return agreed.until === undefined
    ? say("{what}, on {on}", { what, on })
    : say("{what}, on {on}; withdrawn from {until}: no message is sent.", {
        what,
        on,
        until: shortDayInWords(agreed.until),
      })
}

/** The family wants no more messages: one press, at once, since nobody should have to argue for it. */
function Stop(props: {
  readonly childId: string
  readonly entryId: string | undefined
  readonly today: string
  readonly contact: FamilyContact
  readonly onDone: (message: string) => void
}) {
  const { contact, entryId, today } = props
  const { agreed } = contact
  const [id] = useState(newEntryId)
  const record = useRecord<FamilyContactBody>(props.childId, "family")
  if (!agreed) return null
  const stop = () => {
    const ended = {
      ...contactOf(contactDraft(contact, today)),
      agreed: { ...agreed, to: [...agreed.to], until: today },
    }
    record.mutate(
      { contact: ended, supersedes: entryId, reason: "agreement withdrawn", ...id },
      { onSuccess: () => props.onDone(say("No more messages to this family; what waited is called off.")) },
    )
  }
  return (
    <>
      <button type="button" disabled={record.isPending} onClick={stop}>
        {say("Stop messages")}
      </button>
      <span role="alert">{record.error && failureInWords(record.error)}</span>
    </>
  )
}
