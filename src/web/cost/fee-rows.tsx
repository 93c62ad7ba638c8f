import type { ReactNode } from "react"
import { coverageInShort } from "../../engine/cost/coverage.js"
import { COVERAGES } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"
import { Said } from "../parts/said.js"
import { COVERAGE_SIGNS } from "./coverage-mark.js"
import { type FeeDraft, type FeeRow, newRow } from "./fee-draft.js"
import { deviceLabels, kindLabels, measureLabels, stageLabels } from "./fee-labels.js"

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
      <section className="scroll" tabIndex={0} aria-label={say("Fees")}>
        <table className="data fee-rows">
          <thead>
            <tr>
              <th scope="col">{say("Fee")}</th>
              <th scope="col">{say("Charged for")}</th>
              <th scope="col">{say("Which")}</th>
              <th scope="col">{currency ? say("Amount, {currency}", { currency }) : say("Amount")}</th>
              <th scope="col">{say("Covered?")}</th>
              <th scope="col">
                <span className="unseen">{say("Remove")}</span>
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
        {say("Add a fee")}
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
  const named = (what: string) => say("{what}, fee {number}", { what, number })
  return (
    <tr>
      <td>
        <Cell fault={faultAt("title") ?? faultAt("id")}>
          <input
            aria-label={named(say("Fee"))}
            aria-invalid={faultAt("title") !== undefined || undefined}
            autoComplete="off"
            value={row.title}
            onChange={(event) => onChange({ title: event.target.value })}
          />
        </Cell>
      </td>
      <td>
        <Select
          label={named(say("Charged for"))}
          value={row.kind}
          options={kindLabels()}
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
            aria-label={named(say("Amount"))}
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
          label={named(say("Covered?"))}
          value={row.coverage}
          options={COVERAGES.map(
            (coverage) => [coverage, `${COVERAGE_SIGNS[coverage]} ${coverageInShort(coverage)}`] as const,
          )}
          onChange={(coverage) => onChange({ coverage })}
        />
      </td>
      <td>
        <button
          type="button"
          className="link"
          aria-label={say("remove fee {number}", { number })}
          onClick={onRemove}
        >
          {say("remove")}
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
        <fieldset className="choices" aria-label={named(say("Which examinations"))}>
          {stageLabels().map(([stage, label]) => (
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
          label={named(say("Which measurement"))}
          value={row.measure}
          options={measureLabels()}
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
            aria-label={named(say("Strength, %"))}
            value={row.strength}
            onChange={(event) => onChange({ strength: event.target.value })}
          />
          <span aria-hidden="true">{say("%, empty for any")}</span>
        </label>
      )
    case "device":
      return (
        <div className="inline-field">
          <Said
            message="{device} every {number} months"
            values={{
              device: (
                <Select
                  label={named(say("Which device"))}
                  value={row.treatment}
                  options={deviceLabels()}
                  onChange={(treatment) => onChange({ treatment })}
                />
              ),
              number: (
                <input
                  className="short"
                  inputMode="numeric"
                  autoComplete="off"
                  aria-label={named(say("Every so many months"))}
                  value={row.everyMonths}
                  onChange={(event) => onChange({ everyMonths: event.target.value })}
                />
              ),
            }}
          />
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
