import { useId, useState } from "react"
import { type CompoundingOrder, compoundingOrder } from "../../engine/compounding/compounding-order.js"
import { pharmacyRequest, stockFor } from "../../engine/compounding/usual-pharmacy.js"
import type { Pharmacy } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"
import { inDigits } from "../../engine/words.js"
import { sentence } from "../format.js"

/** Strengths that were studied; an example only. */
const STRENGTHS = [0.01, 0.025, 0.05] as const

/** How one bottle of a strength would be made with what this pharmacy has: the effect of what is set, at once. */
export function DilutionExample({ pharmacy }: { readonly pharmacy: Pharmacy }) {
  const id = useId()
  const [strength, setStrength] = useState<number>(STRENGTHS[0])
  const order = compoundingOrder(
    pharmacyRequest(pharmacy, {
      concentrationPercent: strength,
      stockPercent: stockFor(pharmacy, strength),
      bottles: 1,
      volumeMl: pharmacy.bottleMl,
    }),
  )
  return (
    <div className="effect">
      <label htmlFor={id}>{say("One bottle of")} </label>
      <select id={id} value={strength} onChange={(event) => setStrength(Number(event.target.value))}>
        {STRENGTHS.map((percent) => (
          <option key={percent} value={percent}>
            {inDigits(percent)} %
          </option>
        ))}
      </select>
      {order.kind === "refused" ? (
        <ul>
          {order.problems.map(({ path, message }) => (
            <li key={path}>{sentence(message)}</li>
          ))}
        </ul>
      ) : (
        <>
          <ol>
            {order.steps.map((step) => (
              <li key={step.of}>{stepInWords(step)}</li>
            ))}
          </ol>
          <p className={order.withinLimits ? undefined : "caution"}>
            {strengthInWords(order)}
            {order.waysInside[0] ? ` ${sentence(order.waysInside[0].words)}` : ""}
          </p>
        </>
      )}
    </div>
  )
}

function stepInWords({ takeMl, of, addDiluentMl, givesPercent }: CompoundingOrder["steps"][number]): string {
  const figures = { take: inDigits(takeMl), of, gives: inDigits(givesPercent) }
  return addDiluentMl > 0
    ? say("Take {take} mL of {of}, add {add} mL: gives {gives} %.", {
        ...figures,
        add: inDigits(addDiluentMl),
      })
    : say("Take {take} mL of {of}, undiluted: gives {gives} %.", figures)
}

function strengthInWords({
  low95Percent,
  high95Percent,
  limitsPercent,
  withinLimits,
}: CompoundingOrder): string {
  const figures = {
    low: inDigits(low95Percent),
    high: inDigits(high95Percent),
    lowest: inDigits(limitsPercent.low),
    highest: inDigits(limitsPercent.high),
  }
  return withinLimits
    ? say("95 % between {low} and {high} %, within {lowest} to {highest} %.", figures)
    : say("95 % between {low} and {high} %, outside {lowest} to {highest} %.", figures)
}
