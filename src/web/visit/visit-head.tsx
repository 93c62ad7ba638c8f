import type { ReactNode } from "react"
import { dateWords } from "../../chart/words.js"
import { STAGES } from "../../engine/protocol/protocol.js"
import { say } from "../../engine/say.js"
import { capitalised } from "../format.js"
import { Field } from "../parts/field.js"
import type { StageChoice, VisitDraft } from "./visit-draft.js"
import { STAGE_WORDS, type VisitPlan } from "./visit-plan.js"

/** The day, which examination it is, and for a correction why. */
export function VisitHead(props: {
  readonly draft: VisitDraft
  readonly onChange: (draft: VisitDraft) => void
  readonly today: string
  readonly found: VisitPlan["found"]
  readonly dateProblem: string | undefined
  /** The way out when the day is taken. */
  readonly wayOut: ReactNode
  readonly reason: { readonly text: string; readonly fault: string | undefined } | null
  readonly onReason: (text: string) => void
}) {
  const { draft, onChange, found, dateProblem, reason } = props
  const { owed } = found
  return (
    <div className="form-row visit-head">
      <Field label={say("Day of the visit")} fault={dateProblem} note={dateProblem && props.wayOut}>
        {(control) => (
          <input
            {...control}
            type="date"
            max={props.today}
            value={draft.date}
            onChange={(event) => onChange({ ...draft, date: event.target.value })}
          />
        )}
      </Field>
      <Field label={say("Examination")} note={owed ? stateWords(owed) : say("none is owed on this day")}>
        {(control) => (
          <select
            {...control}
            value={draft.stage === found.stage ? "owed" : draft.stage}
            onChange={(event) => onChange({ ...draft, stage: event.target.value as StageChoice })}
          >
            <option value="owed">{capitalised(owed?.title ?? say(STAGE_WORDS.extra))}</option>
            {STAGES.filter((stage) => stage !== found.stage).map((stage) => (
              <option key={stage} value={stage}>
                {capitalised(say(STAGE_WORDS[stage]))}
              </option>
            ))}
            {owed && <option value="extra">{capitalised(say(STAGE_WORDS.extra))}</option>}
          </select>
        )}
      </Field>
      {reason && (
        <Field label={say("Why is it corrected?")} fault={reason.fault}>
          {(control) => (
            <input
              {...control}
              value={reason.text}
              onChange={(event) => props.onReason(event.target.value)}
            />
          )}
        </Field>
      )}
    </div>
  )
}

function stateWords({ state, due, opens }: NonNullable<VisitPlan["found"]["owed"]>): string {
  const day = dateWords(due)
  if (state === "overdue") return say("overdue, was due {day}", { day })
  if (state === "upcoming")
    return say("due {day}, its window opens {opens}", { day, opens: dateWords(opens) })
  return say("due {day}", { day })
}
