import { dateWords } from "../../chart/words.js"
import type { CostPlan } from "../../engine/cost/cost-plan.js"
import { moneyInWords } from "../../engine/cost/money.js"
import type { Paid } from "../../engine/cost/payments.js"
import { inRow } from "../../engine/safety/in-row.js"
import { say } from "../../engine/say.js"
import type { ChildView } from "../../server/contract/child.js"
import { capitalised, inWords } from "../format.js"
import { Said } from "../parts/said.js"
import { CostTable } from "./cost-table.js"
import { ThreeSums } from "./three-sums.js"

/** The estimate on one sheet of paper, for the family to take home. */
export function EstimateSheet({
  plan,
  paid,
  child,
  practice,
}: {
  readonly plan: CostPlan
  readonly paid: Paid
  readonly child: ChildView["child"]
  /** Name of the practice. */
  readonly practice: string
}) {
  return (
    <section className="estimate-sheet print-only">
      <p className="soft">{practice}</p>
      <h2>{say("Estimate of costs")}</h2>
      <p>
        {say("For {child}, born {born}. {plan}, {from} to {to}.", {
          child: child.name,
          born: dateWords(child.born),
          plan: capitalised(plan.option),
          from: dateWords(plan.from),
          to: dateWords(plan.to),
        })}
      </p>
      <p>
        <Said
          message="{strong} What is paid in the end depends on the visits that take place and on the fees of their day."
          values={{
            strong: (
              <strong>
                {say("This is an estimate made on {date}, not an invoice.", { date: dateWords(plan.from) })}
              </strong>
            ),
          }}
        />
      </p>
      <ThreeSums plan={plan} />
      {paid.cents > 0 && (
        <p>
          {say("Paid so far: {sum}. The sums above are what is still to come.", {
            sum: moneyInWords(paid.cents, plan.currency),
          })}
        </p>
      )}
      <WithoutFee plan={plan} />
      <CostTable plan={plan} />
      <h3>{say("Taken for granted")}</h3>
      <Assumptions plan={plan} />
    </section>
  )
}

export function Assumptions({ plan }: { readonly plan: CostPlan }) {
  return (
    <ul className="assumptions">
      {plan.assumptions.map((words) => (
        <li key={words}>{inWords(words)}</li>
      ))}
    </ul>
  )
}

/** What is planned but has no fee: without it the sums are too small. */
export function WithoutFee({ plan }: { readonly plan: CostPlan }) {
  if (plan.withoutFee.length === 0) return null
  return (
    <p className="caution">
      {say(
        "Not counted, because the fee schedule does not name it: {what}. The sums are too small by that.",
        { what: inRow(plan.withoutFee) },
      )}
    </p>
  )
}
