import { addMonths } from "../../engine/calendar.js"
import { costPlan, PLAN_MONTHS } from "../../engine/cost/cost-plan.js"
import { moneyInWords } from "../../engine/cost/money.js"
import type { CalendarDate, Course, TreatmentChoice } from "../../engine/course.js"
import type { FeeSchedule, PracticeRules } from "../../engine/practice-rules.js"
import { inRow } from "../../engine/safety/in-row.js"
import { say } from "../../engine/say.js"
import { capitalised } from "../format.js"
import { CoverageMark } from "./coverage-mark.js"

/** Strength of the drops in the preview where the schedule names none; a choice of ours. */
const USUAL_PERCENT = 0.05

/** What a child new to the practice would pay by these fees, option by option, the three sums apart. */
export function FeePreview({
  schedule,
  rules,
  today,
}: {
  readonly schedule: FeeSchedule | null
  readonly rules: PracticeRules
  readonly today: CalendarDate
}) {
  return (
    <section className="card" aria-labelledby="fee-preview">
      <h2 id="fee-preview">{say("What a new child pays in {months} months", { months: PLAN_MONTHS })}</h2>
      {schedule ? (
        <PreviewTable schedule={schedule} rules={rules} today={today} />
      ) : (
        <p className="soft">{say("Shown once every fee above is complete.")}</p>
      )}
      <p className="soft small">
        {say(
          "A child never seen before, begun on the first day of the schedule or today, by the practice’s protocols.",
        )}
      </p>
    </section>
  )
}

function PreviewTable(props: {
  readonly schedule: FeeSchedule
  readonly rules: PracticeRules
  readonly today: CalendarDate
}) {
  const { schedule, rules } = props
  const [, today = props.today] = [schedule.from, props.today].toSorted()
  // Born eight years before: nothing here depends on it.
  const course: Course = {
    lengthwise: 1,
    child: { born: addMonths(today, -96), sex: "female" },
    visits: [],
  }
  const plans = previewOptions(schedule).flatMap((treatment) => {
    const plan = costPlan({ course, treatment, rules: { ...rules, feeSchedules: [schedule] }, today })
    return plan.kind === "plan" ? [plan] : []
  })
  return (
    <table className="data">
      <thead>
        <tr>
          <th scope="col">{say("Option")}</th>
          <th scope="col" className="number">
            <CoverageMark coverage="not-covered" />
          </th>
          <th scope="col" className="number">
            <CoverageMark coverage="uncertain" />
          </th>
          <th scope="col" className="number">
            <CoverageMark coverage="covered" />
          </th>
          <th scope="col">{say("No fee for")}</th>
        </tr>
      </thead>
      <tbody>
        {plans.map(({ option, currency, totals, withoutFee }) => (
          <tr key={option}>
            <th scope="row">{capitalised(option)}</th>
            <td className="number">{moneyInWords(totals.notCoveredCents, currency)}</td>
            <td className="number">{moneyInWords(totals.uncertainCents, currency)}</td>
            <td className="number">{moneyInWords(totals.coveredCents, currency)}</td>
            <td>{inRow(withoutFee) || "–"}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** Observation, drops, and every device that the schedule has a fee for. */
function previewOptions({ fees }: FeeSchedule): readonly (TreatmentChoice | null)[] {
  const strengths = fees.flatMap(({ charged }) =>
    charged.kind === "bottle" && charged.concentrationPercent != null ? [charged.concentrationPercent] : [],
  )
  const devices = fees.flatMap(({ charged }) => (charged.kind === "device" ? [charged.treatment] : []))
  return [
    null,
    ...(strengths.length > 0 ? strengths : [USUAL_PERCENT]).map((concentrationPercent) => ({
      kind: "atropine" as const,
      concentrationPercent,
    })),
    ...[...new Set(devices)].map((kind) => ({ kind })),
  ]
}
