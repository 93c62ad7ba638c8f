import { type FormEvent, useState } from "react"
import type { SafetyConcern } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import type { AmendmentBody, ConcernBody } from "../../server/contract/entry.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Dialog } from "../parts/dialog.js"
import { Choices, Field } from "../parts/field.js"
import { useRecord, useSession } from "../queries.js"
import { concernTitle, KINDS_BY_HAND, relatednessOptions, seriousnessOptions } from "./concern-words.js"

const FIELDS = ["opened", "kind", "what", "owner", "seriousness", "relatedness", "closed", "outcome"]

interface ConcernFormProps {
  readonly childId: string
  readonly today: string
  /** A record to begin, with what the figures say; or one that is there, with its entry. */
  readonly start: SafetyConcern
  readonly entryId?: string | undefined
  /** The kind is chosen: nothing in the figures raised it. */
  readonly byHand?: boolean
  /** The record is to be closed. */
  readonly closing?: boolean
  readonly onClose: () => void
  readonly onDone: (message: string) => void
}

/** A concern taken up, put right or closed. */
export function ConcernForm(props: ConcernFormProps) {
  const { childId, today, start, entryId, byHand = false, closing = false, onClose, onDone } = props
  const [id] = useState(newEntryId)
  const session = useSession()
  const me = session.data?.person.name
  const [typed, setTyped] = useState<SafetyConcern>({
    ...start,
    ...(start.owner === undefined && me !== undefined ? { owner: me } : {}),
    ...(closing ? { closed: today } : {}),
  })
  const change = (fields: Partial<SafetyConcern>) => setTyped((before) => ({ ...before, ...fields }))
  const add = useRecord<ConcernBody>(childId, "concerns")
  const amend = useRecord<AmendmentBody>(childId, `entries/${entryId}/amendment`)
  const request = entryId === undefined ? add : amend
  const faults = faultsOf(
    request.error,
    FIELDS.map((field) => (entryId === undefined ? field : `fields.${field}`)),
  )
  const faultAt = (field: string) => faults.at(entryId === undefined ? field : `fields.${field}`)
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const fields = withoutEmpty(typed)
    const name = concernTitle(typed.kind)
    const done = (message: string) => ({
      onSuccess: () => {
        onDone(message)
        onClose()
      },
    })
    if (entryId === undefined) {
      add.mutate(
        { ...fields, ...id } as ConcernBody,
        done(
          typed.owner
            ? say("Recorded: {name}, looked after by {owner}.", { name, owner: typed.owner })
            : say("Recorded: {name}, looked after by nobody yet.", { name }),
        ),
      )
      return
    }
    const reason = closing ? say("concern closed") : say("concern put right or taken further")
    amend.mutate(
      { fields: fields as unknown as Record<string, unknown>, reason, ...id },
      done(
        closing
          ? say("Closed: {name}. It stays in the record.", { name })
          : say("Recorded: {name}.", { name }),
      ),
    )
  }
  const title = closing ? say("Close the concern") : entryId ? say("Concern|one") : say("Take up the concern")
  return (
    <Dialog title={title} onClose={onClose} failure={request.error}>
      <form className="form concern-form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        {byHand ? (
          <Field label={say("What kind")} fault={faultAt("kind")}>
            {(control) => (
              <select
                {...control}
                value={typed.kind}
                onChange={(event) => change({ kind: event.target.value })}
              >
                {KINDS_BY_HAND.map((kind) => (
                  <option key={kind} value={kind}>
                    {concernTitle(kind)}
                  </option>
                ))}
              </select>
            )}
          </Field>
        ) : (
          <p>
            <b>{concernTitle(typed.kind)}</b>
          </p>
        )}
        <Field label={say("What|happened")} fault={faultAt("what")}>
          {(control) => (
            <textarea
              {...control}
              value={typed.what}
              onChange={(event) => change({ what: event.target.value })}
            />
          )}
        </Field>
        <div className="form-row">
          <Field
            label={say("Opened on")}
            fault={faultAt("opened")}
            note={byHand ? undefined : say("The day of the visit that raised it.")}
          >
            {(control) => (
              <input
                {...control}
                type="date"
                value={typed.opened}
                readOnly={!byHand}
                onChange={(event) => change({ opened: event.target.value })}
              />
            )}
          </Field>
          <Field label={say("Looked after by")} fault={faultAt("owner")}>
            {(control) => (
              <input
                {...control}
                value={typed.owner ?? ""}
                onChange={(event) => change({ owner: event.target.value })}
              />
            )}
          </Field>
        </div>
        <label className="tick">
          <input
            type="checkbox"
            checked={typed.adverseEvent === true}
            onChange={(event) => change({ adverseEvent: event.target.checked })}
          />
          {say("Keep as an adverse event of the treatment")}
        </label>
        {typed.adverseEvent && (
          <div className="form-row">
            <Choices
              legend={say("Seriousness")}
              options={seriousnessOptions()}
              value={typed.seriousness ?? null}
              onChange={(seriousness) => change({ seriousness })}
              fault={faultAt("seriousness")}
            />
            <Choices
              legend={say("Caused by the treatment")}
              options={relatednessOptions()}
              value={typed.relatedness ?? null}
              onChange={(relatedness) => change({ relatedness })}
              fault={faultAt("relatedness")}
            />
          </div>
        )}
        {closing && (
          <>
            <Field label={say("Closed on|day a concern ended")} fault={faultAt("closed")}>
              {(control) => (
                <input
                  {...control}
                  type="date"
                  value={typed.closed ?? ""}
                  onChange={(event) => change({ closed: event.target.value })}
                />
              )}
            </Field>
            <Field
              label={say("How it ended")}
              note={say("What was found and done; needed to close it.")}
              fault={faultAt("outcome")}
            >
              {(control) => (
                <textarea
                  {...control}
                  value={typed.outcome ?? ""}
                  onChange={(event) => change({ outcome: event.target.value })}
                />
              )}
            </Field>
          </>
        )}
        <div className="form-actions">
          <button type="submit" className="primary" disabled={request.isPending}>
            {closing ? say("Close it") : say("Record")}
          </button>
        </div>
      </form>
    </Dialog>
  )
}

/** Fields left empty are not recorded; what an adverse event alone has goes with it. */
function withoutEmpty(typed: SafetyConcern): SafetyConcern {
  const { seriousness, relatedness, adverseEvent, ...rest } = typed
  const kept = adverseEvent ? { ...rest, adverseEvent, seriousness, relatedness } : rest
  return Object.fromEntries(
    Object.entries(kept).filter(([, value]) => value !== undefined && value !== ""),
  ) as unknown as SafetyConcern
}
