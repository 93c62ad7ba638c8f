import type { MappedColumn } from "../../engine/practice-rules.js"
import { msg, say } from "../../engine/say.js"
import type { ImportField, ImportQuestion } from "../../server/contract/imports.js"
import { Field } from "../parts/field.js"

const GROUPS: Readonly<Record<string, string>> = {
  child: msg("The child"),
  visit: msg("The visit"),
  eye: msg("Figures of an eye"),
  glasses: msg("Earlier glasses"),
  treatment: msg("Treatment"),
  "left-out": msg("Left out"),
}
/** What a column of the file holds, and in which unit. */
export function Column({
  heading,
  mapped,
  fields,
  asked,
  onChange,
}: {
  readonly heading: string
  readonly mapped: MappedColumn | undefined
  /** What is open about its unit. */
  readonly asked: ImportQuestion | undefined
  readonly fields: readonly ImportField[]
  readonly onChange: (column: MappedColumn | null) => void
}) {
  const own = fields.find(({ id }) => id === mapped?.field.replace(/^(right|left)\./, ""))
  const units = unitsOf({ own, mapped, asked })
  return (
    <>
      <Field label={heading}>
        {(control) => (
          <select
            {...control}
            value={mapped?.field ?? ""}
            onChange={({ target: { value } }) => onChange(value ? { heading, field: value } : null)}
          >
            <option value="">{say("leave out")}</option>
            {Object.entries(GROUPS).map(([group, title]) => (
              <optgroup key={group} label={say(title)}>
                {fields.filter((field) => field.group === group).flatMap(optionsOf)}
              </optgroup>
            ))}
          </select>
        )}
      </Field>
      {units.length > 0 && mapped && (
        <select
          aria-label={say("Unit of {heading}", { heading })}
          value={mapped.unit ?? (asked ? "" : (own?.unit ?? ""))}
          onChange={({ target: { value } }) =>
            onChange({ heading, field: mapped.field, ...(value === "" ? {} : { unit: value }) })
          }
        >
          {(asked || !own?.unit) && <option value="">{say("choose")}</option>}
          {units.map((unit) => (
            <option key={unit} value={unit}>
              {unitInWords(unit)}
            </option>
          ))}
        </select>
      )}
    </>
  )
}

/** The units that a column may be in; of a sex what its M means, once that had to be asked. */
function unitsOf({
  own,
  mapped,
  asked,
}: {
  readonly own: ImportField | undefined
  readonly mapped: MappedColumn | undefined
  readonly asked: ImportQuestion | undefined
}): readonly string[] {
  if (asked) return asked.choices
  if (own?.id === "sex") return mapped?.unit === undefined ? [] : Object.keys(M_WORDS)
  return own?.unit && own.alternatives.length > 0 ? [own.unit, ...own.alternatives] : []
}

const M_WORDS: Readonly<Record<string, string>> = {
  "F/M": msg("M is male"),
  "H/M": msg("M is mujer, female"),
}
const SIGNS: Readonly<Record<string, string>> = { "[diop]": "D", um: "µm" }

function unitInWords(unit: string): string {
  const words = M_WORDS[unit]
  return words ? say(words) : (SIGNS[unit] ?? unit)
}

function optionsOf({ id, title, perEye }: ImportField) {
  if (!perEye)
    return [
      <option key={id} value={id}>
        {title}
      </option>,
    ]
  return [
    <option key={`right.${id}`} value={`right.${id}`}>
      {say("{field}, right", { field: title })}
    </option>,
    <option key={`left.${id}`} value={`left.${id}`}>
      {say("{field}, left", { field: title })}
    </option>,
    <option key={id} value={id}>
      {say("{field}, the row’s eye", { field: title })}
    </option>,
  ]
}
