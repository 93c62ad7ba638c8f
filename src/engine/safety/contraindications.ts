import { ageYears } from "../calendar.js"
import type { CalendarDate, Course } from "../course.js"
import { isInUse, realTreatments } from "../protocol/treatment-course.js"
import { say } from "../say.js"
import { treatmentName } from "../treatment-name.js"
import { capitalised } from "../words.js"
import { answered, CONTRAINDICATED, INFANT, INFANT_UNTIL_YEARS } from "./caution.js"
import type { RaisedConcern } from "./raised-concern.js"

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
  const { born } = course.child
  const isInfant = ageYears({ born, on: today }) < INFANT_UNTIL_YEARS
  return [
    ...(isInfant
      ? [{ ...INFANT, state: "asked-yes", on: today, note: say("born {day}", { day: born }) }]
      : []),
    ...CONTRAINDICATED.map((rule) => ({ ...rule, ...answered({ course, today, question: rule.id }) })),
  ]
    .filter(({ state }) => state === "asked-yes")
    .map(({ name, on, note, says, grade, duty }) => ({
      kind: "contraindication",
      recordKind: "contraindication",
      why: whyOf({
        name: capitalised(say(name)),
        on: on ?? today,
        note,
        treatment: treatmentName(drops),
        says: capitalised(say(says)),
        grade: say(grade),
      }),
      on: on ?? today,
      duty: duty ?? "CD-058",
    }))
}

function whyOf({
  note,
  ...values
}: Readonly<Record<"name" | "on" | "treatment" | "says" | "grade", string>> & {
  readonly note: string | null
}): string {
  return note === null
    ? say("{name}: yes on {on}, while {treatment} is in use. {says} ({grade}).", values)
    : say("{name}: yes on {on} ({note}), while {treatment} is in use. {says} ({grade}).", { ...values, note })
}
