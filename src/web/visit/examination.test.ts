import { describe, expect, it } from "vitest"
import type { Visit } from "../../engine/course.js"
import { readDraft } from "./examination.js"
import { draftOf, EMPTY_EYE, emptyDraft, isEmpty, USUAL_INSTRUMENTS } from "./visit-draft.js"

const empty = emptyDraft("2026-09-08", USUAL_INSTRUMENTS)

describe("a visit as typed", () => {
  it("becomes the examination of each eye, with how it was measured", () => {
    const draft = {
      ...empty,
      device: " A ",
      cycloplegic: true,
      right: { ...EMPTY_EYE, length: "24.03 24.01", refraction: "-2.00 -0.50 x 175", acuityFar: "20/25" },
      symptoms: { "light-sensitivity": 1 } as const,
    }
    expect(readDraft(draft)).toEqual({
      faults: [],
      answerFaults: [],
      visit: {
        date: "2026-09-08",
        right: {
          axialLength: { mm: 24.02, readings: 2, method: "optical-biometry", device: "A" },
          refraction: { sphere: -2, cylinder: -0.5, axis: 175, cycloplegic: true, method: "autorefraction" },
          acuity: { distanceLogMAR: 0.1 },
        },
        symptoms: [{ kind: "light-sensitivity", grade: 1 }],
      },
    })
  })

  it("leaves out a field that cannot be read, and says so there", () => {
    const { visit, faults } = readDraft({
      ...empty,
      left: { ...EMPTY_EYE, length: "23.9", pupil: "wide", refraction: "-2.00 -0.50" },
    })
    expect(visit.left).toEqual({ axialLength: { mm: 23.9, readings: 1, method: "optical-biometry" } })
    expect(faults.map(({ eye, field }) => `${eye} ${field}`)).toEqual(["left pupil", "left refraction"])
  })

  it("says nothing of cycloplegia that was not answered", () => {
    const { visit } = readDraft({ ...empty, right: { ...EMPTY_EYE, refraction: "-1.00" } })
    expect(visit.right?.refraction).toEqual({ sphere: -1, method: "autorefraction" })
  })
})

describe("the radii of the cornea", () => {
  const read = (cornea: string) => {
    const { visit, faults } = readDraft({ ...empty, right: { ...EMPTY_EYE, cornea } })
    return faults[0]?.message ?? visit.right?.corneaRadius
  }
  it.each(["7.85 7.70", "7,70 7,85", "7.70/7.85", " 7.85; 7.7 "])(
    "%j: the larger one is the flat one",
    (text) => {
      expect(read(text)).toEqual({ flat: 7.85, steep: 7.7 })
    },
  )
  it.each(["7.85", "7.85 7.70 7.6", "43.50 D"])("%j is refused with an example", (text) => {
    expect(read(text)).toBe("must be two radii in mm, flat and steep, such as 7.85 7.70")
  })
})

describe("correcting a stored visit", () => {
  const stored: Visit = {
    date: "2026-09-08",
    right: {
      axialLength: { mm: 24.022, readings: 5, method: "optical-biometry", device: "A" },
      refraction: { sphere: -2.12, cylinder: -0.37, axis: 8, cycloplegic: true, method: "autorefraction" },
      corneaRadius: { flat: 7.85, steep: 7.7 },
      pupil: { photopic: 4.1, mesopic: 5.9 },
      intraocularPressure: { mmHg: 14 },
    },
    symptoms: [{ kind: "stinging", grade: 0 }],
    answers: [
      { question: "flashes", answer: "no" },
      { question: "heart-condition", answer: "yes", note: "a hole, closed" },
      { question: "missed-drops", answer: "yes", value: 1.5 },
      { question: "outdoor-hours", answer: "not-done" },
    ],
  }
  it("opened and saved unchanged, stays as it was", () => {
    expect(readDraft(draftOf(stored, USUAL_INSTRUMENTS), stored)).toEqual({
      visit: stored,
      faults: [],
      answerFaults: [],
    })
  })
  it("carries over an answer to a question that this form does not know", () => {
    const asked: Visit = { ...stored, answers: [{ question: "of-another-version", answer: "yes" }] }
    expect(readDraft(draftOf(asked, USUAL_INSTRUMENTS), asked).visit.answers).toEqual(asked.answers)
  })
  it("keeps everything else when a length is corrected", () => {
    const draft = draftOf(stored, USUAL_INSTRUMENTS)
    const { visit } = readDraft({ ...draft, right: { ...draft.right, length: "24.1" } }, stored)
    expect(visit.right?.axialLength).toMatchObject({ mm: 24.1, readings: 1 })
    expect(visit.right?.corneaRadius).toEqual({ flat: 7.85, steep: 7.7 })
    expect(visit.right?.pupil?.mesopic).toBe(5.9)
  })
  it("takes out the radii and the dim pupil that were emptied", () => {
    const draft = draftOf(stored, USUAL_INSTRUMENTS)
    const { visit } = readDraft({ ...draft, right: { ...draft.right, cornea: "", pupilDim: "" } }, stored)
    expect(visit.right?.corneaRadius).toBeUndefined()
    expect(visit.right?.pupil).toEqual({ photopic: 4.1 })
  })
})

describe("an empty draft", () => {
  it("is empty until something is typed", () => {
    expect(isEmpty(empty)).toBe(true)
    expect(isEmpty({ ...empty, right: { ...EMPTY_EYE, pupil: "4" } })).toBe(false)
    expect(isEmpty({ ...empty, symptoms: { stinging: 0 } })).toBe(false)
    expect(isEmpty({ ...empty, answers: { curtain: { answer: "no", value: "", note: "" } } })).toBe(false)
  })
})
