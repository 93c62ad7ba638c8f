import type { GrowthParameters, TreatmentEffect } from "../../evidence/types.js"
import type { CalendarDate, Course, TreatmentKind } from "../course.js"
import { treatmentColumns } from "../growth/treatment-columns.js"
import { METHOD_VERSION } from "../method.js"
import { treatmentName } from "../treatment-name.js"
import type { NamedParameter, WhyInput } from "./why.js"

/** What the trials report of the treatments that the course holds, then every parameter of the growth model by name. */
export function modelParameters(input: {
  readonly course: Course
  readonly asOf: CalendarDate
  readonly parameters: GrowthParameters
}): readonly NamedParameter[] {
  const effects = treatmentColumns(input).flatMap(({ effect }) => effect ?? [])
  return [...[...new Set(effects)].map(effectParameter), ...growthParameters(input.parameters)]
}

/** Every parameter of the growth model under the name that the parameter file gives it. */
export function growthParameters({ values }: GrowthParameters): readonly NamedParameter[] {
  return Object.entries(values).map(([name, parameter]) => ({ name, ...parameter }))
}

/** A trial effect as a parameter: "share of natural growth withheld by atropine 0.05 %". */
export function effectParameter(effect: TreatmentEffect): NamedParameter {
  const nil = effect.mayBeNil ? " The effect may be nil." : ""
  return {
    name: `share of natural growth withheld by ${effectName(effect)}`,
    value: effect.withheldFraction,
    unit: "1",
    sd: effect.withheldFractionSd,
    source: effect.source,
    note: `${effect.derivation} Confidence: ${effect.confidence}.${nil}`,
  }
}

/** What made the figures, so that they can be had again. */
export const methodInput = ({ version }: GrowthParameters): WhyInput => [
  "Method",
  `version ${METHOD_VERSION}, parameters ${version}`,
]

function effectName({ kind, concentrationPercent }: TreatmentEffect): string {
  const parts = kind.split("+") as readonly TreatmentKind[]
  return parts
    .map((part) =>
      treatmentName({
        kind: part,
        concentrationPercent: part === "atropine" ? (concentrationPercent ?? undefined) : undefined,
      }),
    )
    .join(" with ")
}
