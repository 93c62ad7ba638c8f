import { useState } from "react"
import type { MappedColumn, TableMapping } from "../../engine/practice-rules.js"
import { msg, say, shortDayInWords } from "../../engine/say.js"
import type { ImportAtWork, ImportField } from "../../server/contract/imports.js"
import { faultsOf } from "../faults.js"
import { Choices, Field } from "../parts/field.js"
import { useRecordPaper } from "../queries.js"
import { dayBy } from "./day-by.js"
import { useCheck, useQuestions } from "./use-import.js"

const GROUPS: Readonly<Record<string, string>> = {
  child: msg("The child"),
  visit: msg("The visit"),
  eye: msg("Figures of an eye"),
  glasses: msg("Earlier glasses"),
  treatment: msg("Treatment"),
  "left-out": msg("Left out"),
}
type Settled = "date-order" | "decimal-sign"

/** Columns to fields: what each column of the file is, and the questions the file leaves open. */
export function ColumnsCard({
  work,
  onChecking,
}: {
  readonly work: ImportAtWork
  readonly onChecking: () => void
}) {
  const [mapping, setMapping] = useState<TableMapping>(
    () => (work.mapping as TableMapping | null) ?? nothingMapped(work),
  )
  const [settled, setSettled] = useState<readonly Settled[]>(
    work.savedMapping ? ["date-order", "decimal-sign"] : [],
  )
  const body = {
    mapping: { ...mapping, columns: [...mapping.columns] },
    settled: [...settled],
  }
  const open = useQuestions(work.id, body)
  const check = useCheck(work.id)
  const keep = useRecordPaper("mapping")
  const [kept, setKept] = useState(false)
  const table = work.table
  if (!table) return null
  const asked = open.data?.questions ?? work.questions
  const change = (changes: Partial<TableMapping>, answered?: Settled) => {
    setMapping({ ...mapping, ...changes })
    if (answered) setSettled([...new Set([...settled, answered])])
  }
  const setColumn = (heading: string, column: MappedColumn | null) => {
    const others = mapping.columns.filter((other) => other.heading !== heading)
    change({ columns: column ? [...others, column] : others })
  }
  const { general } = faultsOf(check.error ?? keep.error, [])
  const days = dayColumns(mapping)
  return (
    <section className="card" aria-label={say("What the columns are")}>
      <h2>{work.file}</h2>
      {work.savedMapping && (
        <p className="soft">{say("Read as saved: {title}", { title: work.savedMapping })}</p>
      )}
      {table.notes.map((note) => (
        <p className="caution" key={note}>
          {note}
        </p>
      ))}
      {table.fault && <p className="form-fault">{table.fault}</p>}
      <div className="form-row">
        <Choices
          legend={say("Each row holds")}
          options={[
            ["visit", say("a visit with both eyes")],
            ["eye", say("one eye")],
          ]}
          value={mapping.rowIs}
          onChange={(rowIs) => change({ rowIs })}
        />
        <Choices
          legend={say("Decimal sign")}
          options={[
            [".", say("point: 24.12")],
            [",", say("comma: 24,12")],
          ]}
          value={mapping.decimalSign}
          onChange={(decimalSign) => change({ decimalSign }, "decimal-sign")}
        />
        <DateOrder
          work={work}
          mapping={mapping}
          columns={days}
          onChange={(dateOrder) => change({ dateOrder }, "date-order")}
        />
      </div>
      {asked.length > 0 && (
        <div role="status">
          <h3>{say("Still open")}</h3>
          <ul>
            {asked.map(({ kind, why, headings }) => (
              <li key={`${kind} ${headings.join(" ")}`}>{why}</li>
            ))}
          </ul>
        </div>
      )}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard has to reach it */}
      <section className="scroll" tabIndex={0} aria-label={say("First rows of the file")}>
        <table className="data import-columns">
          <thead>
            <tr>
              {table.headings.map((heading) => (
                <th key={heading} scope="col">
                  <Column
                    heading={heading}
                    mapped={mapping.columns.find((column) => column.heading === heading)}
                    fields={work.fields}
                    onChange={(column) => setColumn(heading, column)}
                  />
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {table.firstRows.map((row, place) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: rows of a file have their place and nothing else
              <tr key={place}>
                {table.headings.map((heading, column) => (
                  <td key={heading}>
                    <bdi>{row[column]}</bdi>
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <div role="alert">{general && <p className="form-fault">{general}</p>}</div>
      <div className="form-actions">
        <button
          type="button"
          className="primary"
          disabled={asked.length > 0 || table.fault !== null || check.isPending}
          onClick={() => check.mutate(body, { onSuccess: onChecking })}
        >
          {say("Check the whole file")}
        </button>
        <button
          type="button"
          disabled={keep.isPending || kept || asked.length > 0}
          onClick={() =>
            keep.mutate({ body: { ...body.mapping, title: work.file } }, { onSuccess: () => setKept(true) })
          }
        >
          {kept ? say("Saved for the next file") : say("Save for the next file like this")}
        </button>
      </div>
    </section>
  )
}

const nothingMapped = ({ id, file }: ImportAtWork): TableMapping => ({
  id,
  title: file,
  rowIs: "visit",
  dateOrder: "year-month-day",
  decimalSign: ".",
  columns: [],
})

const DAYS = ["born", "date", "glassesDate", "treatmentFrom", "treatmentTo"]
const dayColumns = ({ columns }: TableMapping): readonly string[] =>
  columns.filter(({ field }) => DAYS.includes(field)).map(({ heading }) => heading)

/** The file's own days written out in each way they can be read. */
function DateOrder({
  work,
  mapping,
  columns,
  onChange,
}: {
  readonly work: ImportAtWork
  readonly mapping: TableMapping
  readonly columns: readonly string[]
  readonly onChange: (order: TableMapping["dateOrder"]) => void
}) {
  const { table } = work
  const samples = columns.flatMap((heading) => {
    const place = table?.headings.indexOf(heading) ?? -1
    return (table?.firstRows ?? []).map((row) => row[place]?.trim() ?? "").filter((text) => text !== "")
  })
  const possible = (["year-month-day", "day-month-year", "month-day-year"] as const).filter((order) =>
    samples.every((text) => dayBy(order, text) !== null),
  )
  const sample = samples[0]
  if (sample === undefined || possible.length < 2) return null
  return (
    <Choices
      legend={say("{day} is", { day: sample })}
      options={possible.map((order) => [order, shortDayInWords(dayBy(order, sample) ?? "")])}
      value={mapping.dateOrder}
      onChange={onChange}
    />
  )
}

function Column({
  heading,
  mapped,
  fields,
  onChange,
}: {
  readonly heading: string
  readonly mapped: MappedColumn | undefined
  readonly fields: readonly ImportField[]
  readonly onChange: (column: MappedColumn | null) => void
}) {
  const own = fields.find(({ id }) => id === mapped?.field.replace(/^(right|left)\./, ""))
  const units = own?.unit && own.alternatives.length > 0 ? [own.unit, ...own.alternatives] : []
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
          value={mapped.unit ?? own?.unit ?? ""}
          onChange={({ target: { value } }) =>
            onChange({ heading, field: mapped.field, ...(value === own?.unit ? {} : { unit: value }) })
          }
        >
          {units.map((unit) => (
            <option key={unit} value={unit}>
              {unit === "[diop]" ? "D" : unit === "um" ? "µm" : unit}
            </option>
          ))}
        </select>
      )}
    </>
  )
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
