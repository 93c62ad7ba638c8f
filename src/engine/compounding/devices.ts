import { usualTransfers } from "./limits.js"

/** What a pharmacy measures volumes with, as it states it itself. */
export interface MeasuringDevice {
  readonly name?: string | undefined
  readonly smallestVolumeMl: number
  /** Any volume when absent, in several fills where need be. */
  readonly largestVolumeMl?: number | null | undefined
  /** The step to which a volume is read off. */
  readonly graduationMl: number
  /** 95 % limit of the error of one measured volume, as a share of it. */
  readonly toleranceFraction: number
}

const SLACK_ML = 1e-9

/** The one device of a pharmacy that states no more than the smallest volume and a tolerance. */
export function oneDevice({
  smallestVolumeMl = usualTransfers.smallestVolumeMl,
  toleranceFraction = usualTransfers.toleranceFraction,
  graduationMl,
}: {
  readonly smallestVolumeMl?: number | undefined
  readonly toleranceFraction?: number | undefined
  readonly graduationMl?: number | undefined
}): MeasuringDevice {
  return {
    smallestVolumeMl,
    toleranceFraction,
    // A device that measures less than the usual graduation is read at least as finely as that.
    graduationMl: graduationMl ?? Math.min(usualTransfers.readableMl, smallestVolumeMl),
  }
}

/** The most exact of the devices that measure this volume; undefined when none does. */
export function deviceFor(
  volumeMl: number,
  devices: readonly MeasuringDevice[],
): MeasuringDevice | undefined {
  return devices
    .filter(
      ({ smallestVolumeMl, largestVolumeMl }) =>
        volumeMl >= smallestVolumeMl - SLACK_ML &&
        volumeMl <= (largestVolumeMl ?? Number.POSITIVE_INFINITY) + SLACK_ML,
    )
    .toSorted((a, b) => a.toleranceFraction - b.toleranceFraction)[0]
}

/** The smallest volume that any of the devices measures. */
export const smallestOf = (devices: readonly MeasuringDevice[]): number =>
  Math.min(...devices.map(({ smallestVolumeMl }) => smallestVolumeMl))
