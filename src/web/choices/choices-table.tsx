import type { ChoiceOption } from "../../engine/choices/choices.js"
import { type ChoicesRow, isSameForAll } from "../../engine/choices/choices-table.js"
import { msg, say } from "../../engine/say.js"
import { capitalised, inWords } from "../format.js"

/** Longer cells are opened when they are asked for, so that the figures stay side by side. */
const LONGEST_CELL = 90

/** Rows are figures, columns options. The first column stays in view while the rest scrolls. */
export function ChoicesTable({
  options,
  rows,
}: {
  readonly options: readonly ChoiceOption[]
  readonly rows: readonly ChoicesRow[]
}) {
  if (options.length === 0) return <p>{say("No option is shown.")}</p>
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by itself, and the keyboard must reach it
    <section className="scroll" tabIndex={0} aria-label={say("Options side by side, scrolls sideways")}>
      <table className="data options">
        <thead>
          <tr>
            <td />
            {options.map(({ id, name }) => (
              <th key={id} scope="col">
                {capitalised(name)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ id, label, note, cells }) => (
            <tr key={id}>
              <th scope="row">
                {label}
                {note !== null && <span className="soft small">{note}</span>}
              </th>
              {isSameForAll({ cells }) ? (
                <td colSpan={options.length}>
                  <Cell lines={cells[0] ?? []} folds={FOLDS[id]} />
                </td>
              ) : (
                options.map((option, index) => (
                  <td key={option.id}>
                    <Cell lines={cells[index] ?? []} folds={FOLDS[id]} />
                  </td>
                ))
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

/**
 * Rows whose longer cells are folded, and what several lines of theirs are counted as; null folds a long line alone, such
 * as the reason why no figure is given. Figures are never folded.
 */
const FOLDS: Readonly<Record<string, string | null>> = {
  unwanted: msg("{count, plural, one {# report} other {# reports}}"),
  before: msg("{count, plural, one {# remark} other {# remarks}}"),
  "per-tenth": null,
}

function Cell({
  lines,
  folds,
}: {
  readonly lines: readonly string[]
  readonly folds: string | null | undefined
}) {
  const said = lines.map((line) => capitalised(inWords(line)))
  const [first = ""] = said
  const isLong = folds !== undefined && lines.join(" ").length > LONGEST_CELL
  if (isLong && said.length === 1) {
    const cut = first.search(/[;:] /)
    const head = cut > 0 ? first.slice(0, cut) : `${first.slice(0, LONGEST_CELL)} …`
    return (
      <details>
        <summary>{head}</summary>
        {cut > 0 ? capitalised(first.slice(cut + 2)) : first}
      </details>
    )
  }
  if (isLong && folds !== null) {
    return (
      <details>
        <summary>{say(folds, { count: said.length })}</summary>
        <ul>
          {said.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </details>
    )
  }
  return said.map((line) => <span key={line}>{line}</span>)
}
