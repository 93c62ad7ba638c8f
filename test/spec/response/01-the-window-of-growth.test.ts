import { describe, expect, it } from "vitest"
import { asked, drops, halfYearly, lengths, type Story } from "./child.js"

const windowOf = (story: Story) => {
  const { from, to } = asked(story).growth
  return [from, to]
}

describe("Growth is asked about over the last twelve months", () => {
  it("up to the last length, however long the record is", () => {
    const visits = halfYearly("2022-06-15", [23, 23.27, 23.53, 23.77, 24])
    expect(windowOf({ visits })).toEqual(["2023-06-15", "2024-06-15"])
  })

  it("or over all there is, when the first length is younger than that", () => {
    const visits = [lengths("2024-06-15", 24), lengths("2024-12-15", 24.21)]
    expect(windowOf({ visits })).toEqual(["2024-06-15", "2024-12-15"])
  })

  it("and last year's growth counts, not that of the years before it", () => {
    const fastThenSlow = halfYearly("2022-06-15", [23, 23.4, 23.8, 23.85, 23.9])
    expect(asked({ visits: fastThenSlow }).growth.mmPerYear).toBeCloseTo(0.1, 1)
  })
})

describe("From a visit near twelve months ago, so that the figures are ones that were measured", () => {
  it("such as one of 30 days earlier", () => {
    const visits = [lengths("2022-06-15", 23), lengths("2023-05-16", 23.5), lengths("2024-06-15", 24)]
    expect(windowOf({ visits })[0]).toBe("2023-05-16")
  })

  it("but not one of three months earlier: then the length of twelve months ago is worked out", () => {
    const visits = [lengths("2022-06-15", 23), lengths("2023-03-15", 23.4), lengths("2024-06-15", 24)]
    expect(windowOf({ visits })[0]).toBe("2023-06-15")
  })
})

describe("Or since the last change of treatment, when that is later", () => {
  // Drops begin half a year before the last visit.
  const visits = halfYearly("2023-06-15", [23.53, 23.77, 24, 24.1])

  it("a start half a year ago leaves the growth before it out", () => {
    const answer = asked({ visits, treatments: [drops(0.05, "2024-06-15")] }).growth
    expect([answer.from, answer.to]).toEqual(["2024-06-15", "2024-12-15"])
    expect(answer.mmPerYear).toBeLessThan(asked({ visits }).growth.mmPerYear as number)
  })

  it("so does another strength", () => {
    const treatments = [drops(0.01, "2023-06-15", "2024-06-15"), drops(0.05, "2024-06-15")]
    expect(windowOf({ visits, treatments })[0]).toBe("2024-06-15")
  })

  it("and a stop", () => {
    expect(windowOf({ visits, treatments: [drops(0.05, "2023-06-15", "2024-06-15")] })[0]).toBe("2024-06-15")
  })

  it("a change on the day of the last length changes nothing yet", () => {
    expect(windowOf({ visits, treatments: [drops(0.05, "2024-12-15")] })[0]).toBe("2023-12-15")
  })
})

describe("The day of the question", () => {
  it("leaves later visits out, and says so", () => {
    const visits = halfYearly("2023-06-15", [23.53, 23.77, 24, 24.21])
    const answer = asked({ visits }, "2024-07-01")
    expect(answer.growth.to).toBe("2024-06-15")
    expect(answer.checks).toContainEqual(
      expect.objectContaining({
        kind: "after-as-of",
        path: "visits[3]",
        why: expect.stringMatching(/^1 visit/),
      }),
    )
  })
})
