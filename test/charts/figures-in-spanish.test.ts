import { describe, expect, it } from "vitest"
import { comfortFigure } from "../../src/chart/comfort-figure.js"
import { coverageStrip } from "../../src/chart/coverage-strip.js"
import { answerScale, growthScale } from "../../src/chart/index.js"
import type { Course, EyeExamination } from "../../src/engine/course.js"
import { comfortCourse } from "../../src/engine/safety/comfort-course.js"
import { inLanguage, learn } from "../../src/engine/say.js"
import { spanish } from "../../src/words/es/index.js"
import { CUTS } from "./figures.js"
import { overlapping, textBoxes } from "./texts.js"

learn("es", spanish)

const rates = { mmPerYear: 0.14, low95: 0.05, high95: 0.23, emmetropic: 0.09, natural: 0.29, cuts: CUTS }
const limits = { upper: 9, lower: 1 / 9 }

// An invented child: nobody's measurements.
const eye = (photopic: number, dioptres: number, nearLogMAR: number): EyeExamination => ({
  pupil: { photopic },
  accommodation: { dioptres, method: "push-up" },
  acuity: { nearLogMAR },
})
const course: Course = {
  lengthwise: 1,
  child: { born: "2016-05-02", sex: "female" },
  visits: [
    { date: "2025-01-10", right: eye(3.8, 12.5, 0), left: eye(3.9, 12, 0.02) },
    { date: "2025-07-10", right: eye(4.6, 11, 0.02), left: eye(4.5, 10.5, 0.04) },
  ],
  treatments: [{ kind: "atropine", concentrationPercent: 0.05, from: "2025-01-10" }],
}
const nights = [
  { from: "2025-01-12", to: "2025-02-11", nights: 31, state: "covered" },
  { from: "2025-02-12", to: "2025-03-01", nights: 18, state: "not-covered" },
  { from: "2025-03-02", to: "2025-08-31", nights: 183, state: "not-prescribed" },
  { from: "2025-09-01", to: "2025-12-31", nights: 122, state: "not-recorded" },
] as const
const strip = {
  nights,
  bottles: [
    { date: "2025-01-12", isOpeningRecorded: true },
    { date: "2025-02-02", isOpeningRecorded: false },
  ],
  missed: [{ from: "2025-01-13", to: "2025-01-20", nights: 1 }],
  proportion: 0.63,
}

/** By the least width at which a page draws it. */
const figures: readonly (readonly [name: string, width: number, draw: (width: number) => string])[] = [
  ["the growth scale", 340, (width) => growthScale(rates, { width })],
  ["the answer scale", 340, (width) => answerScale({ likelihoodRatio: 2.3, ...limits }, { width })],
  [
    "the answer scale at a limit",
    340,
    (width) => answerScale({ likelihoodRatio: 0.05, ...limits }, { width }),
  ],
  ["the strip of covered nights", 880, (width) => coverageStrip(strip, { width })],
  ["the narrow strip of covered nights", 480, (width) => coverageStrip(strip, { width })],
  [
    "the comfort figure",
    640,
    (width) => comfortFigure(comfortCourse({ course, today: "2025-12-01" }), { width }) ?? "",
  ],
]

describe("the small figures in Spanish", () => {
  it.each(figures)("%s writes no text over another and cuts none off", (_, width, draw) => {
    const boxes = textBoxes(inLanguage("es", () => draw(width)))
    expect(boxes.length).toBeGreaterThan(2)
    expect(overlapping(boxes)).toEqual([])
    expect(boxes.filter(({ left, right }) => left < -1 || right > width + 1)).toEqual([])
  })

  it("say their odds and shares with the decimal comma", () => {
    inLanguage("es", () => {
      expect(answerScale({ likelihoodRatio: 2.3, ...limits })).toContain(
        "Las longitudes hasta ahora: funciona 2,3 : 1. Se da una respuesta a partir de funciona 9 : 1 o no hace nada 9 : 1.",
      )
      expect(growthScale(rates)).toContain("Crecimiento de 0,14 mm por año (95 %: 0,05 a 0,23)")
    })
  })

  it("say the nights in whole sentences", () => {
    expect(inLanguage("es", () => coverageStrip(strip))).toContain(
      "Del 12 ene 2025 al 31 dic 2025. 63 % de las noches tuvieron un frasco vigente. 18 noches sin él: 12 feb 2025 a 1 mar 2025. Noches olvidadas comunicadas: 1 del 13 ene 2025 al 20 ene 2025.",
    )
  })
})
