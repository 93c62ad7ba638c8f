import { Link } from "@tanstack/react-router"
import { ageWords } from "../../chart/words.js"
import { say } from "../../engine/say.js"
import type { OwedRow } from "../../server/contract/today.js"
import { capitalised, inWords } from "../format.js"
import { roleInWords } from "../role-words.js"
import { ACTION_WORDS, timing } from "./today-words.js"

interface TodayRowProps {
  readonly row: OwedRow
  readonly today: string
  /** Records that the family was told; the only action that is done here and not on another page. */
  readonly onExplained: () => void
  readonly busy: boolean
}

/** One thing owed: to whom, what and why, by when, and its one action. */
export function TodayRow({ row, today, onExplained, busy }: TodayRowProps) {
  const { child, what, why, role, state } = row
  return (
    <li className="owed">
      <div>
        <Link to="/children/$childId" params={{ childId: child.id }} className="name" tabIndex={-1}>
          <bdi>{child.name}</bdi>
        </Link>
        <span className="soft small">{ageWords({ born: child.born, on: today })}</span>
      </div>
      <div>
        {capitalised(inWords(what))}
        {why && <span className="soft small">{inWords(why)}</span>}
      </div>
      <div className="small soft">
        <span className={state === "overdue" ? "late" : undefined}>{timing(row, today)}</span>
        <span className="block">{roleInWords(role)}</span>
      </div>
      <RowAction row={row} onExplained={onExplained} busy={busy} />
    </li>
  )
}

function RowAction({ row, onExplained, busy }: Omit<TodayRowProps, "today">) {
  const { child, action, what } = row
  const label = say(ACTION_WORDS[action])
  const about = say("{action}: {name}, {what}", { action: label, name: child.name, what })
  if (action === "explain")
    return (
      <button type="button" aria-label={about} data-action disabled={busy} onClick={onExplained}>
        {label}
      </button>
    )
  if (action === "visit")
    return (
      <Link
        className="button"
        data-action
        aria-label={about}
        to="/children/$childId/visit"
        params={{ childId: child.id }}
        search={{}}
      >
        {label}
      </Link>
    )
  return (
    <Link
      className="button"
      data-action
      aria-label={about}
      to="/children/$childId/$part"
      params={{ childId: child.id, part: action }}
    >
      {label}
    </Link>
  )
}
