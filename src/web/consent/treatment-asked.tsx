import { say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { TreatmentFields, type TypedTreatment } from "../enter/treatment-fields.js"
import { capitalised } from "../format.js"
import { Field } from "../parts/field.js"
import type { AskedTreatment } from "./asked-treatments.js"

/** One of the treatments likely wanted by its place, or another one as typed. */
export type Asked = { readonly at: number } | { readonly typed: TypedTreatment }

const ANOTHER = "another"

/** What is consented to: those in use, planned or decided first, then any other. */
export function TreatmentAsked(props: {
  readonly likely: readonly AskedTreatment[]
  readonly value: Asked
  readonly onChange: (value: Asked) => void
  readonly strengthFault: string | undefined
}) {
  const { likely, value, onChange } = props
  const another = { typed: { kind: "atropine" as const, strength: "" } }
  return (
    <>
      {likely.length > 0 && (
        <Field label={say("Consent to")}>
          {(control) => (
            <select
              {...control}
              value={"at" in value ? String(value.at) : ANOTHER}
              onChange={({ target }) =>
                onChange(target.value === ANOTHER ? another : { at: Number(target.value) })
              }
            >
              {likely.map(({ treatment, words }, index) => (
                <option key={treatmentName(treatment)} value={index}>
                  {capitalised(treatmentName(treatment))}, {words}
                </option>
              ))}
              <option value={ANOTHER}>{say("Another treatment or strength")}</option>
            </select>
          )}
        </Field>
      )}
      {"typed" in value && (
        <TreatmentFields
          label={say(likely.length > 0 ? "Treatment" : "Consent to")}
          value={value.typed}
          onChange={(typed) => onChange({ typed })}
          kindFault={undefined}
          strengthFault={props.strengthFault}
        />
      )}
    </>
  )
}
