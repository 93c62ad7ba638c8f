import "./cost.css"
import { Link } from "@tanstack/react-router"
import { useMemo, useState } from "react"
import { dateWords } from "../../chart/words.js"
import { costPlan, PLAN_MONTHS } from "../../engine/cost/cost-plan.js"
import { decimalsOf } from "../../engine/cost/currencies.js"
import { moneyInWords } from "../../engine/cost/money.js"
import { paidSoFar } from "../../engine/cost/payments.js"
import { say } from "../../engine/say.js"
import type { ChildPartProps } from "../child/child-part-props.js"
import { sentence } from "../format.js"
import { Said } from "../parts/said.js"
import { CostTable } from "./cost-table.js"
import { Assumptions, EstimateSheet, WithoutFee } from "./estimate-sheet.js"
import { PaidCard } from "./paid-card.js"
import { planOptions } from "./plan-options.js"
import { ThreeSums } from "./three-sums.js"

const MONTHS = [6, 12, 18, 24, PLAN_MONTHS, 36]

/** What the coming months cost with one option, what was paid, and an estimate to take home. */
export function CostPart({ view, reading, practice, onDone }: ChildPartProps) {
  const { course, today, rules, protocol } = reading
  const options = useMemo(() => planOptions({ course, today }), [course, today])
  const [chosen, setChosen] = useState(0)
  const [months, setMonths] = useState(PLAN_MONTHS)
  const treatment = options[chosen]?.treatment
  const plan = useMemo(
    () =>
      // As now the child follows its own protocol; another option the one that fits it.
      costPlan({ course, treatment, rules, today, months, ...(treatment === undefined ? { protocol } : {}) }),
    [course, treatment, rules, today, months, protocol],
  )
  if (plan.kind === "refused") return <NoPlan why={plan.why} reading={reading} />
  const paid = paidSoFar({ course, currency: plan.currency, today })
  return (
    <>
      <EstimateSheet plan={plan} paid={paid} child={view.child} practice={practice.name} />
      <div className="with-aside cost-part">
        <section className="card" aria-labelledby="cost">
          <div className="cost-head">
            <h2 id="cost">
              {say("Still to come in {months, plural, one {# month} other {# months}}", { months })}
            </h2>
            <button type="button" onClick={() => window.print()}>
              {say("Print the estimate")}
            </button>
          </div>
          <div className="form-row cost-choice">
            <div className="field">
              <label htmlFor="cost-option">{say("Plan for")}</label>
              <select
                id="cost-option"
                value={chosen}
                onChange={(event) => setChosen(Number(event.target.value))}
              >
                {options.map(({ label }, index) => (
                  <option key={label} value={index}>
                    {label}
                  </option>
                ))}
              </select>
            </div>
            <div className="field months">
              <label htmlFor="cost-months">{say("Months ahead")}</label>
              <select
                id="cost-months"
                value={months}
                onChange={(event) => setMonths(Number(event.target.value))}
              >
                {MONTHS.map((count) => (
                  <option key={count}>{count}</option>
                ))}
              </select>
            </div>
          </div>
          <ThreeSums plan={plan} />
          <WithoutFee plan={plan} />
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by itself, and the keyboard must reach it */}
          <section className="scroll" tabIndex={0} aria-label={say("Costs by date")}>
            <CostTable plan={plan} />
          </section>
        </section>
        <aside className="aside">
          <PaidCard
            paid={paid}
            currency={plan.currency}
            today={today}
            childId={view.child.id}
            onDone={onDone}
          />
          <section className="card" aria-labelledby="granted">
            <h2 id="granted">{say("Taken for granted")}</h2>
            <Assumptions plan={plan} />
          </section>
        </aside>
      </div>
    </>
  )
}

const moneyOrBare = (cents: number, currency: string): string =>
  decimalsOf(currency) === null
    ? say("{cents} of the smallest unit of {currency}", { cents, currency })
    : moneyInWords(cents, currency)

/** Without fees there is nothing to plan; what was paid is kept and shown all the same. */
function NoPlan({ why, reading }: { readonly why: string; readonly reading: ChildPartProps["reading"] }) {
  const payments = reading.course.payments ?? []
  return (
    <section className="card">
      <h2>{say("No estimate can be made")}</h2>
      <p>
        <Said
          message="{why} No fee is assumed here. {link}"
          values={{
            why: sentence(why),
            link: (
              <Link to="/settings/$part" params={{ part: "fees" }}>
                {say("Enter the practice’s fees")}
              </Link>
            ),
          }}
        />
      </p>
      {payments.length > 0 && (
        <ul>
          {payments.map(({ date, cents, currency }, index) => (
            // Two payments may be alike in everything.
            // biome-ignore lint/suspicious/noArrayIndexKey: see above
            <li key={index}>
              {say("Paid on {day}: {sum}.", { day: dateWords(date), sum: moneyOrBare(cents, currency) })}
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}
