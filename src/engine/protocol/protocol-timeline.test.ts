import { describe, expect, it } from "vitest"
import { opticalProtocol } from "./optical.js"
import type { Protocol } from "./protocol.js"
import { protocolTimeline } from "./protocol-timeline.js"
import { standardProtocol } from "./standard.js"
import { stepDownProtocol } from "./step-down.js"
import { watchfulProtocol } from "./watchful.js"

const dates = (timeline: ReturnType<typeof protocolTimeline>) =>
  timeline.map(({ date, title }) => `${date} ${title}`)
const drops = { kind: "atropine", concentrationPercent: 0.05 } as const

describe("the next two years", () => {
  it("of the standard protocol, begun on the last day of August", () => {
    const timeline = protocolTimeline({ protocol: standardProtocol, start: "2025-08-31", treatment: drops })
    expect(dates(timeline)).toEqual([
      "2025-08-31 baseline",
      "2025-09-30 1-month check",
      "2026-02-28 6-month review",
      "2026-08-31 12-month review",
      "2027-02-28 18-month review",
      "2027-08-31 24-month review",
      "2027-08-31 decision to stop at 24 months",
    ])
  })

  it("of orthokeratology begin with the checks of the first week", () => {
    const timeline = protocolTimeline({
      protocol: opticalProtocol,
      start: "2025-01-10",
      treatment: { kind: "orthokeratology" },
    })
    expect(dates(timeline).slice(0, 5)).toEqual([
      "2025-01-10 baseline",
      "2025-01-11 check after the first night",
      "2025-01-17 1-week check",
      "2025-02-10 1-month check",
      "2025-07-10 6-month review",
    ])
  })

  it("of a child observed only are the half-yearly visits", () => {
    const timeline = protocolTimeline({ protocol: watchfulProtocol, start: "2025-01-10", treatment: null })
    expect(dates(timeline)).toEqual([
      "2025-01-10 baseline",
      "2025-07-10 observation",
      "2026-01-10 observation",
      "2026-07-10 observation",
      "2027-01-10 observation",
    ])
  })
})

it("goes through the stop to the check after it, and tells the window of each step", () => {
  const timeline = protocolTimeline({
    protocol: standardProtocol,
    start: "2025-01-10",
    treatment: drops,
    months: 35,
  })
  expect(timeline).toHaveLength(9)
  expect(timeline.slice(-3)).toMatchObject([
    { date: "2027-01-10", title: "decision to stop at 24 months", kind: "decision" },
    { date: "2027-07-10", title: "check 6 months after the stop", opens: "2027-06-10", closes: "2027-08-09" },
    { date: "2027-07-10", title: "decision on 12 more months", measures: [] },
  ])
})

it("steps down a month apart before the stop", () => {
  const timeline = protocolTimeline({
    protocol: stepDownProtocol,
    start: "2025-01-10",
    treatment: drops,
    months: 31,
  })
  expect(dates(timeline.filter(({ kind }) => kind === "decision"))).toEqual([
    "2027-01-10 step down to 6 nights a week",
    "2027-02-10 step down to 5 nights a week",
    "2027-03-10 step down to 4 nights a week",
    "2027-04-10 step down to 3 nights a week",
    "2027-05-10 step down to 2 nights a week",
    "2027-06-10 step down to 1 night a week",
    "2027-07-10 decision to stop at 30 months",
  ])
})

it("of a protocol without any step ahead is empty", () => {
  const onlyAfterStop: Protocol = {
    ...standardProtocol,
    steps: standardProtocol.steps.filter(({ anchor }) => anchor === "stop"),
  }
  expect(protocolTimeline({ protocol: onlyAfterStop, start: "2025-01-10", treatment: drops })).toEqual([])
})
