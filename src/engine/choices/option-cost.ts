import { ageYears } from "../calendar.js"
import { type CostPer01Mm, costPer01Mm } from "../cost/cost-per-01-mm.js"
import { type CostPlan, costPlan } from "../cost/cost-plan.js"
import type { Study } from "../growth/study.js"
import type { PracticeRules } from "../practice-rules.js"
import { say } from "../say.js"
import { courseUnder } from "./course-under.js"
import type { Option } from "./option-list.js"
import { BY_AGE_YEARS, withheldMm } from "./outlook-figures.js"
import type { Outlook } from "./what-if.js"

export type OptionCost =
  | {
      readonly kind: "plan"
      readonly plan: CostPlan
      /** Refused for no treatment, and where the quotient would say more than is known. */
      readonly per01Mm: CostPer01Mm
    }
  | { readonly kind: "refused"; readonly why: string }

/** What an option costs as the protocol plans it, and each tenth of a millimetre that it withholds over the same months. */
export function optionCost({
  option,
  child,
  outlook,
  rules,
}: {
  readonly option: Option
  readonly child: Study
  /** Null where no figures are given for the option. */
  readonly outlook: Outlook | null
  readonly rules: PracticeRules
}): OptionCost {
  const { course, asOf } = child
  const plan = costPlan({ course: courseUnder(option, { course, asOf }), rules, today: asOf })
  if (plan.kind === "refused") return plan
  if (outlook === null || option.parts.length === 0) {
    const why =
      option.parts.length === 0
        ? say("Nothing is withheld.")
        : say("No figure is given for what is withheld.")
    return { kind: "plan", plan, per01Mm: { kind: "refused", why } }
  }
  // The plan pays for treatment until its planned stop only, so no more than that is withheld for the money.
  const last = plan.plannedStop !== null && plan.plannedStop < plan.to ? plan.plannedStop : plan.to
  const toAge = Math.min(ageYears({ born: course.child.born, on: last }), BY_AGE_YEARS)
  const withheld = withheldMm(outlook, { fromAge: child.ageYears, toAge })
  return { kind: "plan", plan, per01Mm: costPer01Mm({ plan, withheldMm: withheld }) }
}
