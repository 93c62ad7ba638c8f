import type { CostPlan } from "../../engine/cost/cost-plan.js"
import { moneyInWords } from "../../engine/cost/money.js"
import { say } from "../../engine/say.js"
import { CoverageMark } from "./coverage-mark.js"

/** The sums side by side, never added up; what the family pays is said from one to the other. */
export function ThreeSums({ plan }: { readonly plan: Pick<CostPlan, "totals" | "currency"> }) {
  const { coveredCents, uncertainCents, notCoveredCents } = plan.totals
  const money = (cents: number) => moneyInWords(cents, plan.currency)
  const sums = [
    ["not-covered", notCoveredCents],
    ["uncertain", uncertainCents],
    ["covered", coveredCents],
  ] as const
  return (
    <>
      <dl className="three-sums">
        {sums.map(([coverage, cents]) => (
          <div key={coverage}>
            <dt>
              <CoverageMark coverage={coverage} />
            </dt>
            <dd>{money(cents)}</dd>
          </div>
        ))}
      </dl>
      <p>
        {uncertainCents > 0
          ? say("The family pays {sum}, and up to {more} more if nothing uncertain is paid for.", {
              sum: money(notCoveredCents),
              more: money(uncertainCents),
            })
          : say("The family pays {sum}.", { sum: money(notCoveredCents) })}
      </p>
    </>
  )
}
