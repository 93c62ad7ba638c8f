import { msg, say } from "../say.js"
import { inDigits } from "../words.js"
import { CHILD_SEVERE_FROM_MG } from "./atropine-content.js"
import type { CompoundingRequest } from "./order-request.js"
import { type WayInside, waysInside } from "./ways-inside.js"
import { type RefusedOrder, type WorkedOrder, workedOrder } from "./worked-order.js"

/** An order for a pharmacist, who checks it line by line and owns formula and beyond-use date. */
export interface CompoundingOrder extends WorkedOrder {
  readonly cautions: readonly string[]
  /** Where the interval leaves the limits: what would bring it inside. */
  readonly waysInside: readonly WayInside[]
}

/** Stands on every order, on paper and screen. */
export const FOR_A_PHARMACIST = msg(
  "An order for a pharmacist, who decides on formula, sterility and beyond-use date; not to be made at home or in the practice.",
)

/**
 * How a strength is made from stock for a number of bottles, with its tolerance and an independent check.
 *
 * @example
 * compoundingOrder({ concentrationPercent: 0.05, stockPercent: 1, bottles: 1, volumeMl: 10 })
 * // => one step: take 0.5 mL of stock 1 %, add 9.5 mL
 */
export function compoundingOrder(request: CompoundingRequest): CompoundingOrder | RefusedOrder {
  const worked = workedOrder(request)
  if (worked.kind === "refused") return worked
  return { ...worked, cautions: cautionsFor(request, worked), waysInside: waysInside(request, worked) }
}

function cautionsFor(
  { stockTolerance = 0 }: CompoundingRequest,
  { poisonCaution, mgPerBottle }: WorkedOrder,
): readonly string[] {
  const ofTheStock =
    stockTolerance > 0
      ? []
      : [
          say(
            "The interval holds the error of measuring only; the stock's own strength may differ from its label as well.",
          ),
        ]
  if (!poisonCaution) return [say(FOR_A_PHARMACIST), ...ofTheStock]
  return [
    say(FOR_A_PHARMACIST),
    ...ofTheStock,
    say(
      "One bottle holds {milligrams} mg of atropine: from {severe} mg severe poisoning of a child who swallows it is possible.",
      { milligrams: inDigits(mgPerBottle), severe: CHILD_SEVERE_FROM_MG },
    ),
  ]
}
