import { type ReactNode, useId } from "react"
import { TREATMENT_KINDS } from "../../engine/course.js"
import { measureName } from "../../engine/protocol/measured.js"
import { ANCHORS, DECIDES, IN_FORCE, MEASURES, STEP_KINDS } from "../../engine/protocol/protocol.js"
import { stepTitle } from "../../engine/protocol/titles.js"
import { msg, say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { capitalised } from "../format.js"
import { Field } from "../parts/field.js"
import { asKind, type StepDraft, type StepFigure } from "./protocols-draft.js"
import { ANCHOR_WORDS, DECIDES_WORDS, IN_FORCE_WORDS, KIND_WORDS, stageOptions } from "./protocols-words.js"

const TREATED = TREATMENT_KINDS.filter((kind) => kind !== "none")
const FIGURES: readonly (readonly [StepFigure, label: string, note?: string])[] = [
  ["offsetMonths", msg("Months after")],
  ["offsetDays", msg("Days after those"), msg("Empty for none.")],
  ["windowDaysBefore", msg("Opens, days before")],
  ["windowDaysAfter", msg("Closes, days after")],
]

/** The fields of one step; every change is handed on at once, so that faults and preview follow. */
export function StepFields({
  step,
  faultAt,
  onChange,
  onRemove,
}: {
  readonly step: StepDraft
  readonly faultAt: (field: string) => string | undefined
  readonly onChange: (step: StepDraft) => void
  readonly onRemove: () => void
}) {
  const isDecision = step.kind === "decision"
  const set = (change: Partial<StepDraft>) => onChange({ ...step, ...change })
  return (
    <div className="form">
      <div className="form-row">
        <TextField
          label={say("Title")}
          value={stepTitle(step)}
          fault={faultAt("title")}
          onChange={(title) => set({ title })}
        />
        <SelectField
          label={say("Kind")}
          value={step.kind}
          options={STEP_KINDS.map((kind) => [kind, say(KIND_WORDS[kind])])}
          fault={faultAt("kind")}
          onChange={(kind) => onChange(asKind(step, kind))}
        />
        <SelectField
          label={say("Counted from")}
          value={step.anchor}
          options={ANCHORS.map((anchor) => [anchor, say(ANCHOR_WORDS[anchor])])}
          fault={faultAt("anchor")}
          onChange={(anchor) => set({ anchor })}
        />
      </div>
      <div className="form-row">
        {FIGURES.map(([name, label, note]) => (
          <TextField
            key={name}
            label={say(label)}
            note={note && say(note)}
            value={step[name]}
            fault={faultAt(name)}
            onChange={(value) => set({ [name]: value })}
          />
        ))}
      </div>
      {isDecision ? (
        <DecisionFields step={step} faultAt={faultAt} set={set} />
      ) : (
        <ExaminationFields step={step} faultAt={faultAt} set={set} />
      )}
      <Ticks
        legend={say("Only for a child on")}
        note={say("With nothing ticked it is owed whatever is given.")}
        all={TREATED}
        ticked={step.onlyFor ?? []}
        name={(kind) => treatmentName({ kind })}
        fault={faultAt("onlyFor")}
        onChange={(kinds) => set({ onlyFor: kinds.length === 0 ? undefined : kinds })}
      />
      <div className="form-actions">
        <button type="button" onClick={onRemove}>
          {say("Remove this step")}
        </button>
      </div>
    </div>
  )
}

interface PartProps {
  readonly step: StepDraft
  readonly faultAt: (field: string) => string | undefined
  readonly set: (change: Partial<StepDraft>) => void
}

function DecisionFields({ step, faultAt, set }: PartProps) {
  return (
    <div className="form-row">
      <SelectField
        label={say("What is decided")}
        value={step.decides ?? "stop"}
        options={DECIDES.map((one) => [one, say(DECIDES_WORDS[one])])}
        fault={faultAt("decides")}
        onChange={(decides) => set({ decides, nightsPerWeek: decides === "step-down" ? "6" : "" })}
      />
      {step.decides === "step-down" && (
        <TextField
          label={say("Nights a week from then on")}
          value={step.nightsPerWeek}
          fault={faultAt("nightsPerWeek")}
          onChange={(nightsPerWeek) => set({ nightsPerWeek })}
        />
      )}
    </div>
  )
}

function ExaminationFields({ step, faultAt, set }: PartProps) {
  return (
    <>
      <Ticks
        legend={say("Measured in both eyes")}
        all={MEASURES}
        ticked={step.measures}
        name={measureName}
        fault={faultAt("measures")}
        onChange={(measures) => set({ measures })}
      />
      <Ticks
        legend={say("As well in an eye on atropine")}
        all={MEASURES}
        ticked={step.measuresOnAtropine}
        name={measureName}
        fault={faultAt("measuresOnAtropine")}
        onChange={(measuresOnAtropine) => set({ measuresOnAtropine })}
      />
      <Ticks
        legend={say("Must be in force while treated")}
        all={IN_FORCE}
        ticked={step.inForce}
        name={(one) => say(IN_FORCE_WORDS[one])}
        fault={faultAt("inForce")}
        onChange={(inForce) => set({ inForce })}
      />
      <Ticks
        legend={say("After a change of strength or treatment")}
        all={["again"]}
        ticked={step.restartsOnChange ? ["again"] : []}
        name={() => say("owed again, counted from the change")}
        fault={faultAt("restartsOnChange")}
        onChange={(ticked) => set({ restartsOnChange: ticked.length > 0 })}
      />
      <div className="form-row">
        <SelectField
          label={say("Questions asked as at a")}
          value={step.stage ?? ""}
          options={[["", say("stage found from the steps above")], ...stageOptions()]}
          fault={faultAt("stage")}
          onChange={(stage) => set({ stage: stage === "" ? undefined : stage })}
        />
      </div>
    </>
  )
}

export function TextField({
  label,
  value,
  fault,
  note,
  onChange,
}: {
  readonly label: string
  readonly value: string
  readonly fault: string | undefined
  readonly note?: ReactNode
  readonly onChange: (value: string) => void
}) {
  return (
    <Field label={label} fault={fault} note={note}>
      {(control) => (
        <input
          {...control}
          autoComplete="off"
          value={value}
          onChange={(event) => onChange(event.target.value)}
        />
      )}
    </Field>
  )
}

function SelectField<Value extends string>({
  label,
  value,
  options,
  fault,
  onChange,
}: {
  readonly label: string
  readonly value: Value
  readonly options: readonly (readonly [Value, string])[]
  readonly fault: string | undefined
  readonly onChange: (value: Value) => void
}) {
  return (
    <Field label={label} fault={fault}>
      {(control) => (
        <select {...control} value={value} onChange={(event) => onChange(event.target.value as Value)}>
          {options.map(([one, words]) => (
            <option key={one} value={one}>
              {words}
            </option>
          ))}
        </select>
      )}
    </Field>
  )
}

function Ticks<Value extends string>({
  legend,
  note,
  all,
  ticked,
  name,
  fault,
  onChange,
}: {
  readonly legend: string
  readonly note?: string
  readonly all: readonly Value[]
  readonly ticked: readonly Value[]
  readonly name: (value: Value) => string
  readonly fault: string | undefined
  readonly onChange: (ticked: readonly Value[]) => void
}) {
  const id = useId()
  const said = [fault && `${id}-fault`, note && `${id}-note`].filter(Boolean).join(" ")
  return (
    <fieldset className="field" aria-describedby={said || undefined}>
      <legend>{legend}</legend>
      <div className="choices">
        {all.map((value) => (
          <label key={value}>
            <input
              type="checkbox"
              checked={ticked.includes(value)}
              // In the order of the list, however they were ticked.
              onChange={(event) =>
                onChange(all.filter((one) => (one === value ? event.target.checked : ticked.includes(one))))
              }
            />
            {capitalised(name(value))}
          </label>
        ))}
      </div>
      {fault && (
        <p className="field-fault" id={`${id}-fault`}>
          {fault}
        </p>
      )}
      {note && (
        <p className="field-note" id={`${id}-note`}>
          {note}
        </p>
      )}
    </fieldset>
  )
}
