import { useId, useState } from "react"
import { compoundingOrder } from "../../engine/compounding/compounding-order.js"
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
            {percent} %
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
              <li key={step.of}>
                Take {inDigits(step.takeMl)} mL of {step.of}
                {step.addDiluentMl > 0 ? `, add ${inDigits(step.addDiluentMl)} mL` : ", undiluted"}: gives{" "}
                {inDigits(step.givesPercent)} %.
              </li>
            ))}
          </ol>
          <p className={order.withinLimits ? undefined : "caution"}>
            95 % between {inDigits(order.low95Percent)} and {inDigits(order.high95Percent)} %,{" "}
            {order.withinLimits ? "within" : "outside"} {inDigits(order.limitsPercent.low)} to{" "}
            {inDigits(order.limitsPercent.high)} %.
            {order.waysInside[0] ? ` ${sentence(order.waysInside[0].words)}` : ""}
          </p>
        </>
      )}
    </div>
  )
}
