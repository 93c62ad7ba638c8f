import type { Problem } from "../problem.js"
import { say } from "../say.js"
import { meanPowerVector } from "./mean-refraction.js"
import { parsePrescription } from "./parse-prescription.js"
import { lensOfPowerVector, type PowerVector } from "./power-vector.js"
import { printedPrescription } from "./printed-prescription.js"
import type { SpheroCylinder } from "./sphero-cylinder.js"
import { vertexCompensated } from "./vertex-compensated.js"

export interface RefractionSummary extends PowerVector {
  readonly sphericalEquivalent: number
  /** The mean to the quarter dioptre, as `printedPrescription` writes it. */
  readonly printed: string
}

// Farther than spectacles sit (evidence: 12 to 14 is usual); a limit against slips of the pen (common practice, no source).
const FARTHEST_VERTEX_MM = 20

/**
 * Several readings of one eye as one: each is parsed, taken to the cornea when a vertex distance is given, and all are
 * averaged as power vectors. Dioptres throughout. Every fault of every reading comes back at once.
 *
 * @example
 * refractionSummary(["-2.25 -0.50 x 180"])
 * // => { m: -2.5, j0: 0.25, j45: 0, sphericalEquivalent: -2.5, printed: "-2.25 -0.50 x 180" }
 */
export function refractionSummary(
  readings: readonly string[],
  { vertexMm }: { readonly vertexMm?: number | undefined } = {},
): RefractionSummary | { readonly problems: readonly Problem[] } {
  const parsed = readings.map((text, index) => parsePrescription(text, `readings[${index}]`))
  const problems = [
    ...(readings.length === 0 ? [noReading()] : []),
    ...vertexProblems(vertexMm),
    ...parsed.flatMap((reading) => ("problems" in reading ? reading.problems : [])),
  ]
  if (problems.length > 0) return { problems }
  const lenses = parsed.flatMap((reading) =>
    "refraction" in reading ? [atCornea(reading.refraction, vertexMm)] : [],
  )
  const mean = meanPowerVector(lenses)
  return { ...mean, sphericalEquivalent: mean.m, printed: printedPrescription(lensOfPowerVector(mean)) }
}

const noReading = (): Problem => ({
  path: "readings",
  value: null,
  allowed: say("at least one prescription"),
  message: say("readings must hold at least one prescription"),
})

function atCornea(lens: SpheroCylinder, vertexMm: number | undefined): SpheroCylinder {
  return vertexMm === undefined ? lens : vertexCompensated({ lens, towardEyeMm: vertexMm })
}

function vertexProblems(vertexMm: number | undefined): readonly Problem[] {
  if (vertexMm === undefined || (vertexMm >= 0 && vertexMm <= FARTHEST_VERTEX_MM)) return []
  const path = "vertexMm"
  const allowed = say("a distance from 0 to {most} mm", { most: FARTHEST_VERTEX_MM })
  const message = say("{path} must be {allowed}, not {value}", { path, allowed, value: vertexMm })
  return [{ path, value: vertexMm, allowed, message }]
}
