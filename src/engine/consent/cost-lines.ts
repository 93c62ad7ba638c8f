import { costPlan } from "../cost/cost-plan.js"
import { moneyInWords } from "../cost/money.js"
import type { CalendarDate, Course, TreatmentChoice } from "../course.js"
import type { PracticeRules } from "../practice-rules.js"
import { dayInWords, listed, say } from "../say.js"

/** What the family pays by the practice's fees, for the text of a consent; nothing where no fees are recorded. */
export function costLines({
  treatment,
  course,
  rules,
  today,
}: {
  readonly treatment: TreatmentChoice
  readonly course: Course
  readonly rules: Pick<PracticeRules, "feeSchedules" | "pharmacies" | "protocols">
  readonly today: CalendarDate
}): readonly string[] {
  const plan = costPlan({ course, treatment, rules, today })
  if (plan.kind !== "plan" || plan.lines.length === 0) return []
  const { totals, currency, schedule, withoutFee } = plan
  const money = (cents: number) => moneyInWords(cents, currency)
  const sums = say(
    "From {from} to {to}, by our fees “{title}” of {day}: {notCovered} that no insurance covers, {uncertain} of which it is uncertain, {covered} that is covered.",
    {
      from: dayInWords(plan.from),
      to: dayInWords(plan.to),
      title: schedule.title,
      day: dayInWords(schedule.from),
      notCovered: money(totals.notCoveredCents),
      uncertain: money(totals.uncertainCents),
      covered: money(totals.coveredCents),
    },
  )
  if (withoutFee.length === 0) return [sums]
  const lacking = say("Not counted, because no fee is set for it: {what}.", { what: listed(withoutFee) })
  return [sums, lacking]
}
