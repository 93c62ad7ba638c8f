import { useState } from "react"
import { dateWords } from "../../chart/words.js"
import { ASSENT_NAMES } from "../../engine/consent/signing-words.js"
import { languageName } from "../../engine/consent/wording-language.js"
import { say } from "../../engine/say.js"
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
      <h2 id="consents">{say("Consents")}</h2>
      {rows.length === 0 ? (
        <p className="soft">{say("None is recorded.")}</p>
      ) : (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by itself, and the keyboard must reach it
        <section className="scroll" tabIndex={0} aria-label={say("Consents of the family")}>
          <table className="data">
            <thead>
              <tr>
                <th scope="col">{say("Given")}</th>
                <th scope="col">{say("Covers")}</th>
                <th scope="col">{say("State")}</th>
                <th scope="col">{say("By|person")}</th>
                <th scope="col">{say("The child")}</th>
                <th scope="col">{say("Wording")}</th>
                <th scope="col">{say("Language")}</th>
                <th scope="col">
                  <span className="unseen">{say("Look at it or withdraw it")}</span>
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
  const [date, treatment] = [dateWords(consent.date), treatmentName(consent.covers)]
  const { wording } = consent
  return (
    <tr>
      <th scope="row">{dateWords(consent.date)}</th>
      <td>{capitalised(treatmentName(consent.covers))}</td>
      <td className={`consent-state ${state === "in-force" ? "" : "late"}`}>{stateInWords(row)}</td>
      <td>{byInWords(consent)}</td>
      <td>{consent.assent ? say(ASSENT_NAMES[consent.assent]) : say("not recorded")}</td>
      <td>{wording ? say("version {version}", { version: wording.version }) : say("not recorded")}</td>
      <td>{wording?.language === undefined ? say("not recorded") : languageName(wording.language)}</td>
      <td>
        <span className="row-actions">
          <button
            type="button"
            className="link"
            aria-label={say("show the consent of {date} to {treatment}", { date, treatment })}
            onClick={() => onShow(row)}
          >
            {say("show")}
          </button>
          {consent.until === undefined && state !== "withdrawn" && (
            <button
              type="button"
              className="link"
              aria-label={say("withdraw the consent of {date} to {treatment}", { date, treatment })}
              onClick={() => onWithdraw(row)}
            >
              {say("withdraw")}
            </button>
          )}
        </span>
      </td>
    </tr>
  )
}

function stateInWords({ state, consent, why, since }: ConsentRow): string {
  if (state === "in-force")
    return consent.until === undefined
      ? say("in force")
      : say("in force until {date}", { date: dateWords(consent.until) })
  if (state === "withdrawn" && since !== null) return say("withdrawn on {date}", { date: dateWords(since) })
  return inWords(why ?? "")
}

function byInWords({ by }: SignedConsent): string {
  const words = [by?.name, by?.relation].filter((part) => part !== undefined)
  return words.length > 0 ? words.join(", ") : say("not recorded")
}
