import type { AccommodationMethod, LengthMethod, RefractionMethod } from "../../engine/course.js"
import type { ExaminationMeasure } from "../../engine/protocol/examination-measures.js"
import { say } from "../../engine/say.js"
import { Choices } from "../parts/field.js"
import { EyeRow, type RowProps } from "./eye-row.js"
import { SymptomRow } from "./symptom-row.js"
import type { EyeField } from "./visit-draft.js"

/** Where each measure is typed. Both refractions share their row. */
export const MEASURE_FIELDS = {
  "axial-length": "length",
  refraction: "refraction",
  "cycloplegic-refraction": "refraction",
  "cornea-radius": "cornea",
  "photopic-pupil": "pupil",
  "mesopic-pupil": "pupilDim",
  accommodation: "accommodation",
  "near-acuity": "acuityNear",
  "distance-acuity": "acuityFar",
  "intraocular-pressure": "pressure",
} as const satisfies Readonly<Record<Exclude<ExaminationMeasure, "symptoms">, EyeField>>

export function MeasureRow(props: RowProps & { readonly measure: ExaminationMeasure }) {
  switch (props.measure) {
    case "symptoms":
      return <SymptomRow draft={props.draft} onChange={props.onChange} />
    case "distance-acuity":
      return <EyeRow {...props} field="acuityFar" label={say("Acuity, far")} unit={say("logMAR or 20/25")} />
    case "near-acuity":
      return (
        <EyeRow {...props} field="acuityNear" label={say("Acuity, near")} unit={say("logMAR or 20/25")} />
      )
    case "photopic-pupil":
      return <EyeRow {...props} field="pupil" label={say("Pupil")} unit={say("mm, in bright light")} />
    case "mesopic-pupil":
      return <EyeRow {...props} field="pupilDim" label={say("Pupil, dim")} unit={say("mm, in dim light")} />
    case "accommodation":
      return <AccommodationRow {...props} />
    case "axial-length":
      return <LengthRow {...props} />
    case "cornea-radius":
      return (
        <EyeRow {...props} field="cornea" label={say("Cornea")} unit={say("mm, both radii, as 7.85 7.70")} />
      )
    case "intraocular-pressure":
      return <EyeRow {...props} field="pressure" label={say("Pressure")} unit="mmHg" />
    case "refraction":
    case "cycloplegic-refraction":
      return <RefractionRow {...props} />
  }
}

type OneRow = RowProps & { readonly measure: ExaminationMeasure }

function LengthRow(props: OneRow) {
  const { draft, onChange, devices } = props
  return (
    <EyeRow {...props} field="length" label={say("Length")} unit={say("mm, readings with spaces between")}>
      <div className="how">
        <select
          aria-label={say("How the length was measured")}
          value={draft.lengthMethod}
          onChange={(event) => onChange({ ...draft, lengthMethod: event.target.value as LengthMethod })}
        >
          <option value="optical-biometry">{say("optical biometry")}</option>
          <option value="ultrasound">{say("ultrasound")}</option>
        </select>
        <input
          aria-label={say("Device, any name that tells one from another")}
          placeholder={say("device")}
          autoComplete="off"
          list="devices"
          value={draft.device}
          onChange={(event) => onChange({ ...draft, device: event.target.value })}
        />
        <datalist id="devices">
          {devices.map((device) => (
            <option key={device} value={device} />
          ))}
        </datalist>
      </div>
    </EyeRow>
  )
}

function AccommodationRow(props: OneRow) {
  const { draft, onChange } = props
  return (
    <EyeRow {...props} field="accommodation" label={say("Accommodation")} unit="D">
      <div className="how">
        <select
          aria-label={say("How accommodation was measured")}
          value={draft.accommodationMethod}
          onChange={(event) =>
            onChange({ ...draft, accommodationMethod: event.target.value as AccommodationMethod })
          }
        >
          <option value="push-up">{say("push-up")}</option>
          <option value="retinoscopy">{say("retinoscopy")}</option>
        </select>
      </div>
    </EyeRow>
  )
}

function RefractionRow(props: OneRow) {
  const { draft, onChange } = props
  return (
    <EyeRow {...props} field="refraction" label={say("Refraction")} unit={say("D, as −2.00 −0.50 x 175")}>
      <div className="how">
        <select
          aria-label={say("How the refraction was found")}
          value={draft.refractionMethod}
          onChange={(event) =>
            onChange({ ...draft, refractionMethod: event.target.value as RefractionMethod })
          }
        >
          <option value="autorefraction">{say("autorefraction")}</option>
          <option value="subjective">{say("subjective")}</option>
          <option value="retinoscopy">{say("retinoscopy")}</option>
        </select>
      </div>
    </EyeRow>
  )
}

/** Asked before the refraction that it belongs to. */
export function CycloplegiaRow({ draft, onChange }: Pick<RowProps, "draft" | "onChange">) {
  return (
    <div className="examination-row symptoms">
      <b aria-hidden="true">{say("Cycloplegia")}</b>
      <Choices
        legend={say("Cycloplegia")}
        options={[
          ["yes", say("yes")],
          ["no", say("no")],
        ]}
        value={draft.cycloplegic === null ? null : draft.cycloplegic ? "yes" : "no"}
        onChange={(answer) => onChange({ ...draft, cycloplegic: answer === "yes" })}
        entry
      />
    </div>
  )
}
