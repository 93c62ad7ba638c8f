import { describe, expect, it } from "vitest"
import { demoChildren, reported, runningText } from "./child.js"
import { readingGrade, sentencesIn, syllablesIn, wordsIn } from "./reading-level.js"

describe("The reading level is counted by the published formula", () => {
  it("syllables as they are spoken", () => {
    const spoken = {
      eye: 1,
      eyes: 1,
      growth: 1,
      measured: 2,
      treatment: 2,
      exercises: 4,
      children: 2,
      stopped: 1,
      without: 2,
      people: 2,
      little: 2,
      "short-sighted": 3,
      family: 3,
      "child's": 1,
      swallowed: 2,
      centre: 2,
      ambulance: 3,
      dioptre: 3,
      "0.14": 5,
    }
    expect(Object.fromEntries(Object.keys(spoken).map((word) => [word, syllablesIn(word)]))).toEqual(spoken)
  })

  it("sentences end at full stops, not at decimal points", () => {
    expect(sentencesIn("Eyes grew 0.14 mm. Is that slow? Yes: it is.")).toHaveLength(3)
    expect(wordsIn("Eyes grew 0.14 mm.")).toHaveLength(4)
  })

  it("grade by hand: 6 words, 1 sentence, 7 syllables", () => {
    expect(readingGrade(["The cat sat on a table."])).toBeCloseTo(0.39 * 6 + 11.8 * (7 / 6) - 15.59, 10)
  })
})

describe("Every child's page can be read at grade 8 or lower", () => {
  const pages = demoChildren().map(({ name, course }) => ({
    id: course.child.id ?? "",
    pieces: runningText(
      reported({ course, name, familyLink: "https://practice.example/f/x" }, { on: "screen" }),
    ),
  }))

  it.each(pages.map((page) => [page.id, page] as const))("%s", (_, { pieces }) => {
    expect(readingGrade(pieces)).toBeLessThanOrEqual(8)
  })

  it("taken together well below it", () => {
    expect(readingGrade(pages.flatMap(({ pieces }) => pieces))).toBeLessThan(7.5)
  })

  it("holds no word of the trade", () => {
    const all = pages.flatMap(({ pieces }) => pieces).join(" ")
    for (const word of [
      "axial",
      "myopi",
      "cyclopleg",
      "refraction",
      "emmetrop",
      "elongation",
      "likelihood",
      "efficacy",
    ])
      expect(all.toLowerCase()).not.toContain(word)
  })
})
