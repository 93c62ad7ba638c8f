import { TREATMENT_KINDS, type TreatmentKind } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { capitalised } from "../format.js"
import { Field } from "../parts/field.js"
import { parseNumber } from "../visit/readings.js"

const KINDS = TREATMENT_KINDS.filter((kind) => kind !== "none")

/** A kind of treatment and, for drops, the strength as typed. */
export interface TypedTreatment {
  readonly kind: TreatmentKind
  readonly strength: string
}

/**
 * What is sent. A strength that is no number is sent as it was typed, so that the server refuses it at its field
 * and nothing is recorded without it.
 */
export function treatmentBody({ kind, strength }: TypedTreatment): {
  kind: TreatmentKind
  concentrationPercent?: number
} {
  if (kind !== "atropine" || strength.trim() === "") return { kind }
  return { kind, concentrationPercent: parseNumber(strength) ?? (strength as unknown as number) }
}

export function TreatmentFields(props: {
  readonly label?: string
  readonly value: TypedTreatment
  readonly onChange: (value: TypedTreatment) => void
  readonly kindFault: string | undefined
  readonly strengthFault: string | undefined
}) {
  const { label = say("Treatment"), value, onChange } = props
  return (
    <>
      <Field label={label} fault={props.kindFault}>
        {(control) => (
          <select
            {...control}
            value={value.kind}
            onChange={(event) => onChange({ ...value, kind: event.target.value as TreatmentKind })}
          >
            {KINDS.map((kind) => (
              <option key={kind} value={kind}>
                {capitalised(treatmentName({ kind }))}
              </option>
            ))}
          </select>
        )}
      </Field>
      {value.kind === "atropine" && (
        <Field label={say("Strength, % w/v")} fault={props.strengthFault}>
          {(control) => (
            <input
              {...control}
              inputMode="decimal"
              autoComplete="off"
              value={value.strength}
              onChange={(event) => onChange({ ...value, strength: event.target.value })}
            />
          )}
        </Field>
      )}
    </>
  )
}
