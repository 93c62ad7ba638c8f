import { expect, it } from "vitest"
import type { CostLine } from "./cost-plan.js"
import { costRows, rowInWords } from "./cost-rows.js"

const bottle = (date: string, cents = 100): CostLine => ({
  date,
  kind: "bottle",
  what: "bottle of atropine 0.05 %",
  drops: "atropine 0.05 %",
  cents,
  coverage: "not-covered",
  fee: "bottle",
})
const review: CostLine = {
  date: "2025-03-01",
  kind: "examination",
  what: "review",
  cents: 500,
  coverage: "covered",
  fee: "review",
}

it("bottles between two visits are one row, with the sums so far by coverage", () => {
  const lines = [bottle("2025-01-01"), bottle("2025-01-31"), review, bottle("2025-03-02")]
  expect(costRows({ lines })).toMatchObject([
    {
      from: "2025-01-01",
      to: "2025-01-31",
      count: 2,
      cents: 200,
      soFar: { notCoveredCents: 200, coveredCents: 0, uncertainCents: 0 },
    },
    { count: 1, cents: 500, soFar: { notCoveredCents: 200, coveredCents: 500 } },
    { count: 1, cents: 100, soFar: { notCoveredCents: 300, coveredCents: 500 } },
  ])
})

it("a bottle whose fee has changed begins a row of its own", () => {
  const rows = costRows({
    lines: [bottle("2025-12-20"), bottle("2026-01-19", 120), bottle("2026-02-18", 120)],
  })
  expect(rows.map(({ count, cents }) => [count, cents])).toEqual([
    [1, 100],
    [2, 240],
  ])
})

it("several are said as several", () => {
  const [row] = costRows({ lines: [bottle("2025-01-01"), bottle("2025-01-31")] })
  expect(row && rowInWords(row)).toBe("2 bottles of atropine 0.05 %")
  expect(rowInWords({ what: "review", count: 1 })).toBe("review")
})
