import { useState } from "react"
import { dateWords } from "../../chart/words.js"
import { adverseEvents } from "../../engine/safety/adverse-events.js"
import { say } from "../../engine/say.js"
import type { ChildView } from "../../server/contract/child.js"
import { sentence } from "../format.js"
import { Field } from "../parts/field.js"
import { Said } from "../parts/said.js"
import type { CourseReading } from "../reading.js"
import { concernTitle, relatednessInWords, seriousnessInWords } from "./concern-words.js"

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
      <h2 id="adverse-events">{say("Adverse events")}</h2>
      {events.length === 0 ? (
        <p>{say("None is on record for this child.")}</p>
      ) : (
        <ul className="plain small">
          {events.map((event) => (
            <li key={`${event.opened} ${event.kind} ${event.what}`}>
              <Said
                message="{kind}, {day}{treated, select, yes {, under {treatment}} other {}}{known, select, yes {, lot {lot}} other {}}. {what}"
                values={{
                  kind: <b>{concernTitle(event.kind)}</b>,
                  day: dateWords(event.opened),
                  treated: event.treatment ? "yes" : "no",
                  treatment: event.treatment ?? "",
                  known: event.lot ? "yes" : "no",
                  lot: event.lot ?? "",
                  what: sentence(event.what),
                }}
              />{" "}
              <span className="soft">
                {say(
                  "{seriousness}, {relatedness}; {closed, select, yes {closed {day}: {outcome}} other {still open}}.",
                  {
                    seriousness: seriousnessInWords(event.seriousness),
                    relatedness: relatednessInWords(event.relatedness),
                    closed: event.closed ? "yes" : "no",
                    day: event.closed ? dateWords(event.closed) : "",
                    outcome: event.outcome ?? "",
                  },
                )}
              </span>
            </li>
          ))}
        </ul>
      )}
      <details>
        <summary className="small">{say("Adverse events of the whole practice")}</summary>
        <div className="form">
          <div className="form-row">
            <Field label={say("Opened from")}>
              {(control) => (
                <input
                  {...control}
                  type="date"
                  value={from}
                  onChange={(event) => setFrom(event.target.value)}
                />
              )}
            </Field>
            <Field label={say("to|a day")}>
              {(control) => (
                <input {...control} type="date" value={to} onChange={(event) => setTo(event.target.value)} />
              )}
            </Field>
          </div>
          <label className="small">
            <input type="checkbox" checked={names} onChange={(event) => setNames(event.target.checked)} />{" "}
            {say("with the children’s names, not only their numbers")}
          </label>
          <div className="form-actions">
            <a className="button" href={address("csv")} download="adverse-events.csv">
              {say("Download table (CSV)")}
            </a>
            <a className="button" href={address("json")} download="adverse-events.json">
              {say("Download JSON")}
            </a>
          </div>
        </div>
      </details>
    </section>
  )
}
