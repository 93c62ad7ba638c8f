import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { type BottlesQuestion, bottlesInWords, bottlesNeeded } from "./bottles-needed.js"

const twoYears: BottlesQuestion = { volumeMl: 5, eyes: 2, nights: 730, daysAfterOpening: 30 }
const needed = (question: BottlesQuestion) => {
  const answer = bottlesNeeded(question)
  if (answer.kind === "refused") throw new Error(answer.problems.map(({ message }) => message).join("; "))
  return answer
}
const faults = (question: BottlesQuestion) => {
  const answer = bottlesNeeded(question)
  return answer.kind === "refused" ? answer.problems.map(({ path }) => path) : []
}

describe("bottles for a span of nights", () => {
  it("are bound by the days after opening where even large drops outlast them", () => {
    expect(needed(twoYears)).toMatchObject({ binding: "beyond-use", nightsPerBottle: { low: 30, high: 30 } })
  })

  it("are bound by the drops where even small drops are used up first", () => {
    const answer = needed({ ...twoYears, volumeMl: 2.5, daysAfterOpening: 90 })
    expect(answer).toMatchObject({ binding: "drops", nightsByDrops: { low: 19, high: 51 } })
    expect(answer.bottles).toEqual({ low: Math.ceil(730 / 51), high: Math.ceil(730 / 19) })
  })

  it("are bound by either where the size of the drops decides", () => {
    const answer = needed({ ...twoYears, volumeMl: 2.5 })
    expect(answer).toMatchObject({ binding: "either", nightsPerBottle: { low: 19, high: 30 } })
  })

  it("last twice as long for one eye", () => {
    expect(needed({ ...twoYears, eyes: 1 }).nightsByDrops).toEqual({ low: 78, high: 204 })
  })

  it("last longer on a taper, but never beyond their date", () => {
    const answer = needed({ ...twoYears, volumeMl: 2.5, nightsPerWeek: 3 })
    expect(answer.nightsByDrops).toEqual({ low: 46, high: 119 })
    expect(answer.nightsPerBottle).toEqual({ low: 30, high: 30 })
  })

  it("are said with the range and with what decides", () => {
    const question = { ...twoYears, volumeMl: 2.5 }
    expect(bottlesInWords(question, needed(question)).join(" ")).toMatch(
      /25 to 39 bottles of 2.5 mL cover 730 nights.*19 to 51 nights.*large drops end it early/,
    )
  })
})

describe("a question that cannot be answered", () => {
  it("is told every fault at once", () => {
    const question = {
      volumeMl: 0,
      eyes: 3 as 2,
      nights: 0.5,
      daysAfterOpening: 0,
      dropsPerNight: 0,
      nightsPerWeek: 8,
    }
    expect(faults(question)).toEqual([
      "volumeMl",
      "eyes",
      "nights",
      "daysAfterOpening",
      "dropsPerNight",
      "nightsPerWeek",
    ])
  })

  it("is one of a bottle too small for a single night", () => {
    expect(faults({ ...twoYears, volumeMl: 0.1 })).toEqual(["volumeMl"])
  })
})

describe("whatever the bottle", () => {
  const questions = fc.record({
    volumeMl: fc.constantFrom(2.5, 3.5, 5, 10, 15),
    eyes: fc.constantFrom(1 as const, 2 as const),
    nights: fc.integer({ min: 1, max: 2000 }),
    daysAfterOpening: fc.integer({ min: 1, max: 180 }),
  })

  it("the count is enough with the largest drops, and one fewer is not", () => {
    fc.assert(
      fc.property(questions, (question) => {
        const { bottles, nightsPerBottle } = needed(question)
        expect(bottles.high * nightsPerBottle.low).toBeGreaterThanOrEqual(question.nights)
        expect((bottles.high - 1) * nightsPerBottle.low).toBeLessThan(question.nights)
        expect(bottles.low).toBeLessThanOrEqual(bottles.high)
      }),
    )
  })

  it("a longer use after opening never needs more bottles", () => {
    fc.assert(
      fc.property(questions, (question) => {
        const longer = needed({ ...question, daysAfterOpening: question.daysAfterOpening + 1 })
        expect(longer.bottles.high).toBeLessThanOrEqual(needed(question).bottles.high)
      }),
    )
  })
})
