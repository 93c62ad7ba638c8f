import { type CostPlan, costPlan } from "../../engine/cost/cost-plan.js"
import { costRows, rowInWords } from "../../engine/cost/cost-rows.js"
import { coverageInWords } from "../../engine/cost/coverage.js"
import { moneyInWords } from "../../engine/cost/money.js"
import { type Paid, paidSoFar } from "../../engine/cost/payments.js"
import type { CalendarDate, TreatmentChoice, TreatmentKind } from "../../engine/course.js"
import type { Problem } from "../../engine/problem.js"
import { capitalised, sentence } from "../../engine/words.js"
import { problem } from "../../interop/course/problem.js"
import { courseInput } from "../course-input.js"
import { feeFile } from "../fee-file.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"
import { dateInWords, paragraph, section } from "../words.js"

export interface EstimateArguments {
  readonly file: string
  readonly fees: string
  readonly treatment?: TreatmentKind | undefined
  readonly concentration?: number | undefined
  readonly months: number
  readonly asOf?: CalendarDate | undefined
  readonly json?: boolean | undefined
}

/** What the coming months cost with a treatment, by a practice's fees: an estimate and no invoice. */
export async function run(args: EstimateArguments, io: Io): Promise<ExitCode> {
  const { json = false, months } = args
  const input = await courseInput(args, io)
  const fees = await feeFile(args.fees, io)
  const option = optionOf(args)
  const problems = [input, fees, option].flatMap((part) => ("problems" in part ? part.problems : []))
  if ("problems" in input || "problems" in fees || "problems" in option) {
    return toldProblems(problems, { io, json })
  }
  const { course, asOf: today, notes } = input
  const rules = { feeSchedules: fees.schedules, pharmacies: [] }
  const plan = costPlan({ course, treatment: option.treatment, rules, today, months })
  if (plan.kind === "refused") {
    const allowed = "fees that price every day of the plan in one currency"
    return toldProblems([{ path: "--fees", value: args.fees, allowed, message: plan.why }], { io, json })
  }
  const paid = paidSoFar({ course, currency: plan.currency, today })
  if (json) {
    return toldJson({ asOf: today, plan, paid, isEstimate: true, isInvoice: false, checks: notes }, io)
  }
  io.out(estimateText(plan, paid))
  io.out(
    section(
      "Checks",
      notes.map(({ path, why }) => `${path}: ${sentence(why)}`),
    ),
  )
  io.out(paragraph("An estimate, not an invoice.", 0))
  return 0
}

/** The treatment asked about; absent for the course as it is recorded, null for observation. */
function optionOf({
  treatment: kind,
  concentration,
}: EstimateArguments):
  | { readonly treatment: TreatmentChoice | null | undefined }
  | { readonly problems: readonly Problem[] } {
  const isDrops = kind === "atropine"
  if (concentration !== undefined && !isDrops) {
    const allowed = "absent: only atropine has a strength (--treatment atropine)"
    return { problems: [problem({ path: "--concentration", value: concentration, allowed })] }
  }
  if (isDrops && !(concentration !== undefined && concentration > 0 && concentration <= 1.5)) {
    const allowed = "the strength of the drops, above 0 and up to 1.5 % w/v"
    return { problems: [problem({ path: "--concentration", value: concentration, allowed })] }
  }
  if (kind === undefined) return { treatment: undefined }
  if (kind === "none") return { treatment: null }
  return { treatment: isDrops ? { kind, concentrationPercent: concentration } : { kind } }
}

function estimateText(plan: CostPlan, paid: Paid): string {
  const money = (cents: number) => moneyInWords(cents, plan.currency)
  const { coveredCents, uncertainCents, notCoveredCents } = plan.totals
  const rows = costRows(plan).map((row) => {
    const { from, to, cents, coverage } = row
    const when = from === to ? dateInWords(from) : `${dateInWords(from)} to ${dateInWords(to)}`
    return `${when}: ${rowInWords(row)}, ${cents === 0 ? "free of charge" : `${money(cents)}, ${coverageInWords(coverage)}`}.`
  })
  return [
    paragraph(
      `${capitalised(plan.option)}, ${dateInWords(plan.from)} to ${dateInWords(plan.to)}: three sums, not added up.`,
      0,
    ),
    "\n",
    section("Still to come", [
      `Not covered: ${money(notCoveredCents)}.`,
      `Uncertain whether covered: ${money(uncertainCents)}.`,
      `Covered: ${money(coveredCents)}.`,
    ]),
    section("Paid so far", [
      `${money(paid.cents)}.`,
      ...paid.problems.map(({ message }) => `Not counted: ${message}.`),
    ]),
    section("By date", rows),
    section(
      "Not counted, because the fees do not name it",
      plan.withoutFee.map((words) => capitalised(`${words}.`)),
    ),
    section("Taken for granted", plan.assumptions),
  ].join("")
}
