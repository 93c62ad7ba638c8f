import { type FormEvent, useState } from "react"
import { dateWords } from "../../chart/words.js"
import { addDays } from "../../engine/calendar.js"
import { say } from "../../engine/say.js"
import type { MissedNightsBody } from "../../server/contract/entry.js"
import type { EnterProps } from "../enter/enter-props.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Dialog } from "../parts/dialog.js"
import { Field } from "../parts/field.js"
import { useRecord } from "../queries.js"
import { parseNumber } from "../visit/readings.js"

/** Nights without a drop, as the family tells them: so many within a span of days. */
export function EnterMissedNights({ view, reading, onClose, onDone }: EnterProps) {
  const [id] = useState(newEntryId)
  const { today, course } = reading
  // Usually asked since the last visit.
  const lastVisit = course.visits
    .map(({ date }) => date)
    .filter((date) => date < today)
    .toSorted()
    .at(-1)
  const [from, setFrom] = useState(lastVisit ?? "")
  const [to, setTo] = useState(addDays(today, -1))
  const [nights, setNights] = useState("")
  const record = useRecord<MissedNightsBody>(view.child.id, "missed-nights")
  const faults = faultsOf(record.error, ["from", "to", "nights"])
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const count = parseNumber(nights) ?? nights
    record.mutate(
      { ...id, from, to, nights: count as number },
      {
        onSuccess: () =>
          onDone(
            say("Recorded: {nights, plural, one {# missed night} other {# missed nights}}, {from} to {to}.", {
              nights: Number(count),
              from: dateWords(from),
              to: dateWords(to),
            }),
          ),
      },
    )
  }
  return (
    <Dialog title={say("Missed nights")} onClose={onClose} failure={record.error}>
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <div className="form-row three">
          <Field label={say("From|day")} fault={faults.at("from")}>
            {(control) => (
              <input
                {...control}
                type="date"
                value={from}
                onChange={(event) => setFrom(event.target.value)}
              />
            )}
          </Field>
          <Field label={say("To, included")} fault={faults.at("to")}>
            {(control) => (
              <input {...control} type="date" value={to} onChange={(event) => setTo(event.target.value)} />
            )}
          </Field>
          <Field label={say("Nights without a drop")} fault={faults.at("nights")}>
            {(control) => (
              <input
                {...control}
                inputMode="numeric"
                autoComplete="off"
                value={nights}
                onChange={(event) => setNights(event.target.value)}
              />
            )}
          </Field>
        </div>
        <p className="soft small">
          {say(
            "They are spread evenly over the nights with a bottle in date and count as untreated. In a pilot of seven children parents told of fewer than an electronic cap counted.",
          )}
        </p>
        <div className="form-actions">
          <button type="submit" className="primary" disabled={record.isPending}>
            {say("Record missed nights")}
          </button>
        </div>
      </form>
    </Dialog>
  )
}
