import type { ReactNode } from "react"
import { COVERAGES, type Coverage } from "../../engine/practice-rules.js"
import {
  DEVICE_LABELS,
  type FeeDraft,
  type FeeRow,
  KIND_LABELS,
  MEASURE_LABELS,
  newRow,
  STAGE_LABELS,
} from "./fee-draft.js"

const COVERAGE_LABELS: Readonly<Record<Coverage, string>> = {
  covered: "● covered",
  uncertain: "◐ uncertain",
  "not-covered": "○ not covered",
}

/** The fees as a table to type into. */
export function FeeRows({
  draft,
  onChange,
  faultAt,
}: {
  readonly draft: FeeDraft
  readonly onChange: (rows: readonly FeeRow[]) => void
  readonly faultAt: (path: string) => string | undefined
}) {
  const { rows, currency } = draft
  const change = (index: number, changes: Partial<FeeRow>) =>
    onChange(rows.map((row, at) => (at === index ? { ...row, ...changes } : row)))
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by itself, and the keyboard must reach it */}
      <section className="scroll" tabIndex={0} aria-label="Fees">
        <table className="data fee-rows">
          <thead>
            <tr>
              <th scope="col">Fee</th>
              <th scope="col">Charged for</th>
              <th scope="col">Which</th>
              <th scope="col">Amount{currency && `, ${currency}`}</th>
              <th scope="col">Covered?</th>
              <th scope="col">
                <span className="unseen">Remove</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row, index) => (
              <FeeRowFields
                key={row.id}
                row={row}
                number={index + 1}
                faultAt={(field) => faultAt(`fees[${index}].${field}`)}
                onChange={(changes) => change(index, changes)}
                onRemove={() => onChange(rows.filter((_, at) => at !== index))}
              />
            ))}
          </tbody>
        </table>
      </section>
      <button type="button" onClick={() => onChange([...rows, newRow(rows)])}>
        Add a fee
      </button>
    </>
  )
}

interface RowProps {
  readonly row: FeeRow
  readonly number: number
  readonly faultAt: (field: string) => string | undefined
  readonly onChange: (changes: Partial<FeeRow>) => void
  readonly onRemove: () => void
}

function FeeRowFields({ row, number, faultAt, onChange, onRemove }: RowProps) {
  const named = (what: string) => `${what}, fee ${number}`
  return (
    <tr>
      <td>
        <Cell fault={faultAt("title") ?? faultAt("id")}>
          <input
            aria-label={named("Fee")}
            aria-invalid={faultAt("title") !== undefined || undefined}
            autoComplete="off"
            value={row.title}
            onChange={(event) => onChange({ title: event.target.value })}
          />
        </Cell>
      </td>
      <td>
        <Select
          label={named("Charged for")}
          value={row.kind}
          options={KIND_LABELS}
          onChange={(kind) => onChange({ kind })}
        />
      </td>
      <td>
        <Cell fault={faultAt("charged")}>
          <Which row={row} named={named} onChange={onChange} />
        </Cell>
      </td>
      <td>
        <Cell fault={faultAt("cents")}>
          <input
            className="amount"
            aria-label={named("Amount")}
            aria-invalid={faultAt("cents") !== undefined || undefined}
            inputMode="decimal"
            autoComplete="off"
            value={row.amount}
            onChange={(event) => onChange({ amount: event.target.value })}
          />
        </Cell>
      </td>
      <td>
        <Select
          label={named("Covered?")}
          value={row.coverage}
          options={COVERAGES.map((coverage) => [coverage, COVERAGE_LABELS[coverage]] as const)}
          onChange={(coverage) => onChange({ coverage })}
        />
      </td>
      <td>
        <button type="button" className="link" aria-label={`remove fee ${number}`} onClick={onRemove}>
          remove
        </button>
      </td>
    </tr>
  )
}

/** Which examinations, which measurement, which bottle or which device. */
function Which({
  row,
  named,
  onChange,
}: Pick<RowProps, "row" | "onChange"> & { readonly named: (what: string) => string }) {
  switch (row.kind) {
    case "examination":
      return (
        <fieldset className="choices" aria-label={named("Which examinations")}>
          {STAGE_LABELS.map(([stage, label]) => (
            <label key={stage}>
              <input
                type="checkbox"
                checked={row.stages.includes(stage)}
                onChange={(event) => {
                  const others = row.stages.filter((one) => one !== stage)
                  onChange({ stages: event.target.checked ? [...others, stage] : others })
                }}
              />
              {label}
            </label>
          ))}
        </fieldset>
      )
    case "measure":
      return (
        <Select
          label={named("Which measurement")}
          value={row.measure}
          options={MEASURE_LABELS}
          onChange={(measure) => onChange({ measure })}
        />
      )
    case "bottle":
      return (
        <label className="inline-field">
          <input
            className="short"
            inputMode="decimal"
            autoComplete="off"
            aria-label={named("Strength, %")}
            value={row.strength}
            onChange={(event) => onChange({ strength: event.target.value })}
          />
          <span aria-hidden="true">%, empty for any</span>
        </label>
      )
    case "device":
      return (
        <div className="inline-field">
          <Select
            label={named("Which device")}
            value={row.treatment}
            options={DEVICE_LABELS}
            onChange={(treatment) => onChange({ treatment })}
          />
          <span aria-hidden="true">every</span>
          <input
            className="short"
            inputMode="numeric"
            autoComplete="off"
            aria-label={named("Every so many months")}
            value={row.everyMonths}
            onChange={(event) => onChange({ everyMonths: event.target.value })}
          />
          <span aria-hidden="true">months</span>
        </div>
      )
  }
}

function Cell({ fault, children }: { readonly fault: string | undefined; readonly children: ReactNode }) {
  return (
    <>
      {children}
      {fault && <p className="field-fault">{fault}</p>}
    </>
  )
}

function Select<Value extends string>(props: {
  readonly label: string
  readonly value: Value
  readonly options: readonly (readonly [Value, string])[]
  readonly onChange: (value: Value) => void
}) {
  return (
    <select
      aria-label={props.label}
      value={props.value}
      onChange={(event) => props.onChange(event.target.value as Value)}
    >
      {props.options.map(([value, label]) => (
        <option key={value} value={value}>
          {label}
        </option>
      ))}
    </select>
  )
}
