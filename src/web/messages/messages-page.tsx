import "../styles/today.css"
import "./messages.css"
import { Link, useNavigate } from "@tanstack/react-router"
import { useDeferredValue, useRef, useState } from "react"
import { MESSAGE_STATES } from "../../engine/messages/message-states.js"
import { say } from "../../engine/say.js"
import type { MessagesAnswer } from "../../server/contract/messages.js"
import { failureInWords } from "../client.js"
import { Notice } from "../parts/notice.js"
import { PageHeading } from "../parts/page-heading.js"
import { useLate, Waiting } from "../parts/waiting.js"
import { useSlashFocuses } from "../slash-focuses.js"
import { HandOver } from "./hand-over.js"
import { MailHealth } from "./mail-health.js"
import { MessageDialog } from "./message-dialog.js"
import { MessageTable } from "./message-table.js"
import type { MessagesSearch } from "./messages-search.js"
import { STATE_WORDS } from "./messages-words.js"
import { PlanCard } from "./plan-card.js"
import { useMessages } from "./use-messages.js"

/** What was written to families, what waits, what is planned, and what a person has to decide. */
export function MessagesPage({ asked }: { readonly asked: MessagesSearch }) {
  const navigate = useNavigate()
  const [typed, setTyped] = useState(asked.search ?? "")
  const search = useDeferredValue(typed.trim())
  const { search: _, ...rest } = asked
  const list = useMessages(search ? { ...rest, search } : rest)
  const late = useLate(!list.error && (!list.data || list.isPlaceholderData))
  const [message, setMessage] = useState<string | null>(null)
  const [opened, setOpened] = useState<string | null>(null)
  const searchBox = useRef<HTMLInputElement>(null)
  useSlashFocuses(searchBox)

  const changeSearch = (value: string) => {
    setTyped(value)
    const { search: __, page: ___, ...kept } = asked
    const next = value.trim() ? { ...kept, search: value.trim() } : kept
    navigate({ to: "/messages", search: next, replace: true })
  }

  return (
    <>
      <div className="page-head">
        <PageHeading title={say("Messages")} />
        <span className="soft" role="status">
          {late ? say("Reading the list …") : list.data && countInWords(list.data)}
        </span>
      </div>
      <Notice message={message} />
      {list.error && <p className="form-fault">{failureInWords(list.error)}</p>}
      {!list.data && !list.error && <Waiting for={say("the messages")} />}
      {list.data && (
        <div className="with-aside">
          <div>
            <MailHealth answer={list.data} onDone={setMessage} />
            <search className="search">
              <label className="unseen" htmlFor="search">
                {say("Search by child, family or address")}
              </label>
              <input
                id="search"
                ref={searchBox}
                type="search"
                autoComplete="off"
                placeholder={say("Child, family or address")}
                value={typed}
                onChange={(event) => changeSearch(event.target.value)}
              />
            </search>
            <States asked={asked} answer={list.data} />
            <MessageTable answer={list.data} asked={asked} onOpen={setOpened} />
          </div>
          <div className="aside">
            <PlanCard />
            <HandOver answer={list.data} onDone={setMessage} />
          </div>
        </div>
      )}
      {opened && <MessageDialog id={opened} onClose={() => setOpened(null)} onDone={setMessage} />}
    </>
  )
}

/** The states to choose from, each with how many there are. */
function States({ asked, answer }: { readonly asked: MessagesSearch; readonly answer: MessagesAnswer }) {
  const { state: _, page: __, ...rest } = asked
  return (
    <nav className="pills message-states" aria-label={say("State")}>
      <Link to="/messages" search={rest} activeOptions={{ exact: true, includeSearch: true }}>
        {say("All")}
      </Link>
      {MESSAGE_STATES.filter((state) => (answer.counts[state] ?? 0) > 0 || state === asked.state).map(
        (state) => (
          <Link key={state} to="/messages" search={{ ...rest, state }}>
            {say("{state} {count}", { state: say(STATE_WORDS[state]), count: answer.counts[state] ?? 0 })}
          </Link>
        ),
      )}
    </nav>
  )
}

function countInWords({ total }: MessagesAnswer): string {
  return say("{total, plural, one {# message} other {# messages}}", { total })
}
