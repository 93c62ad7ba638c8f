import { useId } from "react"

/** Several of a few, all in view. */
export function Ticks<Value extends string>(props: {
  readonly legend: string
  readonly options: readonly (readonly [value: Value, label: string])[]
  readonly chosen: readonly Value[]
  readonly onChange: (chosen: readonly Value[]) => void
  readonly fault: string | undefined
}) {
  const { legend, options, chosen, onChange, fault } = props
  const id = useId()
  return (
    <fieldset className="field connection-ticks" aria-describedby={fault && `${id}-fault`}>
      <legend>{legend}</legend>
      {options.map(([value, label]) => (
        <label key={value}>
          <input
            type="checkbox"
            checked={chosen.includes(value)}
            aria-invalid={fault !== undefined || undefined}
            onChange={({ target }) =>
              onChange(target.checked ? [...chosen, value] : chosen.filter((each) => each !== value))
            }
          />
          {label}
        </label>
      ))}
      {fault && (
        <p className="field-fault" id={`${id}-fault`}>
          {fault}
        </p>
      )}
    </fieldset>
  )
}
