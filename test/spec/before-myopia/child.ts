import { type BeforeMyopia, beforeMyopia } from "../../../src/engine/before-myopia/before-myopia.js"
import type { Child, Course, Refraction, Treatment } from "../../../src/engine/course.js"
import { watchfulProtocol } from "../../../src/engine/protocol/watchful.js"
import { beforeMyopiaEvidence } from "../../../src/evidence/before-myopia.js"
import { emmetropicCurve, growthParameters } from "../../../src/evidence/index.js"

/** A few words in which the chapters tell of a child before myopia. The children are invented. */
export interface Story {
  readonly born: string
  readonly seen: string
  readonly refraction?: Partial<Refraction> & { readonly sphere: number }
  readonly left?: Partial<Refraction> & { readonly sphere: number }
  readonly lengthMm?: number
  readonly myopicParents?: Child["myopicParents"]
  readonly treatments?: readonly Treatment[]
}

export function told(story: Story) {
  const { born, seen, refraction, lengthMm, myopicParents, treatments = [] } = story
  const eye = (of: Story["refraction"]) => ({
    ...(of ? { refraction: { cycloplegic: true, ...of } } : {}),
    ...(lengthMm === undefined ? {} : { axialLength: { mm: lengthMm } }),
  })
  const course: Course = {
    lengthwise: 1,
    child: { born, sex: "female", ...(myopicParents === undefined ? {} : { myopicParents }) },
    visits: [{ date: seen, right: eye(refraction), left: eye(story.left ?? refraction) }],
    treatments,
  }
  return beforeMyopia({
    course,
    asOf: seen,
    evidence: {
      onset: beforeMyopiaEvidence,
      emmetropic: emmetropicCurve,
      myopiaCutOffD: growthParameters.values.myopiaCutOffD.value,
    },
    protocol: watchfulProtocol,
  })
}

/** As `told`, for a child of whom something can be said. */
export function said(story: Story): BeforeMyopia {
  const answer = told(story)
  if ("refused" in answer) throw new Error(answer.refused)
  return answer
}
