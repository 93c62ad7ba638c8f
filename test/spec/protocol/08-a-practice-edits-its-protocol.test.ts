import { describe, expect, it } from "vitest"
import type { Protocol } from "../../../src/engine/protocol/protocol.js"
import { protocolProblems } from "../../../src/engine/protocol/protocol-problems.js"
import { standardProtocol } from "../../../src/engine/protocol/standard.js"
import { child, drops, fullVisit } from "./child.js"

/** The standard protocol as JSON, with one step changed. */
function edited(index: number, change: Record<string, unknown>): Record<string, unknown> {
  const copy = JSON.parse(JSON.stringify(standardProtocol)) as { steps: Record<string, unknown>[] }
  copy.steps[index] = { ...copy.steps[index], ...change }
  return copy as unknown as Record<string, unknown>
}
const faults = (value: unknown) => protocolProblems(value).map(({ path, value: found }) => [path, found])

describe("The standard protocol", () => {
  it("is itself without fault, also as JSON", () => {
    expect(protocolProblems(standardProtocol)).toEqual([])
    expect(protocolProblems(JSON.parse(JSON.stringify(standardProtocol)))).toEqual([])
  })

  it("says of itself that it is common practice without a source", () => {
    expect(standardProtocol.source).toBe("common practice, no source")
  })
})

describe("A practice may change a copy", () => {
  it("a review after 4 months is due after 4 months", () => {
    const copy = edited(2, { offsetMonths: 4, title: "4-month review" }) as unknown as Protocol
    expect(protocolProblems(copy)).toEqual([])
    const then = child({ treatments: [drops("2025-01-10", 0.05)] }, copy).on("2025-01-10")
    expect(then.duty("4-month review").due).toBe("2025-05-10")
  })

  it("a window that reaches back before the start does not take the baseline for the check", () => {
    const copy = edited(1, { windowDaysBefore: 60 }) as unknown as Protocol
    const story = { treatments: [drops("2025-01-10", 0.05)], visits: [fullVisit("2025-01-05")] }
    expect(child(story, copy).on("2025-01-12").state("1-month check")).toBe("open")
  })

  it("a copy without steps for a restart uses those of a first course", () => {
    const steps = standardProtocol.steps.filter(({ anchor }) => anchor !== "restart")
    const treatments = [drops("2025-01-10", 0.05, "2027-01-10"), drops("2028-01-10", 0.05)]
    const then = child({ treatments }, { ...standardProtocol, steps }).on("2028-01-10")
    expect(then.duty("24-month review").due).toBe("2030-01-10")
  })
})

describe("A copy with a fault is refused, every fault at once, with its path, value and what is allowed", () => {
  it("a step before its anchor", () => {
    expect(protocolProblems(edited(2, { offsetMonths: -6 }))).toEqual([
      {
        path: "steps[2].offsetMonths",
        value: -6,
        allowed: "a whole number of months from 0 to 240",
        message: "steps[2].offsetMonths must be a whole number of months from 0 to 240; it is -6",
      },
    ])
  })

  it.each([
    ["half a month", { offsetMonths: 0.5 }, "offsetMonths", 0.5],
    ["a window that ends before it opens", { windowDaysBefore: -1 }, "windowDaysBefore", -1],
    ["a window given as text", { windowDaysAfter: "30" }, "windowDaysAfter", "30"],
    ["an anchor nobody knows", { anchor: "birthday" }, "anchor", "birthday"],
    ["a kind nobody knows", { kind: "party" }, "kind", "party"],
    [
      "a measure nobody knows",
      { measures: ["axial-length", "shoe-size"] },
      "measures",
      ["axial-length", "shoe-size"],
    ],
    ["something in force that nobody knows", { inForce: ["weather"] }, "inForce", ["weather"]],
    ["a title left empty", { title: " " }, "title", " "],
    ["an id used before", { id: "baseline" }, "id", "baseline"],
    ["a restart that is neither yes nor no", { restartsOnChange: "yes" }, "restartsOnChange", "yes"],
    ["an unknown field", { color: "red" }, "color", "red"],
    ["an examination that measures nothing", { measures: [], measuresOnAtropine: [] }, "measures", []],
    [
      "a step counted from the last visit without an interval",
      { anchor: "last-visit-on-treatment", offsetMonths: 0 },
      "offsetMonths",
      0,
    ],
    ["a step after the start called before it", { anchor: "before-start" }, "offsetMonths", 6],
  ])("%s", (_, change, field, value) => {
    expect(faults(edited(2, change))).toEqual([[`steps[2].${field}`, value]])
  })

  it("a decision that does not say what it decides, measures something and restarts", () => {
    const change = { kind: "decision", restartsOnChange: true }
    expect(faults(edited(2, change)).map(([path]) => path)).toEqual([
      "steps[2].decides",
      "steps[2].measures",
      "steps[2].restartsOnChange",
    ])
  })

  it("a decision without a fixed day", () => {
    const change = { kind: "decision", decides: "stop", measures: [], anchor: "last-visit-on-treatment" }
    expect(faults(edited(2, change))).toEqual([["steps[2].anchor", "last-visit-on-treatment"]])
  })

  it("several faults in several steps", () => {
    const twice = { ...edited(2, { offsetMonths: -1 }), title: "", steps: [] as unknown[] }
    expect(faults(twice)).toEqual([
      ["title", ""],
      ["steps", []],
    ])
    expect(faults({ ...standardProtocol, steps: [1, { id: "x" }] }).length).toBeGreaterThan(5)
  })

  it.each([null, 7, "protocol", []])("%j is no protocol at all", (value) => {
    expect(faults(value)).toEqual([["", value]])
  })
})
