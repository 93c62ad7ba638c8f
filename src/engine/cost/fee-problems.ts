import type { Fee, FeeOccasion, FeeSchedule } from "../practice-rules.js"
import type { Problem } from "../problem.js"
import { say } from "../say.js"
import { treatmentName } from "../treatment-name.js"
import { decimalsOf } from "./currencies.js"

/**
 * What is wrong with a fee schedule whose fields are each sound: fees that get in each other's way, and a schedule that
 * gets in the way of the others or of what families have paid. Paths are those of the schedule.
 *
 * @example
 * feeScheduleProblems({ schedule, others: [], paidIn: [] }) // => []
 */
export function feeScheduleProblems({
  schedule,
  others,
  paidIn,
}: {
  readonly schedule: FeeSchedule
  /** The other schedules of the practice, the one this takes the place of left out. */
  readonly others: readonly FeeSchedule[]
  /** Currencies in which payments are recorded. */
  readonly paidIn: readonly string[]
}): readonly Problem[] {
  return [
    ...currencyProblems({ schedule, others, paidIn }),
    ...others
      .filter(({ from }) => from === schedule.from)
      .map(({ title }) =>
        problem(
          "from",
          schedule.from,
          say('a day on which no other schedule begins ("{title}" begins then)', { title }),
        ),
      ),
    ...schedule.fees.flatMap((fee, index) =>
      feeProblems(fee, { index, before: schedule.fees.slice(0, index) }),
    ),
  ]
}

function currencyProblems({
  schedule: { currency },
  others,
  paidIn,
}: Parameters<typeof feeScheduleProblems>[0]): readonly Problem[] {
  const only = (allowed: string) => [problem("currency", currency, allowed)]
  if (decimalsOf(currency) === null) return only(say("the ISO 4217 code of a currency in use, such as EUR"))
  const other = others.find((one) => one.currency !== currency)
  if (other) {
    const known = { currency: other.currency, day: other.from }
    return only(say("{currency}, the currency of the schedule from {day}", known))
  }
  const paid = paidIn.find((one) => one !== currency)
  if (paid === undefined) return []
  return only(say("{currency}, the currency in which payments are recorded", { currency: paid }))
}

function feeProblems(
  { id, charged }: Fee,
  { index, before }: { readonly index: number; readonly before: readonly Fee[] },
): readonly Problem[] {
  const path = `fees[${index}]`
  const problems: Problem[] = []
  const sameId = before.findIndex((fee) => fee.id === id)
  if (sameId >= 0) {
    const place = `fees[${sameId}]`
    problems.push(problem(`${path}.id`, id, say("unlike every other id ({place} has it)", { place })))
  }
  const clash = before.find((fee) => isSameOccasion(fee.charged, charged))
  if (clash) {
    problems.push(
      problem(
        `${path}.charged`,
        charged,
        say('an occasion that no other fee is for ("{title}" is charged for it already)', {
          title: clash.title,
        }),
      ),
    )
  }
  if (charged.kind === "device" && (charged.treatment === "atropine" || charged.treatment === "none")) {
    const name = treatmentName({ kind: charged.treatment })
    problems.push(
      problem(
        `${path}.charged.treatment`,
        charged.treatment,
        say("a treatment with spectacles or lenses; {name} has no device", { name }),
      ),
    )
  }
  return problems
}

/** Whether two fees would both be asked at the same moment for the same thing, so that neither can be told the right one. */
function isSameOccasion(a: FeeOccasion, b: FeeOccasion): boolean {
  if (a.kind === "examination" && b.kind === "examination")
    return a.stages.some((stage) => b.stages.includes(stage))
  if (a.kind === "measure" && b.kind === "measure") return a.measure === b.measure
  if (a.kind === "bottle" && b.kind === "bottle") {
    return (a.concentrationPercent ?? null) === (b.concentrationPercent ?? null)
  }
  // Lenses every year and their fluid every month are two things of one treatment.
  if (a.kind === "device" && b.kind === "device") {
    return a.treatment === b.treatment && a.everyMonths === b.everyMonths
  }
  return false
}

function problem(path: string, value: unknown, allowed: string): Problem {
  return { path, value, allowed, message: say("{path} must be {allowed}", { path, allowed }) }
}
