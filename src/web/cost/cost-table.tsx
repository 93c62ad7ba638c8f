import { dateWords } from "../../chart/words.js"
import type { CostPlan } from "../../engine/cost/cost-plan.js"
import { type CostRow, costRows, rowInWords } from "../../engine/cost/cost-rows.js"
import { amountInWords } from "../../engine/cost/money.js"
import { say } from "../../engine/say.js"
import { capitalised } from "../format.js"
import { CoverageMark } from "./coverage-mark.js"

/** Every cost by date, with the three sums as they grow. */
export function CostTable({ plan }: { readonly plan: CostPlan }) {
  const { currency } = plan
  const bare = (cents: number) => amountInWords(cents, currency)
  return (
    <table className="data cost-table">
      <caption>{say("By date, in {currency}", { currency })}</caption>
      <thead>
        <tr>
          <th scope="col">{say("Day")}</th>
          <th scope="col">{say("What")}</th>
          <th scope="col" className="number">
            {say("Amount")}
          </th>
          <th scope="col">{say("Covered?")}</th>
          <th scope="col" className="number">
            {say("Not covered so far")}
          </th>
          <th scope="col" className="number">
            {say("Uncertain so far")}
          </th>
          <th scope="col" className="number">
            {say("Covered so far")}
          </th>
        </tr>
      </thead>
      <tbody>
        {costRows(plan).map((row) => (
          <tr key={`${row.from} ${row.what}`}>
            <th scope="row">{daysInWords(row)}</th>
            <td>{capitalised(rowInWords(row))}</td>
            <td className="number">{bare(row.cents)}</td>
            <td className="day">
              <CoverageMark coverage={row.coverage} cents={row.cents} isShort />
            </td>
            <td className="number soft">{bare(row.soFar.notCoveredCents)}</td>
            <td className="number soft">{bare(row.soFar.uncertainCents)}</td>
            <td className="number soft">{bare(row.soFar.coveredCents)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

const daysInWords = ({ from, to }: Pick<CostRow, "from" | "to">): string =>
  from === to ? dateWords(from) : say("{from} to {to}", { from: dateWords(from), to: dateWords(to) })
