import { dateWords } from "../../chart/words.js"
import type { CostPlan } from "../../engine/cost/cost-plan.js"
import { moneyInWords } from "../../engine/cost/money.js"
import type { Paid } from "../../engine/cost/payments.js"
import type { ChildView } from "../../server/contract/child.js"
import { capitalised, inWords } from "../format.js"
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
      <h2>Estimate of costs</h2>
      <p>
        For {child.name}, born {dateWords(child.born)}. {capitalised(plan.option)}, {dateWords(plan.from)} to{" "}
        {dateWords(plan.to)}.
      </p>
      <p>
        <strong>This is an estimate made on {dateWords(plan.from)}, not an invoice.</strong> What is paid in
        the end depends on the visits that take place and on the fees of their day.
      </p>
      <ThreeSums plan={plan} />
      {paid.cents > 0 && (
        <p>
          Paid so far: {moneyInWords(paid.cents, plan.currency)}. The sums above are what is still to come.
        </p>
      )}
      <WithoutFee plan={plan} />
      <CostTable plan={plan} />
      <h3>Taken for granted</h3>
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
      Not counted, because the fee schedule does not name it: {plan.withoutFee.join(", ")}. The sums are too
      small by that.
    </p>
  )
}
