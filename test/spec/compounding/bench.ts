import {
  type BottlesNeeded,
  type BottlesQuestion,
  bottlesNeeded,
} from "../../../src/engine/compounding/bottles-needed.js"
import { type CompoundingOrder, compoundingOrder } from "../../../src/engine/compounding/compounding-order.js"
import type { CompoundingRequest } from "../../../src/engine/compounding/order-request.js"

/** One bottle of 10 mL from stock of 1 %, nothing under 0.5 mL measured, every volume within 3 %: the usual assumptions. */
export function order(
  request: Partial<CompoundingRequest> & { concentrationPercent: number },
): CompoundingOrder {
  const answer = compoundingOrder({ stockPercent: 1, bottles: 1, volumeMl: 10, ...request })
  if (answer.kind === "refused") throw new Error(answer.problems.map(({ message }) => message).join("; "))
  return answer
}

/** The steps as a pharmacist writes them: "0.5 mL of stock 1 % + 4.5 mL = 0.1 %". */
export const written = ({ steps }: CompoundingOrder): readonly string[] =>
  steps.map(
    ({ takeMl, of, addDiluentMl, givesPercent }) =>
      `${takeMl} mL of ${of} + ${addDiluentMl} mL = ${givesPercent} %`,
  )

/** Why an order cannot be made. */
export function refusal(request: Partial<CompoundingRequest> & { concentrationPercent: number }): string {
  const answer = compoundingOrder({ stockPercent: 1, bottles: 1, volumeMl: 10, ...request })
  return answer.kind === "refused" ? answer.problems.map(({ message }) => message).join("; ") : "none"
}

/** Bottles of 5 mL for both eyes over two years, thrown away a month after opening. */
export function bottles(question: Partial<BottlesQuestion> = {}): BottlesNeeded {
  const answer = bottlesNeeded({ volumeMl: 5, eyes: 2, nights: 730, daysAfterOpening: 30, ...question })
  if (answer.kind === "refused") throw new Error(answer.problems.map(({ message }) => message).join("; "))
  return answer
}
