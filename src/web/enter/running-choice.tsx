import { dateWords } from "../../chart/words.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { capitalised } from "../format.js"
import { Field } from "../parts/field.js"
import type { runningTreatments } from "./running-treatments.js"

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
              {capitalised(treatmentName(treatment))}, since {dateWords(treatment.from)}
            </option>
          ))}
        </select>
      )}
    </Field>
  )
}
