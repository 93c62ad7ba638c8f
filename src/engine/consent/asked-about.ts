import type { CalendarDate, Course, TreatmentChoice } from "../course.js"
import { isInUse, realTreatments } from "../protocol/treatment-course.js"
import { treatmentName } from "../treatment-name.js"

/** A treatment that a consent is likely wanted for, and how it comes to be asked about. */
export interface AskedAbout {
  readonly treatment: TreatmentChoice
  readonly because: "in-use" | "planned" | "decided"
  /** First day of its use, or the day it was decided. */
  readonly date: CalendarDate
}

/**
 * The treatments a consent is likely wanted for: those in use, then those planned, then what was decided last. Drops
 * whose strength is not recorded are left out: nobody can consent to them.
 */
export function askedAbout({
  course,
  today,
}: {
  readonly course: Pick<Course, "treatments" | "decisions">
  readonly today: CalendarDate
}): readonly AskedAbout[] {
  const real = realTreatments(course)
  const decided = (course.decisions ?? []).filter(
    ({ kind, treatment }) =>
      treatment && ["start", "change-strength", "add", "switch", "restart"].includes(kind),
  )
  const all: readonly AskedAbout[] = [
    ...real
      .filter((treatment) => isInUse(treatment, today))
      .map((treatment) => ({ treatment, because: "in-use" as const, date: treatment.from })),
    ...real
      .filter(({ from }) => from > today)
      .map((treatment) => ({ treatment, because: "planned" as const, date: treatment.from })),
    ...decided
      .slice(-1)
      .flatMap(({ treatment, date }) =>
        treatment ? [{ treatment, because: "decided" as const, date }] : [],
      ),
  ].filter(
    ({ treatment: { kind, concentrationPercent } }) =>
      kind !== "none" && (kind !== "atropine" || concentrationPercent !== undefined),
  )
  const names = all.map(({ treatment }) => treatmentName(treatment))
  return all
    .filter((_, index) => names.indexOf(names[index] ?? "") === index)
    .map(({ treatment: { kind, concentrationPercent }, ...rest }) => ({
      treatment: { kind, ...(concentrationPercent === undefined ? {} : { concentrationPercent }) },
      ...rest,
    }))
}
