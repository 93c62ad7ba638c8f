import { describe, it } from "vitest"
import { answerScale, growthScale } from "../../src/chart/index.js"
import { CUTS } from "./figures.js"
import { expectFigure } from "./snapshot.js"

const usual = { mmPerYear: 0.14, low95: 0.05, high95: 0.23, emmetropic: 0.09, natural: 0.29, cuts: CUTS }
const limits = { upper: 9, lower: 1 / 9 }

describe("the growth scale is drawn as it was looked at and accepted", () => {
  const accepted = {
    "growth-scale": usual,
    "growth-scale-fast": { ...usual, mmPerYear: 0.62, low95: 0.4, high95: 0.84 },
    "growth-scale-lines-close": {
      ...usual,
      mmPerYear: 0.05,
      low95: -0.03,
      high95: 0.13,
      emmetropic: 0.03,
      natural: 0.05,
    },
    "growth-scale-lines-reversed": { ...usual, emmetropic: 0.1, natural: 0.09 },
  }
  for (const [name, input] of Object.entries(accepted)) it(name, () => expectFigure(name, growthScale(input)))
})

describe("the answer scale is drawn as it was looked at and accepted", () => {
  const accepted = {
    "answer-scale": { likelihoodRatio: 2.3, ...limits },
    "answer-scale-does-nothing": { likelihoodRatio: 0.2, ...limits },
    "answer-scale-beyond": { likelihoodRatio: 40, ...limits },
    "answer-scale-nothing-measured": { likelihoodRatio: null, ...limits },
  }
  for (const [name, input] of Object.entries(accepted)) it(name, () => expectFigure(name, answerScale(input)))
})
