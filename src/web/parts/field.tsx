import { type KeyboardEvent, type ReactNode, useId } from "react"

interface FieldProps {
  readonly label: string
  /** Said under the field while nothing is wrong. */
  readonly note?: ReactNode
  readonly fault?: string | undefined
  /** Receives what ties the control to its label, note and fault. */
  readonly children: (control: ControlProps) => ReactNode
}

interface ControlProps {
  readonly id: string
  readonly "aria-describedby": string | undefined
  readonly "aria-invalid": boolean | undefined
}

/** A labelled control with its note and, when there is one, what is wrong with it. */
export function Field({ label, note, fault, children }: FieldProps) {
  const id = useId()
  const describedBy = [fault && `${id}-fault`, note && `${id}-note`].filter(Boolean).join(" ")
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      {children({
        id,
        "aria-describedby": describedBy || undefined,
        "aria-invalid": fault !== undefined || undefined,
      })}
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
    </div>
  )
}

interface ChoicesProps<Value extends string> {
  readonly legend: string
  readonly options: readonly (readonly [value: Value, label: string])[]
  readonly value: Value | null
  readonly onChange: (value: Value) => void
  readonly note?: ReactNode
  readonly fault?: string | undefined
  /** Marks the choice as a measurement, for forms that walk from one to the next. */
  readonly entry?: boolean
}

/** One of a few, all in view; the arrow keys move between them, and the first letter chooses. */
export function Choices<Value extends string>(props: ChoicesProps<Value>) {
  const id = useId()
  const describedBy = [props.fault && `${id}-fault`, props.note && `${id}-note`].filter(Boolean).join(" ")
  const chooseByLetter = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return
    const letter = event.key.toLowerCase()
    const found = props.options.filter(([, label]) => label.startsWith(letter))
    // Where several begin with the letter, as "niña" and "niño" do, each press goes on to the next.
    const at = found.findIndex(([value]) => value === props.value)
    const option = found[(at + 1) % found.length]
    if (option) props.onChange(option[0])
  }
  // The letters are an addition: the choice itself is made of plain radio buttons.
  return (
    <fieldset className="field" aria-describedby={describedBy || undefined} onKeyDown={chooseByLetter}>
      <legend>{props.legend}</legend>
      <div className="choices">
        {props.options.map(([value, label], index) => (
          <label key={value}>
            <input
              type="radio"
              name={id}
              value={value}
              checked={props.value === value}
              data-entry={(props.entry && index === 0) || undefined}
              onChange={() => props.onChange(value)}
            />
            {label}
          </label>
        ))}
      </div>
      {props.fault && (
        <p className="field-fault" id={`${id}-fault`}>
          {props.fault}
        </p>
      )}
      {props.note && (
        <p className="field-note" id={`${id}-note`}>
          {props.note}
        </p>
      )}
    </fieldset>
  )
}
