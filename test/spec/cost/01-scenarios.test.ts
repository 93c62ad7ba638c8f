import { readdirSync, readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { type CostPlanAnswer, costPlan } from "../../../src/engine/cost/cost-plan.js"
import { amountTyped } from "../../../src/engine/cost/money.js"
import { paidSoFar } from "../../../src/engine/cost/payments.js"
import type { Coverage } from "../../../src/engine/practice-rules.js"
import { centsOf, type Scenario, scenario } from "./scenario.js"

// The stories themselves are text files, to be read and written by people who do not program.
const folder = new URL("./scenarios/", import.meta.url)
const stories = readdirSync(folder)
  .toSorted()
  .map((name) => scenario(readFileSync(new URL(name, folder), "utf8")))

describe.each(stories.map((story) => [story.title, story] as const))("%s", (_, story) => {
  const answer = costPlan(story.input)
  it.each(story.expected.map((row) => [row.join("  "), row] as const))("%s", (_words, row) => {
    expect(told(row, { answer, story })).toEqual(row)
  })
})

/** The same row, with what the engine says in place of what was expected. */
function told(
  [what = "", ...rest]: readonly string[],
  { answer, story }: { readonly answer: CostPlanAnswer; readonly story: Scenario },
): readonly string[] {
  if (answer.kind === "refused") return ["refused", answer.why]
  const { currency, totals, lines, withoutFee } = answer
  const money = (cents: number) => amountTyped(cents, currency)
  const counted = (kind: string) => String(lines.filter((line) => line.kind === kind).length)
  const paid = () => paidSoFar({ course: story.input.course, currency, today: story.input.today })
  switch (what) {
    case "covered":
      return [what, money(totals.coveredCents)]
    case "uncertain":
      return [what, money(totals.uncertainCents)]
    case "not covered":
      return [what, money(totals.notCoveredCents)]
    case "visits":
      return [what, counted("examination")]
    case "bottles":
      return [what, counted("bottle")]
    case "devices":
      return [what, counted("device")]
    case "no fee for":
      return [what, withoutFee.find((words) => words === rest[0]) ?? withoutFee.join(", ")]
    case "paid so far":
      return [what, money(paid().cents)]
    case "not counted":
      return [what, ...paid().problems.flatMap(({ path, value }) => [path, String(value)])]
    case "line": {
      const [date, title, amount = ""] = rest
      const line = lines.find(
        (one) => one.date === date && one.what === title && one.cents === centsOf(amount, currency),
      )
      return line
        ? [what, line.date, line.what, money(line.cents), COVERAGE_WORDS[line.coverage]]
        : [what, ...lines.filter((one) => one.date === date).map((one) => `${one.what} ${money(one.cents)}`)]
    }
    default:
      throw new Error(`not understood: ${what}`)
  }
}

const COVERAGE_WORDS: Readonly<Record<Coverage, string>> = {
  covered: "covered",
  uncertain: "uncertain",
  "not-covered": "not covered",
}
