import { say } from "../../engine/say.js"

/** A title as it is typed, with a key of its own for as long as the page is open. */
export interface TitleRow {
  readonly key: string
  readonly title: string
}

const newRow = (title = ""): TitleRow => ({ key: crypto.randomUUID(), title })

export const rowsOf = (titles: readonly string[]): readonly TitleRow[] =>
  (titles.length > 0 ? titles : [""]).map((title) => newRow(title))

/** What was typed, without empty rows and repetitions. */
export const titlesOf = (rows: readonly TitleRow[]): readonly string[] => [
  ...new Set(rows.map(({ title }) => title.trim()).filter((title) => title !== "")),
]

/** The instruments that may send, each by its title. */
export function InstrumentRows(props: {
  readonly rows: readonly TitleRow[]
  readonly fault: string | undefined
  readonly onChange: (rows: readonly TitleRow[]) => void
}) {
  const { rows, fault, onChange } = props
  return (
    <fieldset className="field">
      <legend>{say("Instruments that may send")}</legend>
      <p className="field-note">
        {say(
          "Each by the title it calls itself (AE title), letter by letter as set on the instrument. Nobody else is answered.",
        )}
      </p>
      <div className="instrument-rows">
        {rows.map(({ key, title }, index) => (
          <div className="instrument-row" key={key}>
            <input
              aria-label={say("Title of instrument {number}", { number: index + 1 })}
              aria-invalid={fault !== undefined || undefined}
              autoComplete="off"
              spellCheck={false}
              value={title}
              onChange={(event) =>
                onChange(rows.map((row) => (row.key === key ? { ...row, title: event.target.value } : row)))
              }
            />
            {(rows.length > 1 || title !== "") && (
              <button
                type="button"
                className="link"
                aria-label={
                  title
                    ? say("Take {title} off the list", { title })
                    : say("Take row {number} off the list", { number: index + 1 })
                }
                onClick={() => {
                  const left = rows.filter((row) => row.key !== key)
                  onChange(left.length > 0 ? left : [newRow()])
                }}
              >
                {say("take off")}
              </button>
            )}
          </div>
        ))}
        {fault && <p className="field-fault">{fault}</p>}
        <button type="button" onClick={() => onChange([...rows, newRow()])}>
          {say("Add instrument")}
        </button>
      </div>
    </fieldset>
  )
}
