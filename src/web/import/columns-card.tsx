import { useState } from "react"
import type { MappedColumn, TableMapping } from "../../engine/practice-rules.js"
import { msg, say, shortDayInWords } from "../../engine/say.js"
import type { ImportAtWork } from "../../server/contract/imports.js"
import { faultsOf } from "../faults.js"
import { Choices } from "../parts/field.js"
import { useRecordPaper } from "../queries.js"
import { Column } from "./column.js"
import { useCheck, useQuestions } from "./use-import.js"

const ORDERS: Readonly<Record<TableMapping["dateOrder"], string>> = {
  "year-month-day": msg("year, month, day"),
  "day-month-year": msg("day, month, year"),
  "month-day-year": msg("month, day, year"),
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
  const isOpen = (kind: Settled) =>
    !settled.includes(kind) && asked.some((question) => question.kind === kind)
  const change = (changes: Partial<TableMapping>, answered?: Settled) => {
    setMapping({ ...mapping, ...changes })
    if (answered) setSettled([...new Set([...settled, answered])])
  }
  const setColumn = (heading: string, column: MappedColumn | null) => {
    const others = mapping.columns.filter((other) => other.heading !== heading)
    change({ columns: column ? [...others, column] : others })
  }
  const leftOut = table.headings.filter(
    (heading) => !mapping.columns.some((column) => column.heading === heading),
  )
  const { general } = faultsOf(check.error ?? keep.error, [])
  const days = dayColumns(mapping)
  return (
    <section className="card" aria-label={say("What the columns are")}>
      <h2 tabIndex={-1}>
        <bdi>{work.file}</bdi>
      </h2>
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
          value={isOpen("decimal-sign") ? null : mapping.decimalSign}
          onChange={(decimalSign) => change({ decimalSign }, "decimal-sign")}
        />
        <DateOrder
          work={work}
          value={isOpen("date-order") ? null : mapping.dateOrder}
          columns={days}
          onChange={(dateOrder) => change({ dateOrder }, "date-order")}
        />
      </div>
      {asked.length > 0 && (
        <div role="status">
          <h3>{say("Still open")}</h3>
          <ul className="import-open">
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
                    asked={asked.find(({ kind, headings }) => kind === "unit" && headings.includes(heading))}
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
      {leftOut.length > 0 && (
        <p className="soft">
          {say("{count, plural, one {Left out is # column} other {Left out are # columns}}: {headings}", {
            count: leftOut.length,
            headings: leftOut.join(", "),
          })}
        </p>
      )}
      {!holdsFigures(mapping, work) && (
        <p className="caution">
          {say("No column is named yet that holds a figure of an eye, earlier glasses or a treatment.")}
        </p>
      )}
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

const FIGURES = ["eye", "glasses", "treatment"]
const holdsFigures = ({ columns }: TableMapping, { fields }: ImportAtWork): boolean =>
  columns.some(({ field }) => {
    const named = fields.find(({ id }) => id === field.replace(/^(right|left)\./, ""))
    return named !== undefined && FIGURES.includes(named.group)
  })

/** The file's own days written out in each way they can be read. */
function DateOrder({
  work,
  value,
  columns,
  onChange,
}: {
  readonly work: ImportAtWork
  readonly value: TableMapping["dateOrder"] | null
  readonly columns: readonly string[]
  readonly onChange: (order: TableMapping["dateOrder"]) => void
}) {
  const dated = (work.table?.dateOrders ?? []).filter(
    ({ heading, orders }) => columns.includes(heading) && orders.join() !== "year-month-day",
  )
  const [first, ...others] = dated
  const possible = (first?.orders ?? []).filter((order) =>
    others.every(({ orders }) => orders.includes(order)),
  )
  if (possible.length < 2) return null
  const example = dated.find((column) => column.example)?.example
  const day = (order: TableMapping["dateOrder"]) => example?.days.find((found) => found.order === order)?.date
  return (
    <Choices
      legend={example ? say("{day} is", { day: example.text }) : say("Days are written")}
      options={possible.map((order) => {
        const date = day(order)
        return [order, date === undefined ? say(ORDERS[order]) : shortDayInWords(date)]
      })}
      value={value}
      onChange={onChange}
    />
  )
}
