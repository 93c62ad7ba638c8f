import type { ChoiceOption } from "../../engine/choices/choices.js"
import { say } from "../../engine/say.js"
import { capitalised } from "../format.js"
import { Disclosure } from "../parts/disclosure.js"

/** Which options stand side by side: all of them, until somebody takes one away. */
export function OptionsShown(props: {
  readonly options: readonly ChoiceOption[]
  readonly hidden: ReadonlySet<string>
  readonly onHidden: (hidden: ReadonlySet<string>) => void
  readonly withStrong: boolean
  readonly onWithStrong: (withStrong: boolean) => void
}) {
  const { options, hidden, onHidden, withStrong, onWithStrong } = props
  const shown = options.filter(({ id }) => !hidden.has(id)).length
  const toggle = (id: string) => {
    const next = new Set(hidden)
    if (!next.delete(id)) next.add(id)
    onHidden(next)
  }
  return (
    <Disclosure label={say("Shown: {shown} of {all}", { shown, all: options.length })}>
      {() => (
        <fieldset className="options-shown">
          <legend className="unseen">{say("Options that are shown")}</legend>
          {options.map(({ id, name }) => (
            <label key={id}>
              <input type="checkbox" checked={!hidden.has(id)} onChange={() => toggle(id)} />
              {capitalised(name)}
            </label>
          ))}
          <label>
            <input
              type="checkbox"
              checked={withStrong}
              onChange={(event) => onWithStrong(event.target.checked)}
            />
            {say("Drops of 0.5 and 1 % as well")}
          </label>
        </fieldset>
      )}
    </Disclosure>
  )
}
