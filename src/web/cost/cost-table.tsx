import { dateWords } from "../../chart/words.js"
import type { CostPlan } from "../../engine/cost/cost-plan.js"
import { type CostRow, costRows, rowInWords } from "../../engine/cost/cost-rows.js"
import { moneyInWords } from "../../engine/cost/money.js"
import { capitalised } from "../format.js"
import { CoverageMark } from "./coverage-mark.js"

/** Every cost by date, with the three sums as they grow. */
export function CostTable({ plan }: { readonly plan: CostPlan }) {
  const { currency } = plan
  const bare = (cents: number) => moneyInWords(cents, currency).replace(` ${currency}`, "")
  return (
    <table className="data cost-table">
      <caption>By date, in {currency}</caption>
      <thead>
        <tr>
          <th scope="col">Day</th>
          <th scope="col">What</th>
          <th scope="col" className="number">
            Amount
          </th>
          <th scope="col">Covered?</th>
          <th scope="col" className="number">
            Not covered so far
          </th>
          <th scope="col" className="number">
            Uncertain so far
          </th>
          <th scope="col" className="number">
            Covered so far
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
  from === to ? dateWords(from) : `${dateWords(from)} to ${dateWords(to)}`
