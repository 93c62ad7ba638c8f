import type { ReactNode } from "react"
import { eyeWords } from "../../chart/words.js"
import type { Check } from "../../engine/assessment.js"
import { EYES, type Eye } from "../../engine/course.js"
import type { ExaminationMeasure } from "../../engine/protocol/examination-measures.js"
import { say } from "../../engine/say.js"
import { isDoubt } from "../child/checks.js"
import { sentence } from "../format.js"
import { Field } from "../parts/field.js"
import type { AnswerFault } from "./answer-drafts.js"
import type { DraftFault } from "./examination.js"
import type { FieldNote } from "./field-notes.js"
import { type EyeField, type VisitDraft, withEyeField } from "./visit-draft.js"

/** What every row of the form is given. */
export interface RowProps {
  readonly draft: VisitDraft
  readonly onChange: (draft: VisitDraft) => void
  readonly faults: readonly DraftFault[]
  readonly answerFaults: readonly AnswerFault[]
  readonly notes: Readonly<Record<Eye, Readonly<Partial<Record<EyeField, readonly FieldNote[]>>>>>
  readonly checks: readonly Check[]
  readonly devices: readonly string[]
  /** A field that was left, as "right length" or the id of a question: from then on it says what is wrong with it. */
  readonly onLeave: (field: string) => void
}

/** The parts of the engine's paths that belong to a field. */
const PATHS: Readonly<Partial<Record<EyeField, string>>> = { length: "axialLength", refraction: "refraction" }

/** One measure, both eyes side by side. */
export function EyeRow(
  props: RowProps & {
    readonly measure: ExaminationMeasure
    readonly field: EyeField
    readonly label: string
    readonly unit: string
    readonly children?: ReactNode
  },
) {
  const { measure, field, label, unit, draft, onChange, faults, notes, checks, onLeave, children } = props
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
            label={eye === "right" ? say("Right") : say("Left")}
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
                data-entry={measure}
                aria-label={say("{label}, {eye}", { label, eye: eyeWords(eye) })}
                autoComplete="off"
                spellCheck={false}
                value={draft[eye][field]}
                onBlur={() => onLeave(`${eye} ${field}`)}
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
    <span className={caution ? "note field-caution" : "note"}>
      {caution ? say("Look again: {text}", { text }) : text}
    </span>
  )
}
