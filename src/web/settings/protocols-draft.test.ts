import { describe, expect, it } from "vitest"
import { shippedProtocols } from "../../engine/protocol/shipped.js"
import { standardProtocol } from "../../engine/protocol/standard.js"
import {
  asKind,
  draftFaults,
  draftOf,
  newStep,
  nextVersion,
  ownId,
  protocolOfDraft,
} from "./protocols-draft.js"

const draft = draftOf(standardProtocol)
const withStep = (index: number, change: object) => ({
  ...draft,
  steps: draft.steps.map((step, place) => (place === index ? { ...step, ...change } : step)),
})

it.each(shippedProtocols.map((protocol) => [protocol.id, protocol]))(
  "%s comes back from its draft as it was",
  (_id, protocol) => {
    expect(protocolOfDraft(draftOf(protocol))).toEqual(JSON.parse(JSON.stringify(protocol)))
  },
)

describe("faults while typing", () => {
  it("are none in what ships", () => {
    expect(draftFaults(draft).count).toBe(0)
  })

  it.each([
    ["", "months"],
    ["-6", "before its anchor"],
    ["1.5", "a month and a half"],
    ["six", "a word"],
  ])("%j months: %s", (offsetMonths) => {
    const faults = draftFaults(withStep(2, { offsetMonths }))
    expect(faults.at("steps[2].offsetMonths")).toBe("must be a whole number of months from 0 to 240")
    expect([faults.inStep(2), faults.inStep(1)]).toEqual([1, 0])
  })

  it("of the spans stand at the spans", () => {
    expect(draftFaults({ ...draft, longestPauseDays: "x" }).at("longestPauseDays")).toMatch(
      /whole number of days/,
    )
  })
})

describe("a step", () => {
  it("that is new is without fault once it has a title", () => {
    const step = newStep(draft.steps)
    expect(draftFaults({ ...draft, steps: [...draft.steps, step] }).count).toBe(1)
    expect(draftFaults({ ...draft, steps: [...draft.steps, { ...step, title: "check" }] }).count).toBe(0)
  })

  it("made a decision and an examination again keeps nothing that does not belong to it", () => {
    const decision = asKind(draft.steps[2]!, "decision")
    expect(draftFaults(withStep(2, decision)).count).toBe(0)
    const back = { ...asKind(decision, "examination"), measures: ["axial-length" as const] }
    expect(
      draftFaults({ ...draft, steps: draft.steps.map((one, at) => (at === 2 ? back : one)) }).count,
    ).toBe(0)
  })

  it("never gets an id that another has", () => {
    const first = newStep(draft.steps)
    expect(newStep([...draft.steps.slice(1), first]).id).not.toBe(first.id)
  })
})

it("a copy beside the others has an id of its own", () => {
  expect(ownId("Our protocol, 2026", [])).toBe("own-our-protocol-2026")
  expect(ownId("Our protocol, 2026", ["own-our-protocol-2026"])).toBe("own-our-protocol-2026-2")
})

it("a version is counted on", () => {
  expect(["1", "9", "practice-3", "spring"].map(nextVersion)).toEqual(["2", "10", "practice-4", "spring-2"])
})
