import { Link } from "@tanstack/react-router"
import { Suspense, useState } from "react"
import { say } from "../../engine/say.js"
import { failureInWords } from "../client.js"
import { NotFoundPage } from "../pages/not-found-page.js"
import { PageHeading } from "../parts/page-heading.js"
import { Waiting } from "../parts/waiting.js"
import { usePractice, useRules } from "../queries.js"
import { SETTINGS_PARTS } from "./settings-parts.js"

/** What the practice sets for itself, a part at a time. */
export function SettingsPage({ name }: { readonly name: string }) {
  const practice = usePractice()
  const rules = useRules()
  const [message, setMessage] = useState<string | null>(null)
  const part = Object.hasOwn(SETTINGS_PARTS, name) ? SETTINGS_PARTS[name] : undefined
  if (!part) return <NotFoundPage />
  const failure = practice.error ?? rules.error
  return (
    <>
      <div className="page-head">
        <PageHeading title={say(part.title)} />
        <div className="actions">
          <Link to="/import">{say("Import a table")}</Link>
        </div>
      </div>
      <nav className="tabs" aria-label={say("Settings")}>
        {Object.entries(SETTINGS_PARTS).map(([place, { title }]) => (
          <Link
            key={place}
            to="/settings/$part"
            params={{ part: place }}
            activeProps={{ "aria-current": "page" }}
            onClick={() => setMessage(null)}
          >
            {say(title)}
          </Link>
        ))}
      </nav>
      <div role="status">{message && <p className="notice">{message}</p>}</div>
      {failure && <p className="form-fault">{failureInWords(failure)}</p>}
      {!failure && !(practice.data && rules.data) && <Waiting for={say("the settings")} />}
      {practice.data && rules.data && (
        <Suspense fallback={<Waiting for={say("this part")} />}>
          <part.Page practice={practice.data} rules={rules.data} onDone={setMessage} />
        </Suspense>
      )}
    </>
  )
}
