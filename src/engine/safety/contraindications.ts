import type { CalendarDate, Course } from "../course.js"
import { isInUse, realTreatments } from "../protocol/treatment-course.js"
import { treatmentName } from "../treatment-name.js"
import { capitalised } from "../words.js"
import type { RaisedConcern } from "./raised-concern.js"
import { startCautions } from "./start-cautions.js"

/** Contraindications that were answered with yes while the drops they speak of are in use (CD-058, CD-064). */
export function contraindications({
  course,
  today,
}: {
  readonly course: Course
  readonly today: CalendarDate
}): readonly RaisedConcern[] {
  const drops = realTreatments(course).find(
    (treatment) => treatment.kind === "atropine" && isInUse(treatment, today),
  )
  if (!drops) return []
  return startCautions({ course, today, treatment: drops })
    .filter(({ weight, state }) => weight === "contraindicated" && state === "asked-yes")
    .map(({ name, on, note, says, grade, duty }) => ({
      kind: "contraindication",
      recordKind: "contraindication",
      why:
        `${capitalised(name)}: yes on ${on}${note === null ? "" : ` (${note})`}, while ${treatmentName(drops)} is in use. ` +
        `${capitalised(says)} (${grade}).`,
      on: on ?? today,
      duty: duty ?? "CD-058",
    }))
}
