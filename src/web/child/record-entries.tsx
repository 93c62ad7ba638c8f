import { Link } from "@tanstack/react-router"
import { useMemo, useState } from "react"
import { dateWords } from "../../chart/words.js"
import type { Decision } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import type { ChildView } from "../../server/contract/child.js"
import { fileUrl } from "../consent/stored-file.js"
import { capitalised, inWords } from "../format.js"
import { DecisionBasis } from "./decision-basis.js"
import { entryLine } from "./entry-words.js"
import { entryKindInWords } from "./kind-words.js"
import { listedEntries } from "./listed-entries.js"
import { Withdraw } from "./withdraw.js"

type Entry = ChildView["entries"][number]

/** What every entry says, found by its words or its kind; the way to correct or withdraw one. */
export function RecordEntries({
  view,
  onDone,
}: {
  readonly view: ChildView
  readonly onDone: (message: string) => void
}) {
  const [withdrawing, setWithdrawing] = useState<Entry | null>(null)
  const [search, setSearch] = useState("")
  const [kind, setKind] = useState("")
  const kinds = [...new Set(view.entries.map((entry) => entry.kind))].toSorted((a, b) =>
    entryKindInWords(a).localeCompare(entryKindInWords(b)),
  )
  const entries = useMemo(() => listedEntries(view.entries, { search, kind }), [view.entries, search, kind])
  return (
    <>
      <p className="soft small">
        {say("Nothing is overwritten: a correction is a new entry with its reason.")}
      </p>
      <div className="record-find">
        <label>
          {say("Find")}{" "}
          <input type="search" value={search} onChange={(event) => setSearch(event.target.value)} />
        </label>
        <label>
          {say("Kind")}{" "}
          <select value={kind} onChange={(event) => setKind(event.target.value)}>
            <option value="">{say("all|kinds")}</option>
            {kinds.map((one) => (
              <option key={one} value={one}>
                {entryKindInWords(one)}
              </option>
            ))}
          </select>
        </label>
        <span role="status" className="soft small">
          {entries.length === view.entries.length
            ? ""
            : say("{shown} of {all}", { shown: entries.length, all: view.entries.length })}
        </span>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by itself, and the keyboard must reach it */}
      <section className="scroll" tabIndex={0} aria-label={say("Entries")}>
        <table className="data entries">
          <thead>
            <tr>
              <th scope="col">{say("Day")}</th>
              <th scope="col">{say("Entry")}</th>
              <th scope="col">{say("What it says")}</th>
              <th scope="col">{say("By")}</th>
              <th scope="col">{say("Recorded")}</th>
              <th scope="col">{say("State")}</th>
              <th scope="col">
                <span className="unseen">{say("Correct or withdraw")}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {entries.map((entry) => (
              <tr key={entry.id}>
                <th scope="row">{entry.date ? dateWords(entry.date) : "–"}</th>
                <td>{capitalised(entryKindInWords(entry.kind))}</td>
                <td className="says">
                  {entry.kind === "document" ? (
                    <a href={fileUrl(fileOf(entry))}>{inWords(entryLine(entry))}</a>
                  ) : (
                    inWords(entryLine(entry))
                  )}
                  {entry.kind === "decision" && <DecisionBasis decision={entry.body as Decision} />}
                </td>
                <td>{entry.author}</td>
                <td className="day">{dateWords(entry.recordedAt.slice(0, 10))}</td>
                <td>{stateOf(entry, view)}</td>
                <td>
                  <EntryActions
                    entry={entry}
                    childId={view.child.id}
                    onWithdraw={() => setWithdrawing(entry)}
                  />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {withdrawing && (
        <Withdraw
          entry={withdrawing}
          childId={view.child.id}
          onClose={() => setWithdrawing(null)}
          onDone={onDone}
        />
      )}
    </>
  )
}

const fileOf = ({ body }: Entry): string => (body as { readonly file: string }).file

function stateOf(entry: Entry, view: ChildView): string {
  const reason = entry.reason ? inWords(entry.reason) : null
  if (entry.supersededBy !== null) {
    const by = view.entries.find(({ id }) => id === entry.supersededBy)
    return by?.kind === "withdrawal" ? say("withdrawn|entry") : say("corrected|entry")
  }
  if (entry.kind === "withdrawal")
    return reason === null ? say("withdraws an entry") : say("withdraws an entry: {reason}", { reason })
  if (entry.supersedes === null) return say("in force|entry")
  return reason === null
    ? say("in force, corrects an entry")
    : say("in force, corrects an entry: {reason}", { reason })
}

function EntryActions(props: {
  readonly entry: Entry
  readonly childId: string
  readonly onWithdraw: () => void
}) {
  const { entry, childId, onWithdraw } = props
  if (entry.supersededBy !== null || entry.kind === "child" || entry.kind === "withdrawal") return null
  const what = {
    kind: entryKindInWords(entry.kind),
    day: entry.date ? dateWords(entry.date) : say("no day"),
  }
  return (
    <span className="row-actions">
      {entry.kind === "visit" && (
        <Link
          to="/children/$childId/visit"
          params={{ childId }}
          search={{ corrects: entry.id }}
          aria-label={say("correct the {kind} of {day}", what)}
        >
          {say("correct")}
        </Link>
      )}
      <button
        type="button"
        className="link"
        aria-label={say("withdraw the {kind} of {day}", what)}
        onClick={onWithdraw}
      >
        {say("withdraw")}
      </button>
    </span>
  )
}
