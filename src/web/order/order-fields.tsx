import { rangeInWords } from "../../engine/compounding/bottles-needed.js"
import { pharmacyInWords, stockFor, usualPharmacy } from "../../engine/compounding/usual-pharmacy.js"
import type { Eye } from "../../engine/course.js"
import type { Pharmacy } from "../../engine/practice-rules.js"
import { msg, say } from "../../engine/say.js"
import { inDigits } from "../../engine/words.js"
import type { Faults } from "../faults.js"
import { Choices, Field } from "../parts/field.js"
import { parseNumber } from "../visit/readings.js"
import { fromPharmacy, type OrderDraft, type ReadDraft } from "./order-draft.js"

const EYES: readonly (readonly [OrderDraft["eyes"], string])[] = [
  ["both", msg("both eyes")],
  ["right", msg("right eye")],
  ["left", msg("left eye")],
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
  const counted =
    need &&
    say("{bottles} needed for {nights, plural, one {# night} other {# nights}}.", {
      bottles: rangeInWords(need.answer.bottles),
      nights: need.question.nights,
    })
  return (
    <>
      <div className="form-row">
        <Field label={say("Ordered on")} fault={faults.at("date")}>
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
          label={say("Pharmacy")}
          note={
            pharmacy.id === usualPharmacy.id
              ? say("None is set: what is usual is assumed (common practice, no source).")
              : say("{days, plural, one {# day} other {# days}} to deliver.", { days: pharmacy.leadDays })
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
                  {pharmacyInWords(name)}
                </option>
              ))}
            </select>
          )}
        </Field>
      </div>
      <div className="form-row">
        <Field label={say("Strength, % w/v")} fault={faults.at("concentrationPercent")}>
          {text("strength")}
        </Field>
        <Field label={say("From stock of")}>
          {(control) => (
            <select
              {...control}
              value={draft.stock ?? String(stockFor(pharmacy, parseNumber(draft.strength) ?? 0))}
              onChange={(event) => onChange({ stock: event.target.value })}
            >
              {pharmacy.stockPercents.map((percent) => (
                <option key={percent} value={String(percent)}>
                  {say("{percent} %", { percent: inDigits(percent) })}
                </option>
              ))}
            </select>
          )}
        </Field>
      </div>
      <div className="form-row">
        <Field label={say("Nights to cover")}>{text("nights")}</Field>
        <Field label={say("Bottles")} note={counted} fault={faults.at("bottles")}>
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
        <Field label={say("Volume of one, mL")} fault={faults.at("volumeMl")}>
          {text("bottleMl")}
        </Field>
      </div>
      <div className="order-choices">
        <Choices
          legend={say("Drops in")}
          options={EYES.map(([eye, name]) => [eye, say(name)] as const)}
          value={draft.eyes}
          onChange={(eyes) => onChange({ eyes })}
        />
        <Choices
          legend={say("Preservative")}
          options={[
            ["no", say("without|preservative")],
            ["yes", say("with|preservative")],
          ]}
          value={draft.preserved ? "yes" : "no"}
          onChange={(value) => onChange({ preserved: value === "yes" })}
        />
      </div>
    </>
  )
}
