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
export const FOR_A_PHARMACIST =
  "An order for a pharmacist, who decides on formula, sterility and beyond-use date; not to be made at home or in the practice."

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
          "The interval holds the error of measuring only; the stock's own strength may differ from its label as well.",
        ]
  if (!poisonCaution) return [FOR_A_PHARMACIST, ...ofTheStock]
  return [
    FOR_A_PHARMACIST,
    ...ofTheStock,
    `One bottle holds ${Number(mgPerBottle.toPrecision(4))} mg of atropine: from 5 mg severe poisoning of a child who swallows it is possible.`,
  ]
}
