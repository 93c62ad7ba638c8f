import { refractionSummary } from "../../engine/optics/refraction-summary.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"
import { whyText, withSources } from "../why.js"
import { fixed, paragraph } from "../words.js"

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
  const why = args.why ? await refractionWhy(args) : undefined
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

const refractionWhy = ({ readings, vertexMm }: RefractionArguments) =>
  withSources(
    {
      title: "Why this refraction?",
      inputs: [
        ...readings.map((reading, index) => [`Reading ${index + 1}`, reading.trim()] as const),
        ["Vertex distance", vertexMm === undefined ? "none given, powers left as read" : `${vertexMm} mm`],
      ],
      formula: [
        "M is the sphere and half the cylinder; J0 is minus half the cylinder times the cosine of twice the axis; J45 is minus half the cylinder times the sine of twice the axis.",
        "Several readings are averaged as vectors, so that axes of 179 and 1 average to 180 and never to 90.",
        "The spherical equivalent is M. The printed prescription is the mean to the nearest quarter dioptre.",
        ...(vertexMm === undefined
          ? []
          : [
              "Each principal power F is taken to the cornea as F / (1 - d F), with the vertex distance d in metres.",
            ]),
      ],
      parameters: [],
      tables: [],
    },
    [
      "clinical/THIBOS-1997",
      "clinical/PV-TEACHING",
      ...(vertexMm === undefined ? [] : ["clinical/VERTEX-EDU"]),
    ],
  )
