import { dateWords } from "../../chart/words.js"
import { costPlan } from "../../engine/cost/cost-plan.js"
import { moneyInWords } from "../../engine/cost/money.js"
import type { TreatmentChoice } from "../../engine/course.js"
import type { CourseReading } from "../reading.js"

/** What the family pays by the practice's fees, for the text of a consent; nothing where no fees are recorded. */
export function costLines(
  treatment: TreatmentChoice,
  { course, rules, today }: CourseReading,
): readonly string[] {
  const plan = costPlan({ course, treatment, rules, today })
  if (plan.kind !== "plan" || plan.lines.length === 0) return []
  const { totals, currency, from, to, schedule, withoutFee } = plan
  const money = (cents: number) => moneyInWords(cents, currency)
  return [
    `From ${dateWords(from)} to ${dateWords(to)}, by our fees “${schedule.title}” of ${dateWords(schedule.from)}: ${money(totals.notCoveredCents)} that no insurance covers, ${money(totals.uncertainCents)} of which it is uncertain, ${money(totals.coveredCents)} that is covered.`,
    ...(withoutFee.length > 0
      ? [`Not counted, because no fee is set for it: ${withoutFee.join(", ")}.`]
      : []),
  ]
}
