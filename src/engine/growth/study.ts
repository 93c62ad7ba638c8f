import type { Evidence } from "../../evidence/types.js"
import type { PracticeSettings } from "../assessment.js"
import { ageYears, completedMonths } from "../calendar.js"
import type { CalendarDate, Course } from "../course.js"
import { say } from "../say.js"
import { type ChildModel, childModel } from "./child-model.js"
import { type Myopia, myopiaOf } from "./myopia.js"
import { type ExpectedGrowth, emmetropicGrowthOf, naturalGrowth } from "./natural-growth.js"
import { type Observation, observations, withinAges } from "./observations.js"
import { type Factored, factored, type Posterior, posterior, withheldPrior } from "./posterior.js"
import { type TreatmentColumn, treatmentColumns } from "./treatment-columns.js"

export interface StudyInput {
  readonly course: Course
  readonly asOf: CalendarDate
  readonly evidence: Evidence
  readonly settings: PracticeSettings
}

/** Everything about one child on one day that the answers are read from. */
export interface Study extends StudyInput {
  readonly ageYears: number
  /** What this eye would grow untreated: natural growth, or the emmetropic curve for a child without myopia. */
  readonly expected: ExpectedGrowth
  readonly natural: ExpectedGrowth
  readonly emmetropic: ExpectedGrowth
  readonly myopia: Myopia
  readonly model: ChildModel
  readonly factored: Factored
  /** Posterior in which each treatment withholds what the trials report, give or take. */
  readonly posterior: Posterior
  /** The treatment the second question is about: the last that began by `asOf`, in either eye. */
  readonly tested: TreatmentColumn | null
  readonly lengths: readonly Observation[]
}

/** Why the growth model says nothing of this child, or null when it can speak. */
export function refusal({ course, asOf, evidence }: StudyInput): string | null {
  const { youngestAgeYears, oldestAgeYears } = evidence.growth.values
  const { born } = course.child
  if (withinAges({ born, on: asOf }, evidence.growth)) return null
  const months = completedMonths({ from: born, to: asOf })
  return say(
    "the growth evidence covers children of {youngest} to {oldest} years; this child is {years, plural, one {# year} other {# years}} and {months, plural, one {# month} other {# months}} old on {asOf}",
    {
      youngest: youngestAgeYears.value,
      oldest: oldestAgeYears.value,
      years: Math.floor(months / 12),
      months: months % 12,
      asOf,
    },
  )
}

export function study(input: StudyInput): Study {
  const { course, asOf, evidence, settings } = input
  const parameters = evidence.growth
  const natural = naturalGrowth({
    child: course.child,
    latitudeDegrees: course.practice?.latitude,
    parameters,
    settingFactor: settings.settingFactor,
  })
  const emmetropic = emmetropicGrowthOf(evidence.emmetropic)
  const myopia = myopiaOf(course, asOf, parameters.values.myopiaCutOffD.value)
  const figures = observations({ course, asOf, parameters })
  const columns = treatmentColumns({ course, asOf, parameters })
  const age = ageYears({ born: course.child.born, on: asOf })
  const expected = myopia === "not-myopic" ? emmetropic : natural
  const model = childModel({ observations: figures, columns, growth: expected, parameters })
  const child = factored(model, parameters)
  return {
    ...input,
    ageYears: age,
    expected,
    natural,
    emmetropic,
    myopia,
    model,
    factored: child,
    posterior: posterior(child, withheldPrior(model)),
    tested: lastBegun(columns, age),
    lengths: figures.filter((figure) => figure.kind === "length"),
  }
}

/**
 * The treatment that was begun last: one that came back is asked about again. Of two begun on the same day, one in each
 * eye, the one that the trials report more of, since it can be told sooner.
 */
function lastBegun(columns: readonly TreatmentColumn[], age: number): TreatmentColumn | null {
  const begun = columns.flatMap((column) => {
    const begins = column.begins ?? column.stretches.map(([from]) => from)
    const last = begins.findLast((from) => from <= age)
    return last === undefined ? [] : [{ column, from: last }]
  })
  return begun.sort((a, b) => b.from - a.from || b.column.prior.mean - a.column.prior.mean)[0]?.column ?? null
}
