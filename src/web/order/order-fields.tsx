import { rangeInWords } from "../../engine/compounding/bottles-needed.js"
import { stockFor, usualPharmacy } from "../../engine/compounding/usual-pharmacy.js"
import type { Eye } from "../../engine/course.js"
import type { Pharmacy } from "../../engine/practice-rules.js"
import type { Faults } from "../faults.js"
import { Choices, Field } from "../parts/field.js"
import { parseNumber } from "../visit/readings.js"
import { fromPharmacy, type OrderDraft, type ReadDraft } from "./order-draft.js"

const EYES: readonly (readonly [OrderDraft["eyes"], string])[] = [
  ["both", "both eyes"],
  ["right", "right eye"],
  ["left", "left eye"],
] satisfies readonly (readonly ["both" | Eye, string])[]

/** What is asked of a new order: from whom, how strong, how much. */
export function OrderFields(props: {
  readonly draft: OrderDraft
  readonly read: ReadDraft
  readonly pharmacies: readonly Pharmacy[]
  readonly faults: Faults
  readonly onChange: (changes: Partial<OrderDraft>) => void
}) {
  const { draft, read, pharmacies, faults, onChange } = props
  const { pharmacy, need } = read
  const text = (field: "strength" | "bottleMl" | "nights") => (control: object) => (
    <input
      {...control}
      inputMode="decimal"
      autoComplete="off"
      value={draft[field]}
      onChange={(event) => onChange({ [field]: event.target.value })}
    />
  )
  const counted = need && `${rangeInWords(need.answer.bottles)} needed for ${draft.nights} nights.`
  return (
    <>
      <div className="form-row">
        <Field label="Ordered on" fault={faults.at("date")}>
          {(control) => (
            <input
              {...control}
              type="date"
              value={draft.date}
              onChange={(event) => onChange({ date: event.target.value })}
            />
          )}
        </Field>
        <Field
          label="Pharmacy"
          note={
            pharmacy.id === usualPharmacy.id
              ? "None is set: what is usual is assumed (common practice, no source)."
              : `${pharmacy.leadDays} days to deliver.`
          }
        >
          {(control) => (
            <select
              {...control}
              value={pharmacy.id}
              onChange={(event) => {
                const chosen = pharmacies.find(({ id }) => id === event.target.value)
                if (chosen) onChange(fromPharmacy(chosen))
              }}
            >
              {pharmacies.map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </select>
          )}
        </Field>
      </div>
      <div className="form-row">
        <Field label="Strength, % w/v" fault={faults.at("concentrationPercent")}>
          {text("strength")}
        </Field>
        <Field label="From stock of">
          {(control) => (
            <select
              {...control}
              value={draft.stock ?? String(stockFor(pharmacy, parseNumber(draft.strength) ?? 0))}
              onChange={(event) => onChange({ stock: event.target.value })}
            >
              {pharmacy.stockPercents.map((percent) => (
                <option key={percent} value={String(percent)}>
                  {percent} %
                </option>
              ))}
            </select>
          )}
        </Field>
      </div>
      <div className="form-row">
        <Field label="Nights to cover">{text("nights")}</Field>
        <Field label="Bottles" note={counted} fault={faults.at("bottles")}>
          {(control) => (
            <input
              {...control}
              inputMode="numeric"
              autoComplete="off"
              value={read.bottles}
              onChange={(event) => onChange({ bottles: event.target.value })}
            />
          )}
        </Field>
        <Field label="Volume of one, mL" fault={faults.at("volumeMl")}>
          {text("bottleMl")}
        </Field>
      </div>
      <div className="order-choices">
        <Choices
          legend="Drops in"
          options={EYES}
          value={draft.eyes}
          onChange={(eyes) => onChange({ eyes })}
        />
        <Choices
          legend="Preservative"
          options={[
            ["no", "without"],
            ["yes", "with"],
          ]}
          value={draft.preserved ? "yes" : "no"}
          onChange={(value) => onChange({ preserved: value === "yes" })}
        />
      </div>
    </>
  )
}
