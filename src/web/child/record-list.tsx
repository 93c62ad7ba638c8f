import { Link } from "@tanstack/react-router"
import { type FormEvent, useState } from "react"
import { dateWords } from "../../chart/words.js"
import type { ChildView } from "../../server/contract/child.js"
import type { WithdrawalBody } from "../../server/contract/entry.js"
import { faultsOf } from "../faults.js"
import { capitalised, inWords } from "../format.js"
import { Dialog } from "../parts/dialog.js"
import { Field } from "../parts/field.js"
import { useRecord } from "../queries.js"

type Entry = ChildView["entries"][number]

/** Every entry ever made for the child, what was corrected included; the way to correct or withdraw one. */
export function RecordList({
  view,
  onDone,
}: {
  readonly view: ChildView
  readonly onDone: (message: string) => void
}) {
  const [withdrawing, setWithdrawing] = useState<Entry | null>(null)
  const entries = view.entries.toSorted(
    (a, b) => (b.date ?? "").localeCompare(a.date ?? "") || b.recordedAt.localeCompare(a.recordedAt),
  )
  return (
    <details className="card record">
      <summary>Record: {entries.length === 1 ? "1 entry" : `${entries.length} entries`}</summary>
      <p className="soft small">Nothing is overwritten: a correction is a new entry with its reason.</p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by itself, and the keyboard must reach it */}
      <section className="scroll" tabIndex={0} aria-label="Entries">
        <table className="data">
          <thead>
            <tr>
              <th scope="col">Day</th>
              <th scope="col">Entry</th>
              <th scope="col">By</th>
              <th scope="col">Recorded</th>
              <th scope="col">State</th>
              <th scope="col">
                <span className="unseen">Correct or withdraw</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {entries.map((entry) => (
              <tr key={entry.id}>
                <th scope="row">{entry.date ? dateWords(entry.date) : "–"}</th>
                <td>{capitalised(entry.kind)}</td>
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
    </details>
  )
}

function stateOf(entry: Entry, view: ChildView): string {
  const reason = entry.reason ? `: ${inWords(entry.reason)}` : ""
  if (entry.supersededBy !== null) {
    const by = view.entries.find(({ id }) => id === entry.supersededBy)
    return by?.kind === "withdrawal" ? "withdrawn" : "corrected"
  }
  if (entry.kind === "withdrawal") return `withdraws an entry${reason}`
  return entry.supersedes === null ? "in force" : `in force, corrects an entry${reason}`
}

function EntryActions(props: {
  readonly entry: Entry
  readonly childId: string
  readonly onWithdraw: () => void
}) {
  const { entry, childId, onWithdraw } = props
  if (entry.supersededBy !== null || entry.kind === "child" || entry.kind === "withdrawal") return null
  const what = `the ${entry.kind} of ${entry.date ? dateWords(entry.date) : "no day"}`
  return (
    <span className="row-actions">
      {entry.kind === "visit" && (
        <Link
          to="/children/$childId/visit"
          params={{ childId }}
          search={{ corrects: entry.id }}
          aria-label={`correct ${what}`}
        >
          correct
        </Link>
      )}
      <button type="button" className="link" aria-label={`withdraw ${what}`} onClick={onWithdraw}>
        withdraw
      </button>
    </span>
  )
}

function Withdraw(props: {
  readonly entry: Entry
  readonly childId: string
  readonly onClose: () => void
  readonly onDone: (message: string) => void
}) {
  const { entry, childId, onClose, onDone } = props
  const [reason, setReason] = useState("")
  const withdraw = useRecord<WithdrawalBody>(childId, `entries/${entry.id}/withdrawal`)
  const faults = faultsOf(withdraw.error, ["reason"])
  const submit = (event: FormEvent) => {
    event.preventDefault()
    withdraw.mutate(
      { reason },
      {
        onSuccess: () => {
          onDone(`The ${entry.kind} is withdrawn; it stays in the record with its reason.`)
          onClose()
        },
      },
    )
  }
  return (
    <Dialog
      title={`Withdraw the ${entry.kind}${entry.date ? ` of ${dateWords(entry.date)}` : ""}`}
      onClose={onClose}
      failure={withdraw.error}
    >
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <Field
          label="Why?"
          note="For an entry that should not be there at all, such as one made for the wrong child."
          fault={faults.at("reason")}
        >
          {(control) => (
            <input {...control} value={reason} onChange={(event) => setReason(event.target.value)} />
          )}
        </Field>
        <div className="form-actions">
          <button type="submit" className="primary" disabled={withdraw.isPending}>
            Withdraw
          </button>
        </div>
      </form>
    </Dialog>
  )
}
