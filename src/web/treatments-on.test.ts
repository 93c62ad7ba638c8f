import { describe, expect, it } from "vitest"
import { treatmentsAfter, treatmentsOn } from "./treatments-on.js"

describe("treatments in use on a day", () => {
  const treatments = [
    { from: "2025-01-10", to: "2025-07-10", kind: "atropine", concentrationPercent: 0.01 },
    { from: "2025-07-10", kind: "atropine", concentrationPercent: 0.05 },
  ] as const
  it("change over on the day one ends and the next begins", () => {
    const strengths = ["2025-01-09", "2025-07-09", "2025-07-10"].map((day) =>
      treatmentsOn({ treatments }, day).map(({ concentrationPercent }) => concentrationPercent),
    )
    expect(strengths).toEqual([[], [0.01], [0.05]])
  })
  it("are not those that only begin later", () => {
    const later = (day: string) => treatmentsAfter({ treatments }, day).map(({ from }) => from)
    expect(later("2025-01-09")).toEqual(["2025-01-10", "2025-07-10"])
    expect(later("2025-07-10")).toEqual([])
  })
})
