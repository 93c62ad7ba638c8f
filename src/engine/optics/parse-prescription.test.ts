import { describe, expect, it } from "vitest"
import { parsePrescription } from "./parse-prescription.js"

describe("a prescription is read", () => {
  it.each([
    ["-2.25 -0.50 x 180", -2.25, -0.5, 180],
    ["-2.25/-0.50x180", -2.25, -0.5, 180],
    ["-2.25 / -0.50 / 180", -2.25, -0.5, 180],
    ["-2.25-0.50x180", -2.25, -0.5, 180],
    ["-2.25 -0.50 180", -2.25, -0.5, 180],
    ["- 2.25 - 0.50 X 005", -2.25, -0.5, 5],
    ["+1.00 DS", 1, 0, 180],
    ["-3.00", -3, 0, 180],
    ["-3.00 sph", -3, 0, 180],
    ["-.75", -0.75, 0, 180],
    ["plano", 0, 0, 180],
    ["Pl", 0, 0, 180],
    ["0.00", 0, 0, 180],
    ["pl -0.50 x 90", 0, -0.5, 90],
    ["plano/-0.50@90", 0, -0.5, 90],
    ["-1.00 D -0.75 DC axis 12", -1, -0.75, 12],
    ["\u22122,25 \u22120,50 \u00d7 180\u00b0", -2.25, -0.5, 180],
    ["\u20132.25, \u20130.50 @ 45", -2.25, -0.5, 45],
    ["-2,25,-0,50x10", -2.25, -0.5, 10],
    ["-4.00 +1.00 x 90", -4, 1, 90],
    ["-4.00 -1.00 x 0", -4, -1, 180],
    ["-4.00 -0.00", -4, 0, 180],
    ["-4.00 0.00 x 30", -4, 0, 180],
    ["-30", -30, 0, 180],
    ["+30.00 -15 x 1", 30, -15, 1],
  ])("%s", (text, sphere, cylinder, axis) => {
    expect(parsePrescription(text)).toEqual({ refraction: { sphere, cylinder, axis } })
  })
})

describe("a prescription is refused with every fault", () => {
  it.each([
    [
      "-2.25 -0.50 x 190",
      "axis",
      "190",
      'axis must be a whole degree from 1 to 180, or 0 for 180, not "190"',
    ],
    [
      "-2.25 -0.50 x 12.5",
      "axis",
      "12.5",
      'axis must be a whole degree from 1 to 180, or 0 for 180, not "12.5"',
    ],
    ["-2.25 -0.50 x -5", "axis", "-5", 'axis must be a whole degree from 1 to 180, or 0 for 180, not "-5"'],
    [
      "-2.25 -0.50",
      "axis",
      null,
      "axis is missing: an axis from 1 to 180 after the cylinder -0.50 is needed",
    ],
    [
      "-2.25 -0.50 x",
      "axis",
      null,
      "axis is missing: an axis from 1 to 180 after the cylinder -0.50 is needed",
    ],
    ["-2.25 x 90", "cylinder", null, "cylinder is missing: a cylinder before the axis 90 is needed"],
    ["2.25", "sphere", "2.25", 'sphere must be a power with its sign from -30 to +30 D, not "2.25"'],
    ["-225", "sphere", "-225", 'sphere must be a power with its sign from -30 to +30 D, not "-225"'],
    [
      "-2.25 0.50 x 9",
      "cylinder",
      "0.50",
      'cylinder must be a power with its sign from -15 to +15 D, not "0.50"',
    ],
  ])("%s", (text, path, value, message) => {
    const answer = parsePrescription(text)
    expect(answer).toMatchObject({ problems: [{ path, value, message }] })
  })

  it.each(["", "  ", "abc", "-2.25.5", "--2", "-2.25 -0.50 x 180 90", "-2.25 -0.50 x 180 D", "x 180", "1e3"])(
    "%j is not a prescription",
    (text) => {
      expect(parsePrescription(text)).toMatchObject({ problems: [{ path: "prescription", value: text }] })
    },
  )

  it("junk of any length is refused at once, and not repeated in full", () => {
    const answer = parsePrescription(`-1${" ".repeat(1_000_000)}!`)
    expect(answer).toMatchObject({ problems: [{ path: "prescription", value: `-1${" ".repeat(78)}` }] })
  })

  it("all at once, each under the path of the caller", () => {
    const answer = parsePrescription("-40 -20 x 200", "visits[0].right")
    const problems = "problems" in answer ? answer.problems : []
    const paths = ["visits[0].right.sphere", "visits[0].right.cylinder", "visits[0].right.axis"]
    expect(problems.map((problem) => problem.path)).toEqual(paths)
    for (const [i, path] of paths.entries()) expect(problems[i]!.message).toContain(`${path} must be`)
  })
})
