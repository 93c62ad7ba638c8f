import { say } from "../../engine/say.js"
import "./examinations.css"
import { type FormEvent, useState } from "react"
import { isSwitchedOn } from "../../engine/protocol/examination-plan.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { capitalised } from "../format.js"
import { useRecordPaper } from "../queries.js"
import { STAGE_WORDS } from "../visit/visit-plan.js"
import { type SwitchRow, switchGroups, switchPaper } from "./examination-rows.js"
import type { SettingsPartProps } from "./settings-part-props.js"

/** Which duties of the evidence an examination owes, with what was read for each; a clinician switches. */
export function ExaminationsPart({ practice, rules, onDone }: SettingsPartProps) {
  const paper = rules.papers.findLast(
    ({ kind, supersededBy }) => kind === "switches" && supersededBy === null,
  )
  const now = practice.rules.examinationSwitches
  const [id, setId] = useState(newEntryId)
  const [changed, setChanged] = useState<Readonly<Record<string, boolean>>>({})
  const record = useRecordPaper("switches")
  const faults = faultsOf(record.error, [])
  const count = Object.keys(changed).length
  const flip = (row: SwitchRow, isOn: boolean) => {
    const { [row.duty]: _, ...others } = changed
    setChanged(isOn === isSwitchedOn(row, now) ? others : { ...others, [row.duty]: isOn })
  }
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const body = switchPaper({ ...now, ...changed })
    const superseding = paper ? { supersedes: paper.id, reason: reasonOf(changed) } : {}
    record.mutate(
      { body, ...superseding, ...id },
      {
        onSuccess: () => {
          setId(newEntryId())
          setChanged({})
          onDone(say("Recorded: {what}.", { what: reasonOf(changed) }))
        },
      },
    )
  }
  return (
    <form className="card" aria-label={say("Examinations")} onSubmit={submit}>
      <p>
        {say(
          "A visit asks for what the protocol measures, and for what the duties below ask at its stage. A duty is on when a text was read that supports it. Where only the principle was read, or nothing, it is off until you switch it on. Signs that need care the same day are always asked about.",
        )}
      </p>
      <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
      {switchGroups().map(({ stage, rows }) => (
        <fieldset key={stage ?? "figures"} className="switch-group">
          <legend>
            {stage
              ? say("Asked first at the {stage}", { stage: say(STAGE_WORDS[stage]) })
              : say("Concerns raised from figures")}
          </legend>
          {rows.map((row) => (
            <SwitchLine
              key={row.duty}
              row={row}
              isOn={changed[row.duty] ?? isSwitchedOn(row, now)}
              onFlip={(isOn) => flip(row, isOn)}
            />
          ))}
        </fieldset>
      ))}
      <div className="form-actions switch-actions">
        <button type="submit" className="primary" disabled={record.isPending || count === 0}>
          {say("Record switches")}
        </button>
        <span className="soft small">
          {count === 0 ? say("nothing changed") : say("changed: {what}", { what: reasonOf(changed) })}
        </span>
      </div>
    </form>
  )
}

function SwitchLine(props: {
  readonly row: SwitchRow
  readonly isOn: boolean
  readonly onFlip: (isOn: boolean) => void
}) {
  const { row, isOn, onFlip } = props
  return (
    <div className="switch-line">
      <label>
        <input type="checkbox" checked={isOn} onChange={(event) => onFlip(event.target.checked)} />
        <span>
          <b>{capitalised(row.asks.join(", "))}</b> <span className="soft small">{row.when}</span>
        </span>
      </label>
      <p className="small">{row.words}</p>
      <p className="soft small">
        {row.duty}: {row.statusWords}
        {row.source && ` ${row.source}`}
        {row.note && ` ${row.note}`}
      </p>
    </div>
  )
}

/** "CD-028 on, CD-013 off": what changed, as the record keeps it. */
function reasonOf(changed: Readonly<Record<string, boolean>>): string {
  return Object.entries(changed)
    .map(([duty, isOn]) => (isOn ? say("{duty} on", { duty }) : say("{duty} off", { duty })))
    .join(", ")
}
