import type { EyeExamination } from "../course.js"

/**
 * Distance acuity through a correction, logMAR: what the eye sees without one says nothing of its health in a
 * nearsighted child. Undefined where none was measured.
 *
 * @example
 * correctedDistanceLogMAR({ acuity: { distanceLogMAR: 0.8, distanceCorrection: "uncorrected" } }) // => undefined
 */
export function correctedDistanceLogMAR(eye: EyeExamination | undefined): number | undefined {
  const { distanceLogMAR, distanceCorrection } = eye?.acuity ?? {}
  return distanceCorrection === "uncorrected" ? undefined : distanceLogMAR
}
