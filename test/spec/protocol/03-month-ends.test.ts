import { describe, expect, it } from "vitest"
import { child, drops } from "./child.js"

describe("Months are counted on the calendar", () => {
  const dueDates = (start: string) =>
    Object.fromEntries(
      child({ treatments: [drops(start, 0.01)] })
        .on(start)
        .duties.filter(({ kind }) => kind === "examination")
        .map(({ step, due }) => [step, due]),
    )

  it("a start on 31 August has its 6-month review on the last day of February", () => {
    expect(dueDates("2025-08-31")["6-month review"]).toBe("2026-02-28")
  })

  it("which is the 29th in a leap year", () => {
    expect(dueDates("2023-08-31")["6-month review"]).toBe("2024-02-29")
  })

  it("and its 12-month review on 31 August again: a short month on the way shortens nothing after it", () => {
    expect(dueDates("2025-08-31")["12-month review"]).toBe("2026-08-31")
  })

  it("a start on 31 January has its 1-month check on 28 February", () => {
    expect(dueDates("2025-01-31")["1-month check"]).toBe("2025-02-28")
  })

  it("a start on 29 February has its 12-month review on 28 February", () => {
    expect(dueDates("2024-02-29")["12-month review"]).toBe("2025-02-28")
  })
})
