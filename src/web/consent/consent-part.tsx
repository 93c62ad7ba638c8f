import "./consent.css"
import { useLocation, useNavigate } from "@tanstack/react-router"
import { lazy, Suspense } from "react"
import { say } from "../../engine/say.js"
import type { ChildPartProps } from "../child/child-part-props.js"
import { sentence } from "../format.js"
import { Waiting } from "../parts/waiting.js"
import { dutyTiming } from "../words.js"
import { ConsentList } from "./consent-list.js"
import { consentRows } from "./consent-rows.js"

// The figures of the evidence come with it; the list does without.
const NewConsent = lazy(() => import("./new-consent.js").then((module) => ({ default: module.NewConsent })))

/** Consents of the family, what is owed, and the way to a new one. `#new` in the address opens the form. */
export function ConsentPart(props: ChildPartProps) {
  const { view, reading, onDone } = props
  const isNew = useLocation({ select: ({ hash }) => hash }) === "new"
  const navigate = useNavigate()
  const open = (hash: string) =>
    navigate({ to: "/children/$childId/$part", params: { childId: view.child.id, part: "consent" }, hash })
  const owed = reading.duties.filter(
    ({ kind, state }) =>
      kind === "consent" && (state === "open" || state === "overdue" || state === "upcoming"),
  )
  const rows = consentRows({ view, on: reading.today, wordings: reading.rules.consentWordings })
  if (isNew)
    return (
      <Suspense fallback={<Waiting for={say("the wording and its figures")} />}>
        <NewConsent
          {...props}
          onClose={() => open("")}
          onDone={(message) => {
            onDone(message)
            open("")
          }}
        />
      </Suspense>
    )
  return (
    <div className="consent-part">
      <section className="card" aria-labelledby="consent-owed">
        <div className="consent-head">
          <h2 id="consent-owed">{say("What is owed")}</h2>
          <button type="button" className="primary" onClick={() => open("new")}>
            {say("New consent")}
          </button>
        </div>
        {owed.length === 0 ? (
          <p className="soft">{say("Nothing. Whatever is in use or planned is covered.")}</p>
        ) : (
          <ul className="consent-owed">
            {owed.map((duty) => (
              <li key={duty.step}>
                <b>{sentence(duty.step)}</b>{" "}
                <span className={duty.state === "overdue" ? "late" : "soft"}>
                  {dutyTiming(duty, reading.today)}
                </span>
                {duty.needs.map((need) => (
                  <p key={need} className="small">
                    {sentence(need)}
                  </p>
                ))}
              </li>
            ))}
          </ul>
        )}
      </section>
      <ConsentList view={view} reading={reading} rows={rows} onDone={onDone} />
    </div>
  )
}
