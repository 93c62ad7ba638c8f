import { assess } from "../../engine/assess.js"
import type { Assessment } from "../../engine/assessment.js"
import type { Course, Treatment, TreatmentKind } from "../../engine/course.js"
import { evidence } from "../../evidence/index.js"
import type { CourseReading } from "../reading.js"

type Possible = Pick<Treatment, "kind" | "concentrationPercent">

/** The treatments that trials tell something of, the drops first; combinations are left out, since a course has no such kind. */
export const POSSIBLE_TREATMENTS: readonly Possible[] = evidence.growth.effects.flatMap((effect) =>
  effect.kind === "atropine+orthokeratology"
    ? []
    : [
        {
          kind: effect.kind satisfies TreatmentKind,
          ...(effect.concentrationPercent === null
            ? {}
            : { concentrationPercent: effect.concentrationPercent }),
        },
      ],
)

/** Where the list opens: drops of 0.05 %, a choice of ours that the page lets change. */
export const USUAL_TREATMENT = Math.max(
  0,
  POSSIBLE_TREATMENTS.findIndex(
    ({ kind, concentrationPercent }) => kind === "atropine" && concentrationPercent === 0.05,
  ),
)

/** What could be told of a child if a treatment began today: for talking it over before anyone starts. */
export function assessedAsIfTreated(
  course: Course,
  treatment: Possible,
  { today, settings }: Pick<CourseReading, "today" | "settings">,
): Assessment {
  // What is decided on and has not begun would be a second treatment beside the one that is tried out.
  const begun = (course.treatments ?? []).filter(({ from }) => from <= today)
  const treatments = [...begun, { ...treatment, from: today }]
  return assess({ course: { ...course, treatments }, asOf: today, evidence, settings })
}
