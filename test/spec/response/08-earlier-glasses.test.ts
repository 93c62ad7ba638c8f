import { describe, expect, it } from "vitest"
import { asked, drops, halfYearly, lengths, oldGlasses, refracted, withCycloplegia } from "./child.js"

// Natural growth of this girl is 0.98 mm in the two years before treatment: near two dioptres.
const glasses = [oldGlasses("2022-06-15", 0), oldGlasses("2023-06-15", -1)]
const today = refracted(lengths("2024-06-15", 24), { sphere: -1.9, method: "subjective" })
const treatments = [drops(0.05)]

describe("Old prescriptions are a second witness of growth before treatment", () => {
  const later = halfYearly("2024-12-15", [24.11, 24.21, 24.3, 24.39])
  const paceOf = (...visits: Parameters<typeof asked>[0]["visits"][number][]) =>
    asked({ visits, refractionD: null, treatments }).beliefs[0]?.posterior

  it("they narrow what is known of the child's own pace", () => {
    expect(paceOf(...glasses, today)?.sd).toBeLessThan(0.8 * (paceOf(today)?.sd as number))
  })

  it("and glasses that changed fast say a fast child", () => {
    const fast = [oldGlasses("2022-06-15", 1.9), oldGlasses("2023-06-15", 0)]
    expect(paceOf(...fast, today)?.mean).toBeGreaterThan(1.3 * (paceOf(...glasses, today)?.mean as number))
  })

  it("so that the same lengths on drops tell more", () => {
    const [without, with_] = [
      [today, ...later],
      [...glasses, today, ...later],
    ].map((visits) => asked({ visits, refractionD: null, treatments }).finding.likelihoodRatio as number)
    expect(with_).toBeGreaterThan(1.5 * (without as number))
  })
})

describe("They raise the chance of an answer, and the first visit can say by how much", () => {
  const chancesOf = (visits: Parameters<typeof asked>[0]["visits"]) =>
    asked({ visits, refractionD: null, treatments }).chances.map(({ ifItWorks }) => ifItWorks)

  it("at the reviews of the second year", () => {
    const [without, with_] = [chancesOf([today]), chancesOf([...glasses, today])]
    expect(with_).toHaveLength(without.length)
    expect(with_[3]).toBeGreaterThan((without[3] as number) + 0.1)
  })

  it("lengths from before treatment raise it further", () => {
    const measured = [lengths("2022-06-15", 23), lengths("2023-06-15", 23.53), today]
    expect(chancesOf(measured)[3]).toBeGreaterThan(chancesOf([...glasses, today])[3] as number)
  })
})

describe("Under treatment a refraction is shown and kept out of the test, since drops change it more than length", () => {
  const story = (sphere: number) => {
    const visits = [
      ...halfYearly("2022-06-15", [23, 23.27, 23.53, 23.77, 24]),
      refracted(lengths("2025-06-15", 24.2), withCycloplegia(sphere)),
    ]
    return asked({ visits, treatments }).finding.likelihoodRatio
  }

  it("whatever was read a year into treatment, the ratio is the same", () => {
    expect(story(-1)).toBe(story(-4))
  })

  it("on the day it begins it still counts", () => {
    const started = (sphere: number) => {
      const visits = [
        oldGlasses("2023-06-15", -1),
        refracted(lengths("2024-06-15", 24), { sphere, method: "subjective" }),
        lengths("2025-06-15", 24.2),
      ]
      return asked({ visits, refractionD: null, treatments }).finding.likelihoodRatio
    }
    expect(started(-1.5)).not.toBe(started(-2.5))
  })
})
