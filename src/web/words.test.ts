import { describe, expect, it } from "vitest"
import type { Finding, GrowthVerdict } from "../engine/assessment.js"
import {
  certaintyInWords,
  dutyTiming,
  earliestAnswerSentence,
  findingSentence,
  growthLine,
  growthSentence,
} from "./words.js"

const growth: GrowthVerdict = {
  state: "slowed-growth",
  probabilities: { "near-normal": 0.02, "slowed-growth": 0.964, "as-untreated": 0.016, faster: 0 },
  mmPerYear: 0.138,
  low95: 0.05,
  high95: 0.23,
  naturalMmPerYear: 0.29,
  emmetropicMmPerYear: 0.09,
  from: "2025-09-08",
  to: "2026-09-08",
  reasons: [],
}

describe("the growth state", () => {
  it("is said with both lines it lies between", () => {
    expect(growthSentence(growth, "female")).toBe(
      "0.14 mm per year over 12 months; an untreated myopic girl of this age grows 0.29, an emmetropic one 0.09.",
    )
  })
  it("leaves out a line that is not known", () => {
    const { naturalMmPerYear: _, ...emmetropicOnly } = growth
    expect(growthSentence(emmetropicOnly, "male")).toBe(
      "0.14 mm per year over 12 months; an emmetropic one 0.09.",
    )
  })
  it("has no sentence without a figure", () => {
    expect(
      growthSentence({ state: "unclear", probabilities: null, mmPerYear: null, reasons: [] }, "male"),
    ).toBeNull()
  })
  it("says its certainty, and none for an unclear one", () => {
    expect(certaintyInWords(growth)).toBe("certainty 96 %")
    expect(certaintyInWords({ ...growth, state: "unclear" })).toBeNull()
    const sure = { "near-normal": 0, "slowed-growth": 1, "as-untreated": 0, faster: 0 }
    expect(certaintyInWords({ ...growth, probabilities: sure })).toBe("certainty over 99 %")
  })
  it("fits on one line of a list", () => {
    expect(growthLine({ growth })).toBe("Slowed growth, 0.14 mm per year")
  })
})

const finding: Finding = {
  state: "cannot-tell-yet",
  treatment: "atropine 0.05 %",
  likelihoodRatio: 2.3,
  lean: null,
  upper: 9,
  lower: 1 / 9,
  earliestAnswer: null,
  reasons: [],
}

describe("the answer about the treatment", () => {
  it("says which side the figures are on, and by how much", () => {
    expect(findingSentence(finding)).toBe(
      "The lengths are 2.3 : 1 likelier if atropine 0.05 % works as in the trials than if it does nothing.",
    )
    expect(findingSentence({ ...finding, likelihoodRatio: 0.25 })).toBe(
      "The lengths are 4 : 1 likelier if atropine 0.05 % does nothing than if it works as in the trials.",
    )
  })
  it("agrees with a treatment that is several", () => {
    expect(findingSentence({ ...finding, treatment: "lenslet spectacles" })).toBe(
      "The lengths are 2.3 : 1 likelier if lenslet spectacles work as in the trials than if they do nothing.",
    )
  })
  it("takes no side when the figures take none", () => {
    expect(findingSentence({ ...finding, likelihoodRatio: 1.01 })).toContain("fit both alike, 1 : 1")
  })
  it("does not promise an answer that no review is likely to bring", () => {
    expect(earliestAnswerSentence(finding)).toContain("may stay open")
    expect(earliestAnswerSentence({ ...finding, earliestAnswer: "2027-09-08" })).toBe(
      "An answer is at least as likely as not by 8 Sep 2027.",
    )
  })
  it("says nothing of a coming answer once there is one", () => {
    expect(earliestAnswerSentence({ ...finding, state: "slowed" })).toBeNull()
  })
})

describe("a duty", () => {
  const duty = {
    kind: "examination",
    step: "1-month check",
    needs: [],
    opens: "2026-10-24",
    due: "2026-11-06",
    closes: "2026-11-20",
  }
  it("is late in words, counted from the day it was due", () => {
    expect(dutyTiming({ ...duty, state: "overdue" }, "2026-11-25")).toBe("19 days late, was due 6 Nov 2026")
  })
  it("is one day late, not one days", () => {
    expect(dutyTiming({ due: "2026-11-24", state: "overdue" }, "2026-11-25")).toBe(
      "1 day late, was due 24 Nov 2026",
    )
  })
  it("says its window while it is open", () => {
    expect(dutyTiming({ ...duty, state: "open" }, "2026-11-01")).toBe(
      "due 6 Nov 2026, open until 20 Nov 2026",
    )
  })
  it("says its day alone when that is the end of the window too", () => {
    expect(dutyTiming({ ...duty, closes: duty.due, state: "open" }, "2026-11-01")).toBe("due 6 Nov 2026")
  })
})
