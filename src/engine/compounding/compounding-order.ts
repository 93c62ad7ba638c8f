import type { Problem } from "../problem.js"
import { milligramsIn, needsPoisonCaution } from "./atropine-content.js"
import { type DilutionStep, dilutionSteps } from "./dilution.js"
import { type AssayLimits, uspSolutionLimits, usualTransfers } from "./limits.js"

export interface CompoundingRequest {
  readonly concentrationPercent: number
  readonly stockPercent: number
  readonly bottles: number
  readonly volumeMl: number
  /** Smallest volume the measuring device allows, mL. */
  readonly smallestVolumeMl?: number | undefined
  /** 95 % limit of the error of one measured volume, as a share of it. */
  readonly transferTolerance?: number | undefined
  readonly limits?: AssayLimits | undefined
}

/** An order for a pharmacist, who checks it line by line and owns formula and beyond-use date. */
export interface CompoundingOrder {
  readonly kind: "order"
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
  readonly cautions: readonly string[]
}

export interface RefusedOrder {
  readonly kind: "refused"
  readonly problems: readonly Problem[]
}

/**
 * How a strength is made from stock for a number of bottles, with its tolerance and an independent check.
 *
 * @example
 * compoundingOrder({ concentrationPercent: 0.05, stockPercent: 1, bottles: 1, volumeMl: 10 })
 * // => one step: take 0.5 mL of stock 1 %, add 9.5 mL
 */
export function compoundingOrder(request: CompoundingRequest): CompoundingOrder | RefusedOrder {
  const problems = requestProblems(request)
  if (problems.length > 0) return { kind: "refused", problems }
  const { concentrationPercent, stockPercent, bottles, volumeMl, limits = uspSolutionLimits } = request
  const smallestVolumeMl = request.smallestVolumeMl ?? usualTransfers.smallestVolumeMl
  const steps = dilutionSteps({
    stockPercent,
    concentrationPercent,
    volumeMl: bottles * volumeMl,
    // A device that measures less than the usual graduation is read at least as finely as that.
    transfers: { smallestVolumeMl, readableMl: Math.min(usualTransfers.readableMl, smallestVolumeMl) },
  })
  if (!steps) return { kind: "refused", problems: [tooLittle(request, smallestVolumeMl)] }

  const finalPercent = steps.at(-1)!.givesPercent
  const relative95 = toleranceOf(steps, request.transferTolerance ?? usualTransfers.toleranceFraction)
  const low95Percent = finalPercent * (1 - relative95)
  const high95Percent = finalPercent * (1 + relative95)
  const limitsPercent = {
    low: (concentrationPercent * limits.lowPercentOfLabel) / 100,
    high: (concentrationPercent * limits.highPercentOfLabel) / 100,
    source: limits.source,
  }
  const mgPerBottle = milligramsIn({ concentrationPercent, volumeMl })
  const poisonCaution = needsPoisonCaution(mgPerBottle)
  return {
    kind: "order",
    steps,
    finalPercent,
    low95Percent,
    high95Percent,
    withinLimits: low95Percent >= limitsPercent.low && high95Percent <= limitsPercent.high,
    limitsPercent,
    mgPerBottle,
    poisonCaution,
    bottles,
    volumeMl,
    checkPercent: backCalculated({ steps, stockPercent }),
    cautions: cautionsFor({ poisonCaution, mgPerBottle }),
  }
}

/**
 * Relative 95 % limit of the final strength. A step gives c take / (take + diluent), so an error of one volume enters with
 * the diluent's share of the mixture; the errors are independent and add as squares.
 */
function toleranceOf(steps: readonly DilutionStep[], toleranceFraction: number): number {
  const squares = steps.map(({ takeMl, addDiluentMl }) => {
    const diluentShare = addDiluentMl / (takeMl + addDiluentMl)
    return 2 * (diluentShare * toleranceFraction) ** 2
  })
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0))
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

function cautionsFor({
  poisonCaution,
  mgPerBottle,
}: {
  poisonCaution: boolean
  mgPerBottle: number
}): readonly string[] {
  const always = [
    "An order for a pharmacist, who decides on formula, sterility and beyond-use date; not to be made at home or in the practice.",
    "The interval holds the error of measuring only; the stock's own strength may differ from its label as well.",
  ]
  if (!poisonCaution) return always
  return [
    ...always,
    `One bottle holds ${Number(mgPerBottle.toPrecision(4))} mg of atropine: from 5 mg severe poisoning of a child who swallows it is possible.`,
  ]
}

function requestProblems(request: CompoundingRequest): readonly Problem[] {
  const problems: Problem[] = []
  const say = (path: string, value: unknown, allowed: string) =>
    problems.push({ path, value, allowed, message: `${path} must be ${allowed}; it is ${value}` })
  const isPositive = (value: number) => Number.isFinite(value) && value > 0

  for (const path of ["concentrationPercent", "stockPercent"] as const) {
    const value = request[path]
    if (!isPositive(value) || value > 100) say(path, value, "a number above 0 and at most 100 (% w/v)")
  }
  if (request.concentrationPercent > request.stockPercent) {
    say("concentrationPercent", request.concentrationPercent, `at most the stock's ${request.stockPercent} %`)
  }
  if (!Number.isInteger(request.bottles) || request.bottles < 1) {
    say("bottles", request.bottles, "a whole number of at least 1")
  }
  if (!isPositive(request.volumeMl)) say("volumeMl", request.volumeMl, "a number above 0 (mL)")
  const { smallestVolumeMl, transferTolerance } = request
  if (smallestVolumeMl !== undefined && !isPositive(smallestVolumeMl)) {
    say("smallestVolumeMl", smallestVolumeMl, "a number above 0 (mL)")
  }
  if (transferTolerance !== undefined && !(transferTolerance >= 0 && transferTolerance < 1)) {
    say("transferTolerance", transferTolerance, "a share from 0 to below 1")
  }
  return problems
}

function tooLittle({ bottles, volumeMl }: CompoundingRequest, smallestVolumeMl: number): Problem {
  const totalMl = bottles * volumeMl
  return {
    path: "volumeMl",
    value: volumeMl,
    allowed: `so much that every measured volume is at least ${smallestVolumeMl} mL`,
    message: `${totalMl} mL in all at this strength cannot be made without measuring less than ${smallestVolumeMl} mL; order more at once or measure smaller volumes`,
  }
}
