import "../styles/today.css"
import "../messages/messages.css"
import "./inbox.css"
import { Link, useNavigate } from "@tanstack/react-router"
import { useDeferredValue, useRef, useState } from "react"
import { dateWords } from "../../chart/words.js"
import { say } from "../../engine/say.js"
import type { InboxAnswer, InboxRow } from "../../server/contract/inbox.js"
import { INBOX_STATES } from "../../server/contract/inbox-words.js"
import { failureInWords } from "../client.js"
import { takeMessage } from "../flash.js"
import { inWords } from "../format.js"
import { instantInWords } from "../messages/messages-words.js"
import { Notice } from "../parts/notice.js"
import { PageHeading } from "../parts/page-heading.js"
import { PageLinks } from "../parts/page-links.js"
import { useLate, Waiting } from "../parts/waiting.js"
import { useSlashFocuses } from "../slash-focuses.js"
import { DropFiles } from "./drop-files.js"
import type { InboxSearch } from "./inbox-search.js"
import { identityWords, STATE_WORDS } from "./inbox-words.js"
import { useInbox } from "./use-inbox.js"

/** What came from outside and waits for a person, and a place to drop files. */
export function InboxPage({ asked }: { readonly asked: InboxSearch }) {
  const navigate = useNavigate()
  const [typed, setTyped] = useState(asked.search ?? "")
  const search = useDeferredValue(typed.trim())
  const { search: _, ...rest } = asked
  const list = useInbox(search ? { ...rest, search } : rest)
  const late = useLate(!list.error && (!list.data || list.isPlaceholderData))
  const [message] = useState(takeMessage)
  const searchBox = useRef<HTMLInputElement>(null)
  useSlashFocuses(searchBox)
  const changeSearch = (value: string) => {
    setTyped(value)
    const { search: __, page: ___, ...kept } = asked
    const next = value.trim() ? { ...kept, search: value.trim() } : kept
    navigate({ to: "/inbox", search: next, replace: true })
  }
  return (
    <>
      <div className="page-head">
        <PageHeading title={say("Inbox")} />
        <span className="soft" role="status">
          {late
            ? say("Reading the list …")
            : list.data &&
              say("{total, plural, one {# object} other {# objects}}", { total: list.data.total })}
        </span>
      </div>
      <Notice message={message} />
      <DropFiles />
      {list.error && <p className="form-fault">{failureInWords(list.error)}</p>}
      {!list.data && !list.error && <Waiting for={say("the Inbox")} />}
      {list.data && (
        <>
          <search className="search">
            <label className="unseen" htmlFor="search">
              {say("Search by file, instrument or child")}
            </label>
            <input
              id="search"
              ref={searchBox}
              type="search"
              autoComplete="off"
              placeholder={say("File, instrument or child")}
              value={typed}
              onChange={(event) => changeSearch(event.target.value)}
            />
          </search>
          <States asked={asked} answer={list.data} />
          <Rows answer={list.data} asked={asked} />
        </>
      )}
    </>
  )
}

function States({ asked, answer }: { readonly asked: InboxSearch; readonly answer: InboxAnswer }) {
  const { state: shown = "waiting", page: _, ...rest } = asked
  return (
    <nav className="pills message-states" aria-label={say("State")}>
      {INBOX_STATES.map((state) => (
        <Link
          key={state}
          to="/inbox"
          search={{ ...rest, state }}
          aria-current={state === shown ? "page" : undefined}
        >
          {say("{state} {count}", { state: say(STATE_WORDS[state]), count: answer.counts[state] })}
        </Link>
      ))}
    </nav>
  )
}

function Rows({ answer, asked }: { readonly answer: InboxAnswer; readonly asked: InboxSearch }) {
  const { page: _, ...rest } = asked
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by itself, and the keyboard must reach it
    <section className="card message-list" tabIndex={0} aria-label={say("Inbox")}>
      <table>
        <thead>
          <tr>
            <th scope="col">{say("Who the file says it is")}</th>
            <th scope="col">{say("Day")}</th>
            <th scope="col">{say("What it holds")}</th>
            <th scope="col">{asked.state === "taken" ? say("Child") : say("Why it waits")}</th>
            <th scope="col">{say("Received|inbox")}</th>
          </tr>
        </thead>
        <tbody>
          {answer.items.map((item) => (
            <Row key={item.id} item={item} />
          ))}
        </tbody>
      </table>
      {answer.items.length === 0 && (
        <p className="soft empty">{asked.search ? say("Nothing matches.") : say("Nothing here.")}</p>
      )}
      <PageLinks
        page={answer.page}
        pages={Math.ceil(answer.total / answer.pageSize)}
        link={({ page, words }) => (
          <Link to="/inbox" search={page > 1 ? { ...rest, page } : rest}>
            {words}
          </Link>
        )}
      />
    </section>
  )
}

function Row({ item }: { readonly item: InboxRow }) {
  return (
    <tr>
      <th scope="row">
        <Link to="/inbox/$itemId" params={{ itemId: item.id }}>
          <bdi>{identityWords(item.identity)}</bdi>
        </Link>
        <span className="soft small">
          <bdi>{item.file}</bdi>
        </span>
      </th>
      <td className="day">{item.day === null ? "–" : dateWords(item.day)}</td>
      <td>{item.holds}</td>
      <td>
        {item.child ? (
          <Link to="/children/$childId" params={{ childId: item.child.id }}>
            <bdi>{item.child.name}</bdi>
          </Link>
        ) : (
          item.whyInWords && inWords(item.whyInWords)
        )}
      </td>
      <td>
        <bdi>{item.sentBy}</bdi>
        <span className="soft small">{instantInWords(item.receivedAt)}</span>
      </td>
    </tr>
  )
}
