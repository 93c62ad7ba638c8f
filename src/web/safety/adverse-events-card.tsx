import { useState } from "react"
import { dateWords } from "../../chart/words.js"
import { adverseEvents } from "../../engine/safety/adverse-events.js"
import type { ChildView } from "../../server/contract/child.js"
import { sentence } from "../format.js"
import { Field } from "../parts/field.js"
import type { CourseReading } from "../reading.js"
import { concernTitle } from "./concern-words.js"

/** The child's adverse events, and the record of the whole practice to take away. */
export function AdverseEventsCard({
  view,
  reading,
}: {
  readonly view: ChildView
  readonly reading: CourseReading
}) {
  const { course, today } = reading
  const events = adverseEvents({ course, child: { number: view.child.number }, to: today })
  const [from, setFrom] = useState("")
  const [to, setTo] = useState("")
  const [names, setNames] = useState(false)
  const address = (format: "csv" | "json") =>
    `/api/adverse-events?${new URLSearchParams({
      format,
      ...(from ? { from } : {}),
      ...(to ? { to } : {}),
      ...(names ? { names: "yes" } : {}),
    })}`
  return (
    <section className="card" aria-labelledby="adverse-events">
      <h2 id="adverse-events">Adverse events</h2>
      {events.length === 0 ? (
        <p>None is on record for this child.</p>
      ) : (
        <ul className="plain small">
          {events.map((event) => (
            <li key={`${event.opened} ${event.kind} ${event.what}`}>
              <b>{concernTitle(event.kind)}</b>, {dateWords(event.opened)}
              {event.treatment && `, under ${event.treatment}`}
              {event.lot && `, lot ${event.lot}`}. {sentence(event.what)}{" "}
              <span className="soft">
                {[event.seriousness ?? "seriousness not said", event.relatedness ?? "cause not said"].join(
                  ", ",
                )}
                ; {event.closed ? `closed ${dateWords(event.closed)}: ${event.outcome}` : "open"}.
              </span>
            </li>
          ))}
        </ul>
      )}
      <details>
        <summary className="small">Adverse events of the whole practice</summary>
        <div className="form">
          <div className="form-row">
            <Field label="Opened from">
              {(control) => (
                <input
                  {...control}
                  type="date"
                  value={from}
                  onChange={(event) => setFrom(event.target.value)}
                />
              )}
            </Field>
            <Field label="to">
              {(control) => (
                <input {...control} type="date" value={to} onChange={(event) => setTo(event.target.value)} />
              )}
            </Field>
          </div>
          <label className="small">
            <input type="checkbox" checked={names} onChange={(event) => setNames(event.target.checked)} />{" "}
            with the children’s names, not only their numbers
          </label>
          <div className="form-actions">
            <a className="button" href={address("csv")} download="adverse-events.csv">
              Download table (CSV)
            </a>
            <a className="button" href={address("json")} download="adverse-events.json">
              Download JSON
            </a>
          </div>
        </div>
      </details>
    </section>
  )
}
