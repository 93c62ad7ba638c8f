import { say } from "../say.js"
import { inDigits } from "../words.js"
import { relativeTolerance } from "./dilution.js"
import { type CompoundingRequest, devicesOf } from "./order-request.js"
import { type WorkedOrder, workedOrder } from "./worked-order.js"

/** One change that brings the whole interval inside the limits, found by working the order again with it. */
export type WayInside =
  | { readonly kind: "larger-volume"; readonly totalMl: number; readonly words: string }
  | { readonly kind: "other-stock"; readonly stockPercent: number; readonly words: string }
  | { readonly kind: "closer-measuring"; readonly toleranceFraction: number; readonly words: string }
  | { readonly kind: "known-stock"; readonly stockTolerance: number; readonly words: string }

/** Most bottles' worth made in one batch; beyond it nothing is proposed. Ours. */
const LARGEST_BATCH_BOTTLES = 100
/** Strengths of stock that are tried where the pharmacy names no other, as parts of the present one. */
const WEAKER = [2, 4, 5, 10, 20, 50]

/** What would bring an interval that leaves the limits inside them. Empty when it is inside, or when nothing would. */
export function waysInside(request: CompoundingRequest, worked: WorkedOrder): readonly WayInside[] {
  if (worked.withinLimits) return []
  const isInside = (changes: Partial<CompoundingRequest>) => {
    const again = workedOrder({ ...request, ...changes })
    return again.kind === "order" && again.withinLimits
  }
  return [
    ...largerVolume(request, isInside),
    ...otherStock(request, isInside),
    ...closerMeasuring(request, worked),
    ...knownStock(request, isInside),
  ]
}

type IsInside = (changes: Partial<CompoundingRequest>) => boolean

function largerVolume({ bottles, volumeMl }: CompoundingRequest, isInside: IsInside): readonly WayInside[] {
  for (let count = bottles + 1; count <= LARGEST_BATCH_BOTTLES; count++) {
    if (!isInside({ bottles: count })) continue
    const totalMl = Number((count * volumeMl).toPrecision(12))
    const words = say(
      "make {volume} mL in one batch ({count, plural, one {# bottle} other {# bottles}}), or discard what is left of it",
      { volume: inDigits(totalMl), count },
    )
    return [{ kind: "larger-volume", totalMl, words }]
  }
  return []
}

function otherStock(request: CompoundingRequest, isInside: IsInside): readonly WayInside[] {
  const { stockPercent, concentrationPercent, otherStockPercents } = request
  const candidates = otherStockPercents ?? WEAKER.map((part) => Number((stockPercent / part).toPrecision(12)))
  const found = candidates
    .filter((percent) => percent !== stockPercent && percent > concentrationPercent)
    .toSorted((a, b) => b - a)
    .find((percent) => isInside({ stockPercent: percent }))
  if (found === undefined) return []
  const words = say("start from a stock of {percent} %", { percent: inDigits(found) })
  return [{ kind: "other-stock", stockPercent: found, words }]
}

/** The tolerance of one measured volume that would do, where one device measures everything. */
function closerMeasuring(request: CompoundingRequest, worked: WorkedOrder): readonly WayInside[] {
  const devices = devicesOf(request)
  const [device] = devices
  if (devices.length !== 1 || device === undefined) return []
  const { finalPercent, limitsPercent, steps } = worked
  const stockTolerance = request.stockTolerance ?? 0
  const most = Math.min(1 - limitsPercent.low / finalPercent, limitsPercent.high / finalPercent - 1)
  const measuring = relativeTolerance(steps, { devices, stockTolerance: 0 })
  if (!(most > stockTolerance) || measuring === 0) return []
  const exact = (device.toleranceFraction * Math.sqrt(most ** 2 - stockTolerance ** 2)) / measuring
  // Rounded down to a tenth of a per cent, so that what is said does suffice.
  const toleranceFraction = Math.floor(exact * 1000 + 1e-9) / 1000
  if (toleranceFraction <= 0) return []
  const words = say("measure every volume within {closer} % instead of {now} %", {
    closer: inDigits(toleranceFraction * 100),
    now: inDigits(device.toleranceFraction * 100),
  })
  return [{ kind: "closer-measuring", toleranceFraction, words }]
}

function knownStock({ stockTolerance = 0 }: CompoundingRequest, isInside: IsInside): readonly WayInside[] {
  for (let perMille = Math.ceil(stockTolerance * 1000 - 1e-9) - 1; perMille >= 0; perMille--) {
    const known = perMille / 1000
    if (!isInside({ stockTolerance: known })) continue
    const words =
      known === 0
        ? say("use a stock whose strength was measured, and reckon with that strength")
        : say("use a stock known to within {closer} % of its label instead of {now} %", {
            closer: inDigits(known * 100),
            now: inDigits(stockTolerance * 100),
          })
    return [{ kind: "known-stock", stockTolerance: known, words }]
  }
  return []
}
