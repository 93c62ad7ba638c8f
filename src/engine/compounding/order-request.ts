import type { Problem } from "../problem.js"
import { type MeasuringDevice, oneDevice } from "./devices.js"
import type { AssayLimits } from "./limits.js"

export interface CompoundingRequest {
  readonly concentrationPercent: number
  readonly stockPercent: number
  readonly bottles: number
  readonly volumeMl: number
  /** Smallest volume the measuring device allows, mL. */
  readonly smallestVolumeMl?: number | undefined
  /** 95 % limit of the error of one measured volume, as a share of it. */
  readonly transferTolerance?: number | undefined
  /** The step to which the measuring device is read, mL. */
  readonly graduationMl?: number | undefined
  /** Several devices, each with its own range and tolerance, in place of the one described by the three fields above. */
  readonly devices?: readonly MeasuringDevice[] | undefined
  /** 95 % limit of how far the stock's own strength is off its label, as a share of it; unknown when absent. */
  readonly stockTolerance?: number | undefined
  /** Other strengths the pharmacy has at hand, % w/v. */
  readonly otherStockPercents?: readonly number[] | undefined
  readonly limits?: AssayLimits | undefined
}

/** The devices an order is measured with: those named, or the one described. */
export function devicesOf(request: CompoundingRequest): readonly MeasuringDevice[] {
  if (request.devices && request.devices.length > 0) return request.devices
  const { smallestVolumeMl, graduationMl, transferTolerance } = request
  return [oneDevice({ smallestVolumeMl, graduationMl, toleranceFraction: transferTolerance })]
}

/** Everything that is wrong with a request, by the name of its field. */
export function requestProblems(request: CompoundingRequest): readonly Problem[] {
  const problems: Problem[] = []
  const say = (path: string, value: unknown, allowed: string) =>
    problems.push({ path, value, allowed, message: `${path} must be ${allowed}; it is ${value}` })

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
  for (const path of ["smallestVolumeMl", "graduationMl"] as const) {
    const value = request[path]
    if (value !== undefined && !isPositive(value)) say(path, value, "a number above 0 (mL)")
  }
  for (const path of ["transferTolerance", "stockTolerance"] as const) {
    const value = request[path]
    if (value !== undefined && !isShare(value)) say(path, value, "a share from 0 to below 1")
  }
  request.devices?.forEach((device, index) => {
    deviceProblems(device, (field, value, allowed) => say(`devices[${index}].${field}`, value, allowed))
  })
  return problems
}

function deviceProblems(
  device: MeasuringDevice,
  say: (field: keyof MeasuringDevice, value: unknown, allowed: string) => void,
): void {
  const { smallestVolumeMl, largestVolumeMl, graduationMl, toleranceFraction } = device
  if (!isPositive(smallestVolumeMl)) say("smallestVolumeMl", smallestVolumeMl, "a number above 0 (mL)")
  if (largestVolumeMl != null && !(largestVolumeMl >= smallestVolumeMl)) {
    say("largestVolumeMl", largestVolumeMl, `at least its smallest volume, ${smallestVolumeMl} mL`)
  }
  if (!isPositive(graduationMl)) say("graduationMl", graduationMl, "a number above 0 (mL)")
  if (!isShare(toleranceFraction)) say("toleranceFraction", toleranceFraction, "a share from 0 to below 1")
}

const isPositive = (value: number) => Number.isFinite(value) && value > 0
const isShare = (value: number) => value >= 0 && value < 1
