import type { Problem } from "../problem.js"
import { say } from "../say.js"
import { type MeasuringDevice, oneDevice } from "./devices.js"
import { fault } from "./fault.js"
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
  const add = (path: string, value: unknown, allowed: string) => {
    problems.push(fault({ path, value, allowed }))
  }
  for (const path of ["concentrationPercent", "stockPercent"] as const) {
    const value = request[path]
    if (!isPositive(value) || value > 100) add(path, value, say("a number above 0 and at most 100 (% w/v)"))
  }
  if (request.concentrationPercent > request.stockPercent) {
    const allowed = say("at most the stock's {percent} %", { percent: request.stockPercent })
    add("concentrationPercent", request.concentrationPercent, allowed)
  }
  if (!Number.isInteger(request.bottles) || request.bottles < 1) {
    add("bottles", request.bottles, say("a whole number of at least 1"))
  }
  if (!isPositive(request.volumeMl)) add("volumeMl", request.volumeMl, say("a number above 0 (mL)"))
  for (const path of ["smallestVolumeMl", "graduationMl"] as const) {
    const value = request[path]
    if (value !== undefined && !isPositive(value)) add(path, value, say("a number above 0 (mL)"))
  }
  for (const path of ["transferTolerance", "stockTolerance"] as const) {
    const value = request[path]
    if (value !== undefined && !isShare(value)) add(path, value, say("a share from 0 to below 1"))
  }
  request.devices?.forEach((device, index) => {
    deviceProblems(device, (field, value, allowed) => add(`devices[${index}].${field}`, value, allowed))
  })
  return problems
}

function deviceProblems(
  device: MeasuringDevice,
  add: (field: keyof MeasuringDevice, value: unknown, allowed: string) => void,
): void {
  const { smallestVolumeMl, largestVolumeMl, graduationMl, toleranceFraction } = device
  if (!isPositive(smallestVolumeMl)) add("smallestVolumeMl", smallestVolumeMl, say("a number above 0 (mL)"))
  if (largestVolumeMl != null && !(largestVolumeMl >= smallestVolumeMl)) {
    const allowed = say("at least its smallest volume, {volume} mL", { volume: smallestVolumeMl })
    add("largestVolumeMl", largestVolumeMl, allowed)
  }
  if (!isPositive(graduationMl)) add("graduationMl", graduationMl, say("a number above 0 (mL)"))
  if (!isShare(toleranceFraction))
    add("toleranceFraction", toleranceFraction, say("a share from 0 to below 1"))
}

const isPositive = (value: number) => Number.isFinite(value) && value > 0
const isShare = (value: number) => value >= 0 && value < 1
