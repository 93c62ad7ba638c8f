import { refractionSummary } from "../../engine/optics/refraction-summary.js"
import { refractionWhy } from "../../engine/why/refraction.js"
import { fixed } from "../../engine/words.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"
import { sourceRegister, whyText } from "../why-text.js"
import { paragraph } from "../words.js"

export interface RefractionArguments {
  readonly readings: readonly string[]
  readonly vertexMm?: number | undefined
  readonly json?: boolean | undefined
  readonly why?: boolean | undefined
}

/** One or more readings of one eye as power vector, spherical equivalent and printed prescription. */
export async function run(args: RefractionArguments, io: Io): Promise<ExitCode> {
  const { readings, vertexMm, json = false } = args
  const summary = refractionSummary(readings, { vertexMm })
  if ("problems" in summary) return toldProblems(summary.problems, { io, json })
  const why = args.why ? refractionWhy({ readings, vertexMm, sourceOf: await sourceRegister() }) : undefined
  if (json) return toldJson({ ...summary, ...(why && { why }) }, io)
  const { m, j0, j45, sphericalEquivalent, printed } = summary
  const mean = readings.length > 1 ? ` (mean of ${readings.length} readings)` : ""
  const plane = vertexMm === undefined ? "" : ` At the cornea, from a vertex distance of ${vertexMm} mm.`
  io.out(paragraph(`${printed}${mean}.${plane}`, 0))
  io.out(paragraph(`Spherical equivalent ${signed(sphericalEquivalent)} D.`, 0))
  io.out(paragraph(`Power vector: M ${signed(m)}, J0 ${signed(j0)}, J45 ${signed(j45)} D.`, 0))
  if (why) io.out(whyText(why))
  return 0
}

const signed = (dioptres: number): string => {
  const text = fixed(dioptres, 3).replace(/0$/, "")
  return dioptres > 0 && Number(text) !== 0 ? `+${text}` : text
}
