import { Link, useNavigate } from "@tanstack/react-router"
import { type KeyboardEvent, useDeferredValue, useRef, useState } from "react"
import { ageWords, dateWords, fixed } from "../../chart/words.js"
import { say } from "../../engine/say.js"
import type { ChildRow } from "../../server/contract/child.js"
import { failureInWords } from "../client.js"
import { PageHeading } from "../parts/page-heading.js"
import { PageLinks } from "../parts/page-links.js"
import { Said } from "../parts/said.js"
import { useLate } from "../parts/waiting.js"
import { useChildren, usePractice } from "../queries.js"
import { useSlashFocuses } from "../slash-focuses.js"
import { dutyTiming, findingInWords, growthInWords } from "../words.js"
import { AddChild } from "./add-child.js"

export function ChildrenPage({ search, page }: { readonly search: string; readonly page: number }) {
  const navigate = useNavigate()
  const [typed, setTyped] = useState(search)
  const asked = useDeferredValue(typed.trim())
  const list = useChildren({ search: asked, page })
  const practice = usePractice()
  const failure = list.error ?? practice.error
  const late = useLate(!failure && (!list.data || !practice.data || list.isPlaceholderData))
  const [adding, setAdding] = useState(false)
  const searchBox = useRef<HTMLInputElement>(null)
  const rows = useRef<HTMLTableSectionElement>(null)
  useSlashFocuses(searchBox)

  // The search stands in the address, so that it is still there on the way back from a child.
  const changeSearch = (value: string) => {
    setTyped(value)
    navigate({ to: "/children", search: value.trim() ? { search: value.trim() } : {}, replace: true })
  }
  const moveInList = (event: KeyboardEvent) => {
    if (event.key !== "ArrowDown" && event.key !== "ArrowUp") return
    const links = [...(rows.current?.querySelectorAll<HTMLAnchorElement>("a") ?? [])]
    const at = links.indexOf(document.activeElement as HTMLAnchorElement)
    const target = at + (event.key === "ArrowDown" ? 1 : -1)
    event.preventDefault()
    if (target < 0) searchBox.current?.focus()
    else links[target]?.focus()
  }

  return (
    // The arrow keys are an addition for the quick: every row is reached by Tab as well.
    // biome-ignore lint/a11y/noStaticElementInteractions: see above
    <div onKeyDown={moveInList}>
      <div className="page-head">
        <PageHeading title={say("Children")} />
        <span className="soft" role="status">
          {late ? say("Reading the list …") : list.data && countInWords(list.data.total, asked)}
        </span>
        <div className="actions">
          <Link to="/import">{say("Import a table")}</Link>
          <button type="button" className="primary" onClick={() => setAdding(true)}>
            {say("Add child")}
          </button>
        </div>
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
            message="{slash} search · {up} {down} row · {enter} open"
            values={{
              slash: <kbd>/</kbd>,
              up: <kbd>↑</kbd>,
              down: <kbd>↓</kbd>,
              enter: <kbd>Enter</kbd>,
            }}
          />
        </span>
      </search>
      {failure && <p className="form-fault">{failureInWords(failure)}</p>}
      {list.data && practice.data && (
        <section className="card list" aria-label={say("Children")}>
          <table>
            <thead>
              <tr>
                <th scope="col">{say("Child")}</th>
                <th scope="col">{say("Age")}</th>
                <th scope="col">{say("Treatment")}</th>
                <th scope="col">{say("Growth")}</th>
                <th scope="col">{say("Is it the treatment?")}</th>
                <th scope="col">{say("Next duty")}</th>
                <th scope="col">{say("Last visit")}</th>
              </tr>
            </thead>
            <tbody ref={rows}>
              {list.data.children.map((child) => (
                <Row key={child.id} child={child} today={practice.data.today} />
              ))}
            </tbody>
          </table>
          {list.data.children.length === 0 && (
            <p className="soft empty">
              {asked
                ? say("No child matches “{asked}”.", { asked })
                : say("No child is recorded yet. Add the first one.")}
            </p>
          )}
          <PageLinks
            page={list.data.page}
            pages={Math.ceil(list.data.total / list.data.pageSize)}
            link={({ page: to, words }) => (
              <Link to="/children" search={placeOf({ page: to, search: asked })}>
                {words}
              </Link>
            )}
          />
        </section>
      )}
      {adding && <AddChild onClose={() => setAdding(false)} />}
    </div>
  )
}

function Row({ child, today }: { readonly child: ChildRow; readonly today: string }) {
  const { growth, finding, nextDuty } = child
  return (
    <tr>
      <th scope="row">
        <Link to="/children/$childId" params={{ childId: child.id }}>
          <bdi>{child.name}</bdi>
        </Link>
        {child.number && <span className="soft small">{child.number}</span>}
      </th>
      <td className="age">{ageWords({ born: child.born, on: today })}</td>
      <td>{child.treatment ?? <span className="soft">{say("none")}</span>}</td>
      <td>
        {growth ? growthInWords(growth.state) : <span className="soft">{say("no figure")}</span>}
        {growth?.mmPerYear != null && (
          <span className="soft small">{say("{mm} mm per year", { mm: fixed(growth.mmPerYear, 2) })}</span>
        )}
      </td>
      <td>
        {finding && finding.state !== "no-treatment" ? (
          findingInWords(finding.state)
        ) : (
          <span className="soft">{say("not treated")}</span>
        )}
      </td>
      <td>
        {nextDuty ? (
          <>
            {nextDuty.step}
            <span className={nextDuty.state === "overdue" ? "late small" : "soft small"}>
              {dutyTiming(nextDuty, today)}
            </span>
          </>
        ) : (
          <span className="soft">{say("nothing owed")}</span>
        )}
      </td>
      <td className="age">
        {child.lastVisit ? dateWords(child.lastVisit) : <span className="soft">{say("none")}</span>}
      </td>
    </tr>
  )
}

/** Where a page of the list is; the first needs no number in its address. */
const placeOf = ({ page, search }: { readonly page: number; readonly search: string }) => ({
  ...(search ? { search } : {}),
  ...(page > 1 ? { page } : {}),
})

function countInWords(total: number, search: string): string {
  return search
    ? say("{total, plural, one {# child found} other {# children found}}", { total })
    : say("{total, plural, one {# child} other {# children}}", { total })
}
