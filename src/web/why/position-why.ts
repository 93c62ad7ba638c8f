import { fixed } from "../../chart/words.js"
import type { EyeAssessment } from "../../engine/assessment.js"
import { EYES, type Eye } from "../../engine/course.js"
import type { Reference } from "../../evidence/types.js"
import { capitalised } from "../format.js"
import { gradeInWords, type Why } from "./why.js"

/** Why the eyes stand where they stand among peers, or why no position is given. */
export function positionWhy({
  eyes,
  references,
}: {
  readonly eyes: Readonly<Record<Eye, EyeAssessment>>
  readonly references: readonly Reference[]
}): Why {
  const used = references.filter((reference) =>
    EYES.some((eye) => eyes[eye].position.reference === reference.id),
  )
  return {
    title: "Why this position among peers?",
    inputs: EYES.flatMap((eye) => {
      const { length, position } = eyes[eye]
      const where =
        "refused" in position
          ? `not given: ${position.refused}`
          : `centile ${position.centile}${position.z === null ? "" : ` (z ${fixed(position.z, 2)})`}${position.note ? `; ${position.note}` : ""}`
      return [
        ...(length ? [[`Length, ${eye}`, `${fixed(length.mm, 2)} mm`] as const] : []),
        [`${capitalised(eye)} eye`, where] as const,
      ]
    }),
    steps: [
      "The length is compared with children of the same age, and of the same sex where the reference has the sexes apart.",
      "Outside the ages of a reference no position is given. A reference is not a target: a myopic eye on the 50th centile is still myopic, and children on treatment are not the reference population.",
      ...used.map(
        (reference) =>
          `${reference.id}: ${gradeInWords(reference.grade)}. ${reference.population}; n ${reference.n}; ${reference.instrument}. ${reference.note}`,
      ),
    ],
    parameters: [],
    tables: used.map(({ provenance, grade }) => ({ provenance, grade })),
  }
}
