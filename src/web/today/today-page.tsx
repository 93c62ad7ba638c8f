import { Link, useNavigate } from "@tanstack/react-router"
import { type KeyboardEvent, useDeferredValue, useRef, useState } from "react"
import { say } from "../../engine/say.js"
import { ROLES } from "../../engine/today/owed.js"
import { GROUP_PAGE, type OwedRow, type TodayAnswer } from "../../server/contract/today.js"
import { failureInWords } from "../client.js"
import { PageHeading } from "../parts/page-heading.js"
import { Said } from "../parts/said.js"
import { useLate, Waiting } from "../parts/waiting.js"
import { useToday } from "../queries.js"
import "../styles/today.css"
import { ROLE_WORDS } from "../role-words.js"
import { useSlashFocuses } from "../slash-focuses.js"
import { TodayRow } from "./today-row.js"
import type { TodaySearch } from "./today-search.js"
import { countsInWords, dayInWords, GROUP_WORDS } from "./today-words.js"
import { useExplained } from "./use-explained.js"

/** Who is owed what today, what concerns a child's safety first; each row has its one action. */
export function TodayPage({ asked }: { readonly asked: TodaySearch }) {
  const navigate = useNavigate()
  const [typed, setTyped] = useState(asked.search ?? "")
  const search = useDeferredValue(typed.trim())
  const list = useToday({ role: asked.role, search, group: asked.group, page: asked.page ?? 1 })
  const late = useLate(!list.error && (!list.data || list.isPlaceholderData))
  const explained = useExplained()
  const searchBox = useRef<HTMLInputElement>(null)
  const groups = useRef<HTMLDivElement>(null)
  useSlashFocuses(searchBox)

  const changeSearch = (value: string) => {
    setTyped(value)
    const { search: _, page: __, ...rest } = asked
    navigate({ to: "/today", search: value.trim() ? { ...rest, search: value.trim() } : rest, replace: true })
  }
  const moveInList = (event: KeyboardEvent) => {
    if (event.key !== "ArrowDown" && event.key !== "ArrowUp") return
    const actions = [...(groups.current?.querySelectorAll<HTMLElement>("[data-action]") ?? [])]
    const at = actions.indexOf(document.activeElement as HTMLElement)
    const target = at + (event.key === "ArrowDown" ? 1 : -1)
    event.preventDefault()
    if (target < 0) searchBox.current?.focus()
    else actions[target]?.focus()
  }

  return (
    // The arrow keys are an addition for the quick: every action is reached by Tab as well.
    // biome-ignore lint/a11y/noStaticElementInteractions: see above
    <div onKeyDown={moveInList}>
      <div className="page-head">
        <PageHeading title={say("Today")}>
          {list.data ? dayInWords(list.data.today) : say("Today")}
        </PageHeading>
        <span className="soft" role="status">
          {late ? say("Reading the list …") : list.data && countsInWords(list.data)}
        </span>
        <nav className="actions pills" aria-label={say("Whose work")}>
          <Link to="/today" search={withRole(asked, undefined)} activeOptions={{ exact: true }}>
            {say("Everyone")}
          </Link>
          {ROLES.map((role) => (
            <Link key={role} to="/today" search={withRole(asked, role)}>
              {say(ROLE_WORDS[role])}
            </Link>
          ))}
        </nav>
      </div>
      <search className="search">
        <label className="unseen" htmlFor="search">
          {say("Search by name, birth date or number")}
        </label>
        <input
          id="search"
          ref={searchBox}
          type="search"
          autoComplete="off"
          placeholder={say("Name, birth date or number")}
          value={typed}
          onChange={(event) => changeSearch(event.target.value)}
        />
        <span className="soft small">
          <Said
            message="{slash} search · {up} {down} row · {enter} its action"
            values={{
              slash: <kbd>/</kbd>,
              up: <kbd>↑</kbd>,
              down: <kbd>↓</kbd>,
              enter: <kbd>Enter</kbd>,
            }}
          />
        </span>
      </search>
      <div role="status">
        {explained.message && (
          <p className="notice">
            {explained.message}{" "}
            <button type="button" className="plain" onClick={explained.undo}>
              {say("Undo")}
            </button>
          </p>
        )}
      </div>
      {(list.error ?? explained.failure) && (
        <p className="form-fault">{failureInWords(list.error ?? explained.failure)}</p>
      )}
      {list.data && list.data.read < list.data.total && (
        <p className="soft" role="status">
          {say(
            "Reading the children: {read} of {total}. What is owed to the others appears here by itself.",
            { read: list.data.read, total: list.data.total },
          )}
          <progress value={list.data.read} max={list.data.total} aria-label={say("Children read")} />
        </p>
      )}
      {!list.data && !list.error && <Waiting for={say("what is owed today")} />}
      <div ref={groups}>
        {list.data && (
          <Groups answer={list.data} asked={asked} onExplained={explained.tell} busy={explained.busy} />
        )}
      </div>
    </div>
  )
}

function withRole(
  { role: _, group: __, page: ___, ...rest }: TodaySearch,
  role: TodaySearch["role"],
): TodaySearch {
  return role ? { ...rest, role } : rest
}

function Groups(props: {
  readonly answer: TodayAnswer
  readonly asked: TodaySearch
  readonly onExplained: (told: { readonly row: OwedRow; readonly today: string }) => void
  readonly busy: boolean
}) {
  const { answer, asked } = props
  const shown = answer.groups.filter(
    ({ group, count }) => count > 0 && (!asked.group || asked.group === group),
  )
  if (shown.length === 0)
    return (
      <p className="card soft">
        {answer.read < answer.total ? say("Nothing yet.") : say("Nothing is owed here today.")}
      </p>
    )
  return shown.map(({ group, count, rows }) => {
    const [title, note] = GROUP_WORDS[group]
    return (
      <section className={`card owed-group ${group}`} key={group} aria-labelledby={`group-${group}`}>
        <header>
          <h2 id={`group-${group}`}>{say(title)}</h2>
          <span className="soft small">{say(note)}</span>
          <span className="count">{count}</span>
        </header>
        <ul>
          {rows.map((row) => (
            <TodayRow
              key={`${row.child.id} ${row.what} ${row.since}`}
              row={row}
              today={answer.today}
              onExplained={() => props.onExplained({ row, today: answer.today })}
              busy={props.busy}
            />
          ))}
        </ul>
        <MoreLinks asked={asked} group={group} count={count} shown={rows.length} />
      </section>
    )
  })
}

function MoreLinks(props: {
  readonly asked: TodaySearch
  readonly group: NonNullable<TodaySearch["group"]>
  readonly count: number
  readonly shown: number
}) {
  const { asked, group, count, shown } = props
  const { group: opened, page = 1, ...rest } = asked
  if (opened === undefined)
    return count > shown ? (
      <p className="more">
        <Link to="/today" search={{ ...rest, group }}>
          {say("All {count}", { count })}
        </Link>
      </p>
    ) : null
  const pages = Math.ceil(count / GROUP_PAGE)
  const to = (target: number): TodaySearch => ({ ...rest, group, ...(target > 1 ? { page: target } : {}) })
  return (
    <nav className="pages" aria-label={say("Pages of the list")}>
      <Link to="/today" search={rest}>
        {say("All groups")}
      </Link>
      {page > 1 && (
        <Link to="/today" search={to(page - 1)}>
          {say("Before")}
        </Link>
      )}
      {pages > 1 && <span className="soft">{say("page {page} of {pages}", { page, pages })}</span>}
      {page < pages && (
        <Link to="/today" search={to(page + 1)}>
          {say("Next")}
        </Link>
      )}
    </nav>
  )
}
