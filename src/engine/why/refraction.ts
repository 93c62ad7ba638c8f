import { say } from "../say.js"
import { type SourceOf, type Why, whyOf } from "./why.js"

/** Why readings of one eye give this power vector and this prescription. */
export function refractionWhy({
  readings,
  vertexMm,
  sourceOf,
}: {
  readonly readings: readonly string[]
  readonly vertexMm?: number | undefined
  readonly sourceOf: SourceOf
}): Why {
  const toCornea = vertexMm !== undefined
  return whyOf(
    {
      title: say("Why this refraction?"),
      inputs: [
        ...readings.map(
          (reading, index) => [say("Reading {number}", { number: index + 1 }), reading.trim()] as const,
        ),
        [
          say("Vertex distance"),
          toCornea ? say("{mm} mm", { mm: vertexMm }) : say("none given, powers left as read"),
        ],
      ],
      formula: [
        ...(toCornea
          ? [
              say(
                "Each principal power F is taken to the cornea as F / (1 - d F), with the vertex distance d in metres.",
              ),
            ]
          : []),
        say(
          "M is the sphere and half the cylinder; J0 is minus half the cylinder times the cosine of twice the axis; J45 is minus half the cylinder times the sine of twice the axis.",
        ),
        say(
          "Several readings are averaged as vectors, so that axes of 179 and 1 average to 180 and never to 90.",
        ),
        say(
          "The spherical equivalent is M. The printed prescription is the mean to the nearest quarter dioptre.",
        ),
      ],
      restsOn: ["clinical/THIBOS-1997", "clinical/PV-TEACHING", ...(toCornea ? ["clinical/VERTEX-EDU"] : [])],
    },
    sourceOf,
  )
}
