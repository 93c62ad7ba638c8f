import { addDays, addMonths, calendarDate, dayNumber } from "../calendar.js"
import type { Ancestry, Course, EyeExamination, LengthMethod, Sex, Treatment, Visit } from "../course.js"

/** A schedule of measurements without values yet: what a virtual child is filled from. */
export interface PlanInput {
  readonly sex: Sex
  readonly ancestry: Ancestry
  readonly startAgeYears: number
  /** Month and day of the start decide the season. Default 15 June. */
  readonly start?: string
  readonly treatment?: Pick<Treatment, "kind" | "concentrationPercent">
  /** Month of the stop, counted from the start; never when absent. */
  readonly stopMonth?: number
  readonly visitMonths: readonly number[]
  /** Months (negative) of lengths measured before the start. */
  readonly earlierLengths?: readonly number[]
  /** Months (negative) of old prescriptions. */
  readonly earlierGlasses?: readonly number[]
  readonly method?: LengthMethod
  readonly readings?: number
  readonly latitude?: number
  /** Days by which a visit may be early or late, by its place. */
  readonly jitterDays?: (visit: number) => number
}

/** Refraction with cycloplegia at every visit here, subjective for old glasses, lengths as asked. */
export function measurementPlan(input: PlanInput): Course {
  const { method = "optical-biometry", jitterDays = () => 0 } = input
  const start = input.start ?? "2024-06-15"
  const born = calendarDate(dayNumber(start) - Math.round(input.startAgeYears * 365.25))
  const length: EyeExamination = {
    axialLength: { mm: 0, method, ...(input.readings === undefined ? {} : { readings: input.readings }) },
  }
  const glasses: EyeExamination = { refraction: { sphere: 0, method: "subjective" } }
  const here: EyeExamination = {
    ...length,
    refraction: { sphere: 0, cycloplegic: true, method: "autorefraction" },
  }
  const visit = (month: number, exam: EyeExamination, days = 0): Visit => ({
    date: addDays(addMonths(start, month), days),
    right: exam,
    left: exam,
  })
  const visits = [
    ...(input.earlierGlasses ?? []).map((month) => visit(month, glasses)),
    ...(input.earlierLengths ?? []).map((month) => visit(month, length)),
    ...input.visitMonths.map((month, i) => visit(month, here, i === 0 ? 0 : jitterDays(i))),
  ].sort((a, b) => (a.date < b.date ? -1 : 1))
  return {
    lengthwise: 1,
    child: { born, sex: input.sex, ancestry: input.ancestry },
    ...(input.latitude === undefined ? {} : { practice: { latitude: input.latitude } }),
    visits,
    treatments: input.treatment
      ? [
          {
            ...input.treatment,
            from: start,
            to: input.stopMonth === undefined ? null : addMonths(start, input.stopMonth),
          },
        ]
      : [],
  }
}
