import { type ReactNode, useId, useState } from "react"
import { symptomWords } from "../../chart/words.js"
import type { Check } from "../../engine/assessment.js"
import type {
  AccommodationMethod,
  Eye,
  LengthMethod,
  RefractionMethod,
  Symptom,
} from "../../engine/course.js"
import { EYES } from "../../engine/course.js"
import { isDoubt } from "../child/checks.js"
import { capitalised, sentence } from "../format.js"
import { Choices, Field } from "../parts/field.js"
import type { DraftFault } from "./examination.js"
import type { FieldNote } from "./field-notes.js"
import { keepMoreOpen, keptMoreOpen } from "./kept-draft.js"
import {
  ASKED_SYMPTOMS,
  type EyeField,
  hasMore,
  MORE_FIELDS,
  type VisitDraft,
  withEyeField,
} from "./visit-draft.js"

interface TableProps {
  readonly draft: VisitDraft
  readonly onChange: (draft: VisitDraft) => void
  readonly faults: readonly DraftFault[]
  readonly notes: Readonly<Record<Eye, Readonly<Partial<Record<EyeField, readonly FieldNote[]>>>>>
  readonly checks: readonly Check[]
  readonly devices: readonly string[]
  /** A field that was left: from then on it says what is wrong with it. */
  readonly onLeave: (eye: Eye, field: EyeField) => void
}

const CYCLOPLEGIA = [
  ["yes", "yes"],
  ["no", "no"],
] as const

/** The parts of the engine's paths that belong to a field. */
const PATHS: Readonly<Partial<Record<EyeField, string>>> = { length: "axialLength", refraction: "refraction" }

export function ExaminationTable(props: TableProps) {
  const { draft, onChange, devices } = props
  return (
    <div className="examination">
      <div className="examination-head" aria-hidden="true">
        <span />
        <b>Right</b>
        <b>Left</b>
      </div>
      <Row {...props} field="length" label="Length" unit="mm, readings with spaces between">
        <div className="how">
          <select
            aria-label="How the length was measured"
            value={draft.lengthMethod}
            onChange={(event) => onChange({ ...draft, lengthMethod: event.target.value as LengthMethod })}
          >
            <option value="optical-biometry">optical biometry</option>
            <option value="ultrasound">ultrasound</option>
          </select>
          <input
            aria-label="Device, any name that tells one from another"
            placeholder="device"
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
      </Row>
      <Row {...props} field="refraction" label="Refraction" unit="D, as −2.00 −0.50 x 175">
        <div className="how">
          <select
            aria-label="How the refraction was found"
            value={draft.refractionMethod}
            onChange={(event) =>
              onChange({ ...draft, refractionMethod: event.target.value as RefractionMethod })
            }
          >
            <option value="autorefraction">autorefraction</option>
            <option value="subjective">subjective</option>
            <option value="retinoscopy">retinoscopy</option>
          </select>
        </div>
      </Row>
      <div className="examination-row symptoms">
        <b aria-hidden="true">Cycloplegia</b>
        <Choices
          legend="Cycloplegia"
          options={CYCLOPLEGIA}
          value={draft.cycloplegic === null ? null : draft.cycloplegic ? "yes" : "no"}
          onChange={(answer) => onChange({ ...draft, cycloplegic: answer === "yes" })}
          entry
        />
      </div>
      <Row {...props} field="pupil" label="Pupil" unit="mm, in bright light" />
      <Row {...props} field="accommodation" label="Accommodation" unit="D">
        <div className="how">
          <select
            aria-label="How accommodation was measured"
            value={draft.accommodationMethod}
            onChange={(event) =>
              onChange({ ...draft, accommodationMethod: event.target.value as AccommodationMethod })
            }
          >
            <option value="push-up">push-up</option>
            <option value="retinoscopy">retinoscopy</option>
          </select>
        </div>
      </Row>
      <Row {...props} field="acuityFar" label="Acuity, far" unit="logMAR or 20/25" />
      <Row {...props} field="acuityNear" label="Acuity, near" unit="logMAR or 20/25" />
      <Symptoms draft={draft} onChange={onChange} />
      <More {...props} />
    </div>
  )
}

/** What only some practices measure; opened once it stays open on this computer, and whatever is filled is in view. */
function More(props: TableProps) {
  const { draft, faults } = props
  const [wanted, setWanted] = useState(() => keptMoreOpen() || hasMore(draft))
  const id = useId()
  const open = wanted || faults.some(({ field }) => MORE_FIELDS.some((more) => more === field))
  const toggle = () => {
    setWanted(!open)
    keepMoreOpen(!open)
  }
  return (
    <div className="more">
      <button type="button" className="link" aria-expanded={open} aria-controls={id} onClick={toggle}>
        {open ? "Fewer measurements" : "More measurements"}
      </button>{" "}
      {!open && (
        <span className="soft small">
          {hasMore(draft) ? "with figures that are not shown" : "corneal radii, pupil in dim light"}
        </span>
      )}
      <div id={id}>
        {open && (
          <>
            <Row {...props} field="cornea" label="Cornea" unit="mm, both radii, as 7.85 7.70" />
            <Row {...props} field="pupilDim" label="Pupil, dim" unit="mm, in dim light" />
          </>
        )}
      </div>
    </div>
  )
}

function Row(
  props: TableProps & {
    readonly field: EyeField
    readonly label: string
    readonly unit: string
    readonly children?: ReactNode
  },
) {
  const { field, label, unit, draft, onChange, faults, notes, checks, onLeave, children } = props
  return (
    <fieldset className="examination-row">
      <legend className="unseen">{label}</legend>
      <div>
        <b aria-hidden="true">{label}</b> <span className="soft small">{unit}</span>
        {children}
      </div>
      {EYES.map((eye) => {
        const fault = faults.find((candidate) => candidate.eye === eye && candidate.field === field)?.message
        const doubts = checks.filter(
          (check) => isDoubt(check) && check.path.startsWith(`${eye}.${PATHS[field]}`),
        )
        const said = [
          ...(fault ? [] : (notes[eye][field] ?? [])),
          ...doubts.map(({ why }) => ({ text: sentence(why), caution: true })),
        ]
        return (
          <Field
            key={eye}
            label={capitalised(eye)}
            fault={fault}
            note={
              said.length === 0
                ? undefined
                : said.map(({ text, caution }) => <Note key={text} text={text} caution={caution} />)
            }
          >
            {(control) => (
              <input
                {...control}
                data-entry
                aria-label={`${label}, ${eye}`}
                autoComplete="off"
                spellCheck={false}
                value={draft[eye][field]}
                onBlur={() => onLeave(eye, field)}
                onChange={(event) => onChange(withEyeField(draft, { eye, field, value: event.target.value }))}
              />
            )}
          </Field>
        )
      })}
    </fieldset>
  )
}

function Note({ text, caution = false }: { readonly text: string; readonly caution?: boolean | undefined }) {
  return (
    <span className={caution ? "note field-caution" : "note"}>{caution ? `Look again: ${text}` : text}</span>
  )
}

const GRADES: readonly Symptom["grade"][] = [0, 1, 2, 3]

function Symptoms({ draft, onChange }: Pick<TableProps, "draft" | "onChange">) {
  const unasked = ASKED_SYMPTOMS.filter((kind) => draft.symptoms[kind] === undefined)
  return (
    <div className="examination-row symptoms">
      <div>
        <b>Symptoms</b> <span className="soft small">0 none to 3 severe; blank if not asked</span>
        {unasked.length > 0 && (
          <button
            type="button"
            className="small"
            onClick={() =>
              onChange({
                ...draft,
                symptoms: { ...Object.fromEntries(unasked.map((kind) => [kind, 0])), ...draft.symptoms },
              })
            }
          >
            All others 0
          </button>
        )}
      </div>
      <div className="symptom-list">
        {ASKED_SYMPTOMS.map((kind) => (
          <label key={kind}>
            {capitalised(symptomWords(kind))}
            <select
              data-entry
              value={draft.symptoms[kind] ?? ""}
              onChange={(event) => {
                const { [kind]: _, ...others } = draft.symptoms
                const grade = GRADES.find((value) => String(value) === event.target.value)
                onChange({ ...draft, symptoms: grade === undefined ? others : { ...others, [kind]: grade } })
              }}
            >
              <option value="">–</option>
              {GRADES.map((grade) => (
                <option key={grade} value={grade}>
                  {grade}
                </option>
              ))}
            </select>
          </label>
        ))}
      </div>
    </div>
  )
}
