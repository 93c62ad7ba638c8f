import { feeScheduleProblems } from "../engine/cost/fee-problems.js"
import type { FeeSchedule } from "../engine/practice-rules.js"
import type { PracticeRecord } from "../record/index.js"
import type { Problem } from "./contract/problem.js"

/** What is wrong with a fee schedule among what the practice has recorded: its other schedules, and payments. */
export async function feesPaperProblems(
  schedule: FeeSchedule,
  {
    record,
    without,
  }: {
    readonly record: PracticeRecord
    /** Ids of the paper it takes the place of, and of itself where it is sent once more. */
    readonly without: readonly (string | null | undefined)[]
  },
): Promise<readonly Problem[]> {
  const papers = await record.papers()
  const left = new Set([...without, ...papers.map(({ supersedes }) => supersedes)])
  const others = papers
    .filter(({ kind, id }) => kind === "fees" && !left.has(id))
    .map(({ body }) => body as FeeSchedule)
  // Every course is read only where no other schedule says yet what families pay in.
  const paidIn = others.length > 0 ? [] : await currenciesPaid(record)
  return feeScheduleProblems({ schedule, others, paidIn })
}

async function currenciesPaid(record: PracticeRecord): Promise<readonly string[]> {
  const children = await record.everyChild()
  const courses = await record.coursesOf(children.map(({ id }) => id))
  const paid = [...courses.values()].flatMap(({ payments }) => payments ?? [])
  return [...new Set(paid.map(({ currency }) => currency))]
}
