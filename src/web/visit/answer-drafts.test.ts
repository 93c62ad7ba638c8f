import { describe, expect, it } from "vitest"
import { type AnswerDraft, EMPTY_ANSWER, readAnswers } from "./answer-drafts.js"

const read = (question: string, draft: Partial<AnswerDraft>) =>
  readAnswers({ [question]: { ...EMPTY_ANSWER, ...draft } })

describe("answers as typed", () => {
  it("are none where nothing was touched", () => {
    expect(read("curtain", {})).toEqual({ answers: [], faults: [] })
  })

  it("hold the note that was typed, without blanks around it", () => {
    expect(read("flashes", { answer: "yes", note: " since Monday " }).answers).toEqual([
      { question: "flashes", answer: "yes", note: "since Monday" },
    ])
  })

  it("keep what was left out on purpose apart from what was not asked", () => {
    expect(read("fundus-examined", { answer: "not-done" }).answers).toEqual([
      { question: "fundus-examined", answer: "not-done" },
    ])
  })

  it.each([
    ["0", { answer: "no", value: 0 }],
    ["1,5", { answer: "yes", value: 1.5 }],
    ["-", { answer: "not-done" }],
    ["–", { answer: "not-done" }],
  ])("by value alone: %j", (value, expected) => {
    expect(read("missed-drops", { value }).answers).toEqual([{ question: "missed-drops", ...expected }])
  })

  it("hold no value when the answer is no", () => {
    expect(read("prematurity", { answer: "no", value: "34" }).answers).toEqual([
      { question: "prematurity", answer: "no" },
    ])
  })

  it.each(["8", "two", "-1"])("a value that cannot be is told at its question: %s", (value) => {
    expect(read("missed-drops", { value })).toEqual({
      answers: [],
      faults: [
        {
          question: "missed-drops",
          message: `must be a number from 0 to 7, in nights a week, not ${value}`,
        },
      ],
    })
  })

  it("stand in the order of the room, whatever was answered first", () => {
    const { answers } = readAnswers({
      "fundus-examined": { ...EMPTY_ANSWER, answer: "yes" },
      flashes: { ...EMPTY_ANSWER, answer: "no" },
    })
    expect(answers.map(({ question }) => question)).toEqual(["flashes", "fundus-examined"])
  })
})
