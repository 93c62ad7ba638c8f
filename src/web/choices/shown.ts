import type { ChoiceOption } from "../../engine/choices/choices.js"
import type { ChoicesRow } from "../../engine/choices/choices-table.js"
import { capitalised, inWords } from "../format.js"

/** Rows that are kept for every option that was shown; of the option decided on everything is kept. */
const FOR_EVERY_OPTION: readonly string[] = [
  "length",
  "chance",
  "planned-length",
  "planned-chance",
  "withheld",
]
/** The limit of the course file for one text. */
const LONGEST = 200

/** The figures of this moment as they were worded, to be kept with a decision. */
export function figuresShown({
  options,
  rows,
  chosenId,
}: {
  readonly options: readonly ChoiceOption[]
  readonly rows: readonly ChoicesRow[]
  readonly chosenId: string | null
}): readonly { readonly label: string; readonly value: string }[] {
  return options.flatMap(({ id, name }, index) =>
    rows
      .filter((row) => id === chosenId || FOR_EVERY_OPTION.includes(row.id))
      .map(({ label, cells }) => ({
        label: cut(`${capitalised(name)}: ${label.charAt(0).toLowerCase()}${label.slice(1)}`),
        value: cut(inWords((cells[index] ?? []).join("; "))),
      })),
  )
}

const cut = (text: string): string => (text.length <= LONGEST ? text : `${text.slice(0, LONGEST - 2)} …`)
