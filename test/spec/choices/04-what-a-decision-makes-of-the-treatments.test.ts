import { describe, expect, it } from "vitest"
import {
  type DecisionRequest,
  decisionPlan,
  type RecordedTreatment,
} from "../../../src/engine/choices/decision-plan.js"
import type { Treatment } from "../../../src/engine/course.js"
import { treatmentName } from "../../../src/engine/treatment-name.js"
import { drops, TODAY } from "./child.js"

const lenses: Treatment = { from: "2025-12-15", kind: "orthokeratology" }
const weak = { kind: "atropine" as const, concentrationPercent: 0.01 }

function planned(request: Partial<DecisionRequest>, ...inUse: readonly Treatment[]) {
  const recorded = inUse.map((treatment, index): RecordedTreatment => ({ id: `t${index}`, treatment }))
  const asked: DecisionRequest = { kind: "stop", treatments: [], from: TODAY, ends: [], ...request }
  const plan = decisionPlan(asked, recorded)
  if ("problems" in plan) return plan.problems.map(({ path, allowed }) => `${path}: ${allowed}`)
  return {
    ends: plan.ends.map(({ treatment }) => treatmentName(treatment)),
    starts: plan.starts.map(
      (start) =>
        `${treatmentName(start)} from ${start.from}${start.nightsPerWeek ? `, ${start.nightsPerWeek} nights` : ""}`,
    ),
  }
}

describe("A decision says what ends and what begins, on one day", () => {
  it("start: the treatment begins", () => {
    expect(planned({ kind: "start", treatments: [weak] })).toEqual({
      ends: [],
      starts: ["atropine 0.01 % from 2026-06-15"],
    })
  })
  it("change of strength: the drops end, the others begin", () => {
    expect(planned({ kind: "change-strength", treatments: [weak] }, drops(0.05), lenses)).toEqual({
      ends: ["atropine 0.05 %"],
      starts: ["atropine 0.01 % from 2026-06-15"],
    })
  })
  it("switch: one treatment in place of another", () => {
    expect(planned({ kind: "switch", treatments: [weak] }, lenses)).toEqual({
      ends: ["orthokeratology"],
      starts: ["atropine 0.01 % from 2026-06-15"],
    })
  })
  it("add: the old one goes on", () => {
    expect(planned({ kind: "add", treatments: [weak] }, lenses)).toEqual({
      ends: [],
      starts: ["atropine 0.01 % from 2026-06-15"],
    })
  })
  it("taper: the same drops on fewer nights", () => {
    expect(planned({ kind: "taper", nightsPerWeek: 4 }, drops(0.05))).toEqual({
      ends: ["atropine 0.05 %"],
      starts: ["atropine 0.05 % from 2026-06-15, 4 nights"],
    })
  })
  it("restart: after a stop", () => {
    expect(planned({ kind: "restart", treatments: [weak] }, drops(0.05, { to: "2026-01-15" }))).toEqual({
      ends: [],
      starts: ["atropine 0.01 % from 2026-06-15"],
    })
  })
  it("discharge: everything in use ends", () => {
    expect(planned({ kind: "discharge" }, drops(0.05), lenses)).toEqual({
      ends: ["atropine 0.05 %", "orthokeratology"],
      starts: [],
    })
  })
  it.each(["continue", "refer", "decline"] as const)("%s: nothing ends and nothing begins", (kind) => {
    expect(planned({ kind }, drops(0.05))).toEqual({ ends: [], starts: [] })
  })
})

describe("A decision that does not fit is refused with its reason", () => {
  it.each<[string, Partial<DecisionRequest>, readonly Treatment[], readonly string[]]>([
    [
      "a start beside what is in use",
      { kind: "start", treatments: [weak] },
      [lenses],
      ["kind: add, switch or change of strength, since orthokeratology is in use"],
    ],
    [
      "a restart of what never was",
      { kind: "restart", treatments: [weak] },
      [],
      ["kind: start: nothing was given before"],
    ],
    [
      "an addition to nothing",
      { kind: "add", treatments: [weak] },
      [],
      ["kind: start: nothing is in use that something could be added to"],
    ],
    ["a stop of nothing", {}, [], ["kind: a decision that fits: a treatment in use would be needed"]],
    [
      "a taper of lenses",
      { kind: "taper", nightsPerWeek: 3 },
      [lenses],
      ["kind: a decision that fits: drops in use would be needed"],
    ],
    [
      "a taper to every night",
      { kind: "taper", nightsPerWeek: 7 },
      [drops(0.05)],
      ["nightsPerWeek: a whole number from 1 to 6 nights of the week"],
    ],
    [
      "the same strength again",
      { kind: "change-strength", treatments: [weak] },
      [drops(0.01)],
      ["treatments[0]: another than the atropine 0.01 % in use"],
    ],
    [
      "a stop of one of two without saying which",
      {},
      [drops(0.05), lenses],
      ["ends: at least one of what is in use: atropine 0.05 %, orthokeratology"],
    ],
    [
      "a discharge over a treatment that is planned",
      { kind: "discharge" },
      [drops(0.05, { from: "2026-09-01" })],
      ["kind: a decision that keeps what is planned, or atropine 0.05 % from 2026-09-01 withdrawn first"],
    ],
  ])("%s", (_, request, inUse, faults) => {
    expect(planned(request, ...inUse)).toEqual(faults)
  })
})
