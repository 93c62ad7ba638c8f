import { dateWords } from "../../chart/words.js"
import type { CalendarDate, Course, TreatmentChoice } from "../../engine/course.js"
import { isInUse, realTreatments } from "../../engine/protocol/treatment-course.js"
import { treatmentName } from "../../engine/treatment-name.js"

export interface AskedTreatment {
  readonly treatment: TreatmentChoice
  readonly words: string
}

/** The treatments a consent is likely wanted for: those in use, then those planned, then what was decided last. */
export function askedTreatments({
  course,
  today,
}: {
  readonly course: Pick<Course, "treatments" | "decisions">
  readonly today: CalendarDate
}): readonly AskedTreatment[] {
  const real = realTreatments(course)
  const inUse = real.filter((treatment) => isInUse(treatment, today))
  const planned = real.filter(({ from }) => from > today)
  const decided = (course.decisions ?? []).filter(
    ({ kind, treatment }) =>
      treatment && ["start", "change-strength", "add", "switch", "restart"].includes(kind),
  )
  const all = [
    ...inUse.map((treatment) => ({ treatment, words: "in use" })),
    ...planned.map((treatment) => ({ treatment, words: `planned from ${dateWords(treatment.from)}` })),
    ...decided
      .slice(-1)
      .flatMap(({ treatment, date }) =>
        treatment ? [{ treatment, words: `decided on ${dateWords(date)}` }] : [],
      ),
  ].filter(
    ({ treatment: { kind, concentrationPercent } }) =>
      kind !== "atropine" || concentrationPercent !== undefined,
  )
  const names = all.map(({ treatment }) => treatmentName(treatment))
  return all
    .filter((_, index) => names.indexOf(names[index] ?? "") === index)
    .map(({ treatment: { kind, concentrationPercent }, words }) => ({
      treatment: { kind, ...(concentrationPercent === undefined ? {} : { concentrationPercent }) },
      words,
    }))
}
