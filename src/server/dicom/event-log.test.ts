import { describe, expect, it } from "vitest"
import { eventLog, type NewEvent } from "./event-log.js"
import { perMinute } from "./per-minute.js"

function logAt(startMs = 0) {
  let nowMs = startMs
  const lines: string[] = []
  const log = eventLog({ nowMs: () => nowMs, write: (line) => lines.push(line) })
  const pass = (ms: number) => {
    nowMs += ms
  }
  const page = (search = "", only?: "received" | "refused") =>
    log.page({ search, only, page: 1, words: ({ outcome }) => `words of ${outcome}` })
  return { log, lines, pass, page }
}

const refused: NewEvent = {
  title: "BIOMETER",
  address: "10.0.0.7",
  what: "",
  outcome: "refused",
  refusal: "unknown-called-title",
  why: "EYES",
}
const recorded: NewEvent = { ...refused, outcome: "recorded", refusal: null, why: null, what: "1.2" }

describe("the log of the receiver", () => {
  it("counts the same refusal in a row, and lists every object", () => {
    const { log, page, pass } = logAt()
    for (let i = 0; i < 3; i++) {
      log.add(refused)
      pass(1000)
    }
    log.add(recorded)
    log.add(recorded)
    expect(page().events.map(({ outcome, times }) => [outcome, times])).toEqual([
      ["recorded", 1],
      ["recorded", 1],
      ["refused", 3],
    ])
    expect(log.counts()).toEqual({ received: 2, refused: 3 })
  })

  it("is found by title, address, reason and words", () => {
    const { log, page } = logAt()
    log.add(refused)
    log.add({ ...refused, title: "OTHER", address: "10.0.0.8" })
    log.add(recorded)
    expect(page("biometer").total).toBe(2)
    expect(page("10.0.0.8").total).toBe(1)
    expect(page("words refused").total).toBe(2)
    expect(page("biometer", "refused").total).toBe(1)
    expect(page("nobody").total).toBe(0)
  })

  it("never grows beyond its bound, whoever floods it", () => {
    const { log, lines, page } = logAt()
    for (let i = 0; i < 5000; i++) {
      log.add({ ...refused, title: `T${i}` })
      log.hear({ title: `T${i}`, address: "10.0.0.7" }, "association")
    }
    expect(page().total).toBe(500)
    expect(log.heard()).toHaveLength(100)
    expect(log.heard()[0]?.title).toBe("T4999")
    expect(lines).toHaveLength(61)
    expect(lines.at(-1)).toMatch(/left out/)
  })

  it("writes lines that hold nothing of an object", () => {
    const { log, lines } = logAt()
    log.add({ ...refused, refusal: "not-taken", why: "born 2017-09-05", what: "1.2" })
    expect(lines).toEqual(['instruments: not-taken 1.2 of "BIOMETER" at 10.0.0.7'])
  })

  it("remembers when an instrument last asked whether we are there", () => {
    const { log, pass } = logAt(Date.UTC(2026, 0, 2))
    log.hear(refused, "echo")
    pass(60_000)
    log.hear(refused, "object")
    expect(log.heard()).toEqual([
      {
        title: "BIOMETER",
        address: "10.0.0.7",
        lastAt: "2026-01-02T00:01:00.000Z",
        lastEchoAt: "2026-01-02T00:00:00.000Z",
        lastObjectAt: "2026-01-02T00:01:00.000Z",
      },
    ])
  })
})

describe("a count by minute", () => {
  it("is full at its limit and free again in the next minute, for each name", () => {
    let nowMs = 0
    const isInTime = perMinute({ most: 2, nowMs: () => nowMs })
    expect([isInTime("A"), isInTime("A"), isInTime("A"), isInTime("B")]).toEqual([true, true, false, true])
    nowMs = 60_000
    expect(isInTime("A")).toBe(true)
  })
})
