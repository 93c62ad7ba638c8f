import type { GrowthParameters, TreatmentEffect } from "../../evidence/types.js"
import { confidenceInWords } from "../choices/evidence-strength.js"
import type { CalendarDate, Course, TreatmentKind } from "../course.js"
import { namesOf } from "../growth/prescribed.js"
import { treatmentColumns } from "../growth/treatment-columns.js"
import { METHOD_VERSION } from "../method.js"
import { say } from "../say.js"
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
  return {
    name: say("share of natural growth withheld by {treatment}", { treatment: effectName(effect) }),
    value: effect.withheldFraction,
    unit: "1",
    sd: effect.withheldFractionSd,
    source: effect.source,
    note: say("{derivation} Confidence: {confidence}.{nil, select, yes { The effect may be nil.} other {}}", {
      derivation: effect.derivation,
      confidence: confidenceInWords(effect.confidence),
      nil: effect.mayBeNil ? "yes" : "no",
    }),
  }
}

/** What made the figures, so that they can be had again. */
export const methodInput = ({ version }: GrowthParameters): WhyInput => [
  say("Method"),
  say("version {method}, parameters {parameters}", { method: METHOD_VERSION, parameters: version }),
]

function effectName({ kind, concentrationPercent }: TreatmentEffect): string {
  const parts = kind.split("+") as readonly TreatmentKind[]
  return namesOf(
    parts.map((part) => ({
      kind: part,
      concentrationPercent: part === "atropine" ? (concentrationPercent ?? undefined) : undefined,
    })),
  )
}
