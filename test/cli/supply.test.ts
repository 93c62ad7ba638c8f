import { describe, expect, it } from "vitest"
import { commandLine, json } from "./fake-io.js"

const course = {
  lengthwise: 1,
  child: { born: "2017-03-14", sex: "female" },
  visits: [],
  treatments: [{ from: "2026-01-01", kind: "atropine", concentrationPercent: 0.05 }],
  supplies: [
    {
      dispensed: "2025-12-29",
      opened: "2026-01-01",
      beyondUse: "2026-01-31",
      concentrationPercent: 0.05,
      lot: "K1",
    },
    { dispensed: "2026-03-01", beyondUse: "2026-03-31", concentrationPercent: 0.05 },
  ],
  missedNights: [{ from: "2026-03-01", to: "2026-03-31", nights: 10 }],
}
const supply = (options: readonly string[], file: unknown = course) =>
  commandLine(["supply", "c.json", "--as-of", "2026-04-11", ...options], { files: { "c.json": file } })

describe("lengthwise supply", () => {
  it("tells the proportion of days covered with its definition, as JSON", async () => {
    const answer = json(await supply(["--json"]))
    expect(answer).toMatchObject({
      asOf: "2026-04-11",
      daysPrescribed: 100,
      daysCovered: 62,
      proportionOfDaysCovered: 0.62,
      proportionWithDrop: expect.closeTo(0.52, 9),
      nightsReportedMissed: 10,
      isPoor: true,
      gaps: [
        { from: "2026-02-01", to: "2026-02-28", nights: 28 },
        { from: "2026-04-01", to: "2026-04-10", nights: 10 },
      ],
      nextBottles: [
        { treatment: "atropine 0.05 %", state: "overdue", due: "2026-03-31", orderBy: "2026-03-17" },
      ],
    })
    expect(answer.definition).toMatch(/^days with an in-date opened bottle/)
    expect(answer.faults.map(({ kind }: { kind: string }) => kind)).toEqual([
      "past-date",
      "opening-not-recorded",
    ])
  })

  it("reads the same aloud", async () => {
    const { code, stdout } = await supply([])
    expect(code).toBe(0)
    expect(stdout).toMatch(/62 of 100 nights from 1 January 2026 to 10 April 2026 had a bottle in date: 62 %/)
    expect(stdout).toMatch(/1 February 2026 to 28 February 2026: 28 nights without a bottle in date/)
    expect(stdout).toMatch(/overdue since 31 March 2026/)
    expect(stdout).toMatch(/must not be used any more/)
    expect(stdout).toMatch(/Proportion of days covered: days with an in-date opened bottle/)
  })

  it("has nothing to count without drops", async () => {
    const { treatments: _, ...untreated } = course
    expect((await supply([], untreated)).stdout).toMatch(/^No drops were prescribed/)
    expect(json(await supply(["--json"], untreated)).proportionOfDaysCovered).toBeNull()
  })

  it("refuses a bottle opened before it was handed out, and a lot of two strengths", async () => {
    const lot = { lot: "K7", dispensed: "2026-01-01" }
    const supplies = [
      { dispensed: "2026-01-05", opened: "2026-01-01", concentrationPercent: 0.05 },
      { ...lot, concentrationPercent: 0.05 },
      { ...lot, concentrationPercent: 0.01 },
    ]
    const result = await supply(["--json"], { ...course, supplies })
    expect(result.code).toBe(1)
    expect(json(result).problems.map(({ path }: { path: string }) => path)).toEqual([
      "supplies[0].opened",
      "supplies[2].lot",
    ])
  })
})
