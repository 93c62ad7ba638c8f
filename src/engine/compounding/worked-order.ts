import type { Problem } from "../problem.js"
import { say } from "../say.js"
import { milligramsIn, needsPoisonCaution } from "./atropine-content.js"
import { type MeasuringDevice, smallestOf } from "./devices.js"
import { type DilutionStep, dilutionSteps, relativeTolerance } from "./dilution.js"
import { uspSolutionLimits } from "./limits.js"
import { type CompoundingRequest, devicesOf, requestProblems } from "./order-request.js"

/** The arithmetic of an order. */
export interface WorkedOrder {
  readonly kind: "order"
  readonly concentrationPercent: number
  readonly stockPercent: number
  readonly steps: readonly DilutionStep[]
  /** Strength by C1 V1 = C2 V2 from the volumes as they are read off. */
  readonly finalPercent: number
  readonly low95Percent: number
  readonly high95Percent: number
  /** Whether the whole interval lies within the limits around the strength ordered. */
  readonly withinLimits: boolean
  readonly limitsPercent: { readonly low: number; readonly high: number; readonly source: string }
  readonly mgPerBottle: number
  readonly poisonCaution: boolean
  readonly bottles: number
  readonly volumeMl: number
  /** The strength once more, from the milligrams that every step carries over. */
  readonly checkPercent: number
}

export interface RefusedOrder {
  readonly kind: "refused"
  readonly problems: readonly Problem[]
}

/** Steps, interval, limits, content and check of an order. */
export function workedOrder(request: CompoundingRequest): WorkedOrder | RefusedOrder {
  const problems = requestProblems(request)
  if (problems.length > 0) return { kind: "refused", problems }
  const { concentrationPercent, stockPercent, bottles, volumeMl, limits = uspSolutionLimits } = request
  const devices = devicesOf(request)
  const steps = dilutionSteps({ stockPercent, concentrationPercent, volumeMl: bottles * volumeMl, devices })
  if (!steps) return { kind: "refused", problems: [unmeasurable(request, devices)] }

  const finalPercent = steps.at(-1)!.givesPercent
  const relative95 = relativeTolerance(steps, { devices, stockTolerance: request.stockTolerance ?? 0 })
  const low95Percent = finalPercent * (1 - relative95)
  const high95Percent = finalPercent * (1 + relative95)
  const limitsPercent = {
    low: (concentrationPercent * limits.lowPercentOfLabel) / 100,
    high: (concentrationPercent * limits.highPercentOfLabel) / 100,
    source: limits.source,
  }
  const mgPerBottle = milligramsIn({ concentrationPercent, volumeMl })
  return {
    kind: "order",
    concentrationPercent,
    stockPercent,
    steps,
    finalPercent,
    low95Percent,
    high95Percent,
    withinLimits: low95Percent >= limitsPercent.low && high95Percent <= limitsPercent.high,
    limitsPercent,
    mgPerBottle,
    poisonCaution: needsPoisonCaution(mgPerBottle),
    bottles,
    volumeMl,
    checkPercent: backCalculated({ steps, stockPercent }),
  }
}

/** Follows milligrams instead of strengths, so that a fault in one way of reckoning shows against the other. */
function backCalculated({
  steps,
  stockPercent,
}: {
  steps: readonly DilutionStep[]
  stockPercent: number
}): number {
  let mgPerMl = stockPercent * 10
  for (const { takeMl, addDiluentMl } of steps) {
    const milligrams = takeMl * mgPerMl
    mgPerMl = milligrams / (takeMl + addDiluentMl)
  }
  return mgPerMl / 10
}

function unmeasurable(
  { bottles, volumeMl }: CompoundingRequest,
  devices: readonly MeasuringDevice[],
): Problem {
  const total = bottles * volumeMl
  const largestMl = Math.max(
    ...devices.map(({ largestVolumeMl }) => largestVolumeMl ?? Number.POSITIVE_INFINITY),
  )
  if (total > largestMl)
    return {
      path: "devices",
      value: largestMl,
      allowed: say("such that every volume of {total} mL in all is measured by one of them", { total }),
      message: say(
        "no device measures a volume that {total} mL in all need; the largest measures {largest} mL",
        { total, largest: largestMl },
      ),
    }
  const smallest = smallestOf(devices)
  return {
    path: "volumeMl",
    value: volumeMl,
    allowed: say("so much that every measured volume is at least {smallest} mL", { smallest }),
    message: say(
      "{total} mL in all at this strength cannot be made without measuring less than {smallest} mL; order more at once or measure smaller volumes",
      { total, smallest },
    ),
  }
}
