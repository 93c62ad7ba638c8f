import { Link, Outlet, useLocation } from "@tanstack/react-router"
import { lazy, Suspense } from "react"
import { LANGUAGE_NAMES, say } from "../../engine/say.js"
import type { SessionAnswer } from "../../server/contract/session.js"
import { failureInWords } from "../client.js"
import { useInboxCounts } from "../inbox/use-inbox.js"
import { useLogOut, useSession } from "../queries.js"
import { readIn, readingLanguage, STAFF_LANGUAGES } from "../reading-language.js"
import { roleInWords } from "../role-words.js"
import { Cautions } from "./cautions.js"
import { Disclosure } from "./disclosure.js"
import { Waiting } from "./waiting.js"

// Whoever is logged in does not need it.
const LoginPage = lazy(() =>
  import("../pages/login-page.js").then((module) => ({ default: module.LoginPage })),
)

/** The part that Settings opens on: the first of its menu, which is not loaded before it is wanted. */
const FIRST_SETTINGS = "protocols"

/** What stands around every page: the menu, the person, and the cautions. Without a session, the log-in. */
export function Shell() {
  const session = useSession()
  if (session.isPending) return <Waiting for={say("the practice")} />
  if (session.isError) return <p className="page form-fault">{failureInWords(session.error)}</p>
  if (session.data === null)
    return (
      <Suspense fallback={<Waiting for={say("the log-in")} />}>
        <LoginPage />
      </Suspense>
    )
  return <Pages session={session.data} />
}

/** With how much waits, so that nobody has to look in vain. */
function InboxLink() {
  const counts = useInboxCounts()
  const waiting = counts.data?.counts.waiting ?? 0
  return (
    <Link to="/inbox" activeProps={{ "aria-current": "page" }}>
      {waiting > 0 ? say("Inbox ({waiting})", { waiting }) : say("Inbox")}
    </Link>
  )
}

function Pages({ session }: { readonly session: SessionAnswer }) {
  const logOut = useLogOut()
  const inSettings = useLocation({ select: ({ pathname }) => pathname.startsWith("/settings/") })
  return (
    <>
      <a className="skip" href="#page">
        {say("Skip to the page")}
      </a>
      <header className="top">
        <Link to="/today" className="brand">
          Lengthwise
        </Link>
        <nav aria-label={say("Main")}>
          <Link to="/today" activeProps={{ "aria-current": "page" }}>
            {say("Today")}
          </Link>
          <Link to="/children" activeProps={{ "aria-current": "page" }}>
            {say("Children")}
          </Link>
          <InboxLink />
          <Link to="/messages" activeProps={{ "aria-current": "page" }}>
            {say("Messages")}
          </Link>
          <Link
            to="/settings/$part"
            params={{ part: FIRST_SETTINGS }}
            aria-current={inSettings ? "page" : undefined}
          >
            {say("Settings")}
          </Link>
        </nav>
        <Disclosure label={session.person.name}>
          {() => (
            <>
              <p className="soft small">
                {say("Logged in as {role}", { role: roleInWords(session.person.role) })}
              </p>
              <p className="small">
                {STAFF_LANGUAGES.filter((spoken) => spoken !== readingLanguage()).map((spoken) => (
                  <button
                    key={spoken}
                    type="button"
                    className="plain"
                    lang={spoken}
                    onClick={() => readIn(spoken)}
                  >
                    {LANGUAGE_NAMES[spoken]}
                  </button>
                ))}
              </p>
              <button type="button" onClick={() => logOut.mutate()}>
                {say("Log out")}
              </button>
            </>
          )}
        </Disclosure>
      </header>
      <main className="page" id="page" tabIndex={-1}>
        <Outlet />
      </main>
      <Cautions />
    </>
  )
}
