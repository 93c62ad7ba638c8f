import { say } from "../say.js"
import { inDigits } from "../words.js"
import { deviceFor, type MeasuringDevice, smallestOf } from "./devices.js"

/** One dilution: take so much of what stands before it and add diluent. Limits are those of the measuring, 95 %. */
export interface DilutionStep {
  readonly takeMl: number
  readonly takeLow95Ml: number
  readonly takeHigh95Ml: number
  /** The device it is measured with, where the pharmacy names its devices. */
  readonly takeWith?: string | undefined
  /** What is taken from, in words: "stock 1 %" or "step 1, 0.1 %". */
  readonly of: string
  readonly addDiluentMl: number
  readonly diluentLow95Ml: number
  readonly diluentHigh95Ml: number
  readonly diluentWith?: string | undefined
  readonly givesPercent: number
  /** Of what this step makes, the part the next one does not use. */
  readonly discardMl: number
}

interface Mixture {
  readonly takeMl: number
  readonly volumeMl: number
}

interface DilutionPlan {
  readonly stockPercent: number
  readonly concentrationPercent: number
  readonly volumeMl: number
  readonly devices: readonly MeasuringDevice[]
}

// Ten first, since it is the dilution easiest to check by eye; the others where ten would overshoot.
const FACTORS = [10, 5, 4, 2]

/**
 * Steps from stock to a volume at a strength (C1 V1 = C2 V2), every measured volume within what a device measures and
 * every volume taken read to its device's graduation. Null where no such steps exist, because the whole volume is about
 * as small as the smallest transfer or larger than any device.
 */
export function dilutionSteps(plan: DilutionPlan): readonly DilutionStep[] | null {
  const { stockPercent, concentrationPercent, volumeMl, devices } = plan
  const intermediates = intermediateStrengths(plan)
  if (!intermediates) return null
  const strengths = [stockPercent, ...intermediates, concentrationPercent]
  const mixtures = mixturesBackwards({ strengths, volumeMl, devices })
  return mixtures && described({ mixtures, stockPercent, devices })
}

/**
 * Relative 95 % limit of the final strength. A step gives c take / (take + diluent), so an error of one volume enters with
 * the diluent's share of the mixture; the errors are independent of each other and of the stock's, and add as squares.
 */
export function relativeTolerance(
  steps: readonly DilutionStep[],
  { devices, stockTolerance }: { devices: readonly MeasuringDevice[]; stockTolerance: number },
): number {
  const squareOf = (volumeMl: number) => (deviceFor(volumeMl, devices)?.toleranceFraction ?? 0) ** 2
  const squares = steps.map(({ takeMl, addDiluentMl }) => {
    const diluentShare = addDiluentMl / (takeMl + addDiluentMl)
    return diluentShare ** 2 * (squareOf(takeMl) + squareOf(addDiluentMl))
  })
  return Math.sqrt(squares.reduce((sum, square) => sum + square, stockTolerance ** 2))
}

/** Diluted once, are both volumes measurable? What is not diluted is poured and not measured. */
function isMeasurable({ takeMl, volumeMl }: Mixture, devices: readonly MeasuringDevice[]): boolean {
  const diluentMl = volumeMl - takeMl
  if (Math.abs(diluentMl) < 1e-9) return takeMl >= smallestOf(devices) - 1e-9
  return deviceFor(takeMl, devices) !== undefined && deviceFor(diluentMl, devices) !== undefined
}

function intermediateStrengths(plan: DilutionPlan): readonly number[] | null {
  const { stockPercent, concentrationPercent, volumeMl, devices } = plan
  const smallestVolumeMl = smallestOf(devices)
  const strengths: number[] = []
  let from = stockPercent
  const takeMl = () => (volumeMl * concentrationPercent) / from
  while (takeMl() < smallestVolumeMl - 1e-9) {
    // The next strength must leave room for diluent in the step after it.
    const factor = FACTORS.find((divisor) => takeMl() * divisor <= volumeMl - smallestVolumeMl + 1e-9)
    if (factor === undefined) return null
    from /= factor
    strengths.push(from)
  }
  return strengths
}

function mixturesBackwards({
  strengths,
  volumeMl,
  devices,
}: {
  strengths: readonly number[]
  volumeMl: number
  devices: readonly MeasuringDevice[]
}): readonly Mixture[] | null {
  const finest = Math.min(...devices.map(({ graduationMl }) => graduationMl))
  const graduation = (volume: number) => deviceFor(volume, devices)?.graduationMl ?? finest
  const mixtures: Mixture[] = []
  let neededMl = volumeMl
  for (let index = strengths.length - 1; index > 0; index--) {
    const share = strengths[index]! / strengths[index - 1]!
    const isLast = index === strengths.length - 1
    // An intermediate is made in at least the volume that makes its transfer measurable; its diluent is never less.
    const leastMl = smallestOf(devices) / share
    const madeMl = isLast ? neededMl : Math.max(neededMl, leastMl)
    const exactMl = madeMl * share
    const takeMl = (isLast ? roundTo : roundUpTo)(exactMl, graduation(exactMl))
    const mixture = { takeMl, volumeMl: isLast ? madeMl : roundTo(takeMl / share, finest) }
    if (!isMeasurable(mixture, devices)) return null
    mixtures.unshift(mixture)
    neededMl = takeMl
  }
  return mixtures
}

function described({
  mixtures,
  stockPercent,
  devices,
}: {
  mixtures: readonly Mixture[]
  stockPercent: number
  devices: readonly MeasuringDevice[]
}): readonly DilutionStep[] {
  const measured = (volumeMl: number, isDiluted: boolean) => {
    const device = isDiluted ? deviceFor(volumeMl, devices) : undefined
    const errorMl = volumeMl * (device?.toleranceFraction ?? 0)
    return { low: tidy(volumeMl - errorMl), high: tidy(volumeMl + errorMl), name: device?.name }
  }
  let fromPercent = stockPercent
  return mixtures.map(({ takeMl, volumeMl }, index) => {
    const percent = inDigits(fromPercent)
    const of =
      index === 0
        ? say("stock {percent} %", { percent })
        : say("step {step}, {percent} %", { step: index, percent })
    const givesPercent = (fromPercent * takeMl) / volumeMl
    fromPercent = givesPercent
    const next = mixtures[index + 1]
    const addDiluentMl = tidy(volumeMl - takeMl)
    const take = measured(takeMl, addDiluentMl > 0)
    const diluent = measured(addDiluentMl, addDiluentMl > 0)
    return {
      takeMl,
      takeLow95Ml: take.low,
      takeHigh95Ml: take.high,
      ...(take.name === undefined ? {} : { takeWith: take.name }),
      of,
      addDiluentMl,
      diluentLow95Ml: diluent.low,
      diluentHigh95Ml: diluent.high,
      ...(diluent.name === undefined ? {} : { diluentWith: diluent.name }),
      givesPercent: tidy(givesPercent),
      discardMl: next ? tidy(volumeMl - next.takeMl) : 0,
    }
  })
}

const roundTo = (value: number, step: number) => tidy(Math.round(tidy(value / step)) * step)
const roundUpTo = (value: number, step: number) => tidy(Math.ceil(tidy(value / step)) * step)
/** Removes the noise of binary fractions (0.30000000000000004) far below anything measured. */
const tidy = (value: number) => Number(value.toPrecision(12))
