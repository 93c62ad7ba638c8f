import { dateWords } from "../../chart/words.js"
import type { Treatment } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { capitalised } from "../format.js"
import { Field } from "../parts/field.js"
import type { runningTreatments } from "./running-treatments.js"

const runningSince = (treatment: Treatment): string =>
  capitalised(
    say("{treatment}, since {day}", { treatment: treatmentName(treatment), day: dateWords(treatment.from) }),
  )

/** Which of the running treatments is meant; most children have one. */
export function RunningChoice(props: {
  readonly label: string
  readonly running: ReturnType<typeof runningTreatments>
  readonly value: string
  readonly onChange: (entryId: string) => void
}) {
  return (
    <Field label={props.label}>
      {(control) => (
        <select {...control} value={props.value} onChange={(event) => props.onChange(event.target.value)}>
          {props.running.map(({ treatment, entryId }) => (
            <option key={entryId} value={entryId}>
              {runningSince(treatment)}
            </option>
          ))}
        </select>
      )}
    </Field>
  )
}

/** As above where several may end at once; nothing is ticked in advance. */
export function RunningChoices(props: {
  readonly legend: string
  readonly running: ReturnType<typeof runningTreatments>
  readonly chosen: readonly string[]
  readonly onChange: (entryIds: readonly string[]) => void
  readonly fault: string | undefined
}) {
  const { legend, running, chosen, onChange, fault } = props
  const toggle = (entryId: string) =>
    onChange(chosen.includes(entryId) ? chosen.filter((one) => one !== entryId) : [...chosen, entryId])
  return (
    <fieldset className="field">
      <legend>{legend}</legend>
      <div className="choices">
        {running.map(({ treatment, entryId }) => (
          <label key={entryId}>
            <input type="checkbox" checked={chosen.includes(entryId)} onChange={() => toggle(entryId)} />
            {runningSince(treatment)}
          </label>
        ))}
      </div>
      {fault && <p className="field-fault">{fault}</p>}
    </fieldset>
  )
}
