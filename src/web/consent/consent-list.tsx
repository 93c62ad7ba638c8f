import { useState } from "react"
import { dateWords } from "../../chart/words.js"
import { treatmentName } from "../../engine/treatment-name.js"
import type { ChildView } from "../../server/contract/child.js"
import { capitalised, inWords } from "../format.js"
import type { CourseReading } from "../reading.js"
import type { ConsentRow, SignedConsent } from "./consent-rows.js"
import { SignedDialog } from "./signed-dialog.js"
import { WithdrawConsent } from "./withdraw-consent.js"

/** Every consent that stands in the record, with whether it holds, and what was signed. */
export function ConsentList(props: {
  readonly view: ChildView
  readonly reading: CourseReading
  readonly rows: readonly ConsentRow[]
  readonly onDone: (message: string) => void
}) {
  const { view, reading, rows, onDone } = props
  const [shown, setShown] = useState<ConsentRow | null>(null)
  const [withdrawing, setWithdrawing] = useState<ConsentRow | null>(null)
  return (
    <section className="card" aria-labelledby="consents">
      <h2 id="consents">Consents</h2>
      {rows.length === 0 ? (
        <p className="soft">None is recorded.</p>
      ) : (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by itself, and the keyboard must reach it
        <section className="scroll" tabIndex={0} aria-label="Consents of the family">
          <table className="data">
            <thead>
              <tr>
                <th scope="col">Given</th>
                <th scope="col">Covers</th>
                <th scope="col">State</th>
                <th scope="col">By</th>
                <th scope="col">The child</th>
                <th scope="col">Wording</th>
                <th scope="col">
                  <span className="unseen">Look at it or withdraw it</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => (
                <Row key={row.entry.id} row={row} onShow={setShown} onWithdraw={setWithdrawing} />
              ))}
            </tbody>
          </table>
        </section>
      )}
      {shown && <SignedDialog row={shown} onClose={() => setShown(null)} />}
      {withdrawing && (
        <WithdrawConsent
          row={withdrawing}
          view={view}
          reading={reading}
          onClose={() => setWithdrawing(null)}
          onDone={onDone}
        />
      )}
    </section>
  )
}

function Row(props: {
  readonly row: ConsentRow
  readonly onShow: (row: ConsentRow) => void
  readonly onWithdraw: (row: ConsentRow) => void
}) {
  const { row, onShow, onWithdraw } = props
  const { consent, state } = row
  const what = `the consent of ${dateWords(consent.date)} to ${treatmentName(consent.covers)}`
  return (
    <tr>
      <th scope="row">{dateWords(consent.date)}</th>
      <td>{capitalised(treatmentName(consent.covers))}</td>
      <td className={`consent-state ${state === "in-force" ? "" : "late"}`}>{stateInWords(row)}</td>
      <td>{byInWords(consent)}</td>
      <td>{consent.assent ? ASSENT_WORDS[consent.assent] : "not recorded"}</td>
      <td>{consent.wording ? `version ${consent.wording.version}` : "not recorded"}</td>
      <td>
        <span className="row-actions">
          <button type="button" className="link" aria-label={`show ${what}`} onClick={() => onShow(row)}>
            show
          </button>
          {consent.until === undefined && state !== "withdrawn" && (
            <button
              type="button"
              className="link"
              aria-label={`withdraw ${what}`}
              onClick={() => onWithdraw(row)}
            >
              withdraw
            </button>
          )}
        </span>
      </td>
    </tr>
  )
}

const ASSENT_WORDS = { given: "agrees", declined: "does not agree", "not-asked": "was not asked" } as const

function stateInWords({ state, consent, why }: ConsentRow): string {
  if (state === "in-force")
    return consent.until === undefined ? "in force" : `in force until ${dateWords(consent.until)}`
  return inWords(
    state === "withdrawn" ? (why ?? "withdrawn").replace(/^consent to .* was /, "") : (why ?? ""),
  )
}

function byInWords({ by }: SignedConsent): string {
  const words = [by?.name, by?.relation].filter((part) => part !== undefined)
  return words.length > 0 ? words.join(", ") : "not recorded"
}
