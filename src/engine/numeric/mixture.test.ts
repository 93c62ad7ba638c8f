import { describe, expect, it } from "vitest"
import { condensed, type Mixture, mixtureCdf, mixtureMean, mixtureQuantile, mixtureSd } from "./mixture.js"

const one: Mixture = { weights: [1], means: [24], sds: [0.1] }
const apart: Mixture = { weights: [0.3, 0.7], means: [-2, 1], sds: [0.5, 0.01] }
const skewed: Mixture = { weights: [0.999, 0.001], means: [0, 50], sds: [1, 1] }

describe("a mixture of normal distributions", () => {
  it("of one part is that normal distribution", () => {
    expect(mixtureMean(one)).toBe(24)
    expect(mixtureSd(one)).toBeCloseTo(0.1, 12)
    expect(mixtureQuantile(one, 0.975)).toBeCloseTo(24 + 0.1 * 1.959963984540054, 9)
  })

  it("has the mean of its parts by weight", () => expect(mixtureMean(apart)).toBeCloseTo(0.1, 12))

  it("has the variance within its parts and between them", () => {
    const within = 0.3 * 0.25 + 0.7 * 0.0001
    const between = 0.3 * 2.1 ** 2 + 0.7 * 0.9 ** 2
    expect(mixtureSd(apart) ** 2).toBeCloseTo(within + between, 12)
  })

  it.each([one, apart, skewed])("has as its quantile at p the value below which p lies", (mixture) => {
    for (const p of [0.001, 0.025, 0.05, 0.25, 0.3, 0.5, 0.75, 0.95, 0.975, 0.9985]) {
      expect(Math.abs(mixtureCdf(mixture, mixtureQuantile(mixture, p)) - p)).toBeLessThan(1e-8)
    }
  })

  it("has rising quantiles, also across a gap between its parts", () => {
    const at = [0.1, 0.29, 0.31, 0.5, 0.9].map((p) => mixtureQuantile(apart, p))
    expect(at).toEqual(at.toSorted((a, b) => a - b))
    expect([(at[1] as number) < -1, (at[2] as number) > 0.9]).toEqual([true, true])
  })

  it("without spread is its mean", () => {
    expect(mixtureQuantile({ weights: [1], means: [24], sds: [0] }, 0.9)).toBe(24)
  })
})

describe("a condensed mixture", () => {
  // Pace nodes of a child with little data: many parts, close together, and a skew.
  const nodes = Array.from({ length: 31 }, (_, i) => (i - 15) / 3)
  const many: Mixture = {
    weights: nodes.map(
      (z) => Math.exp((-z * z) / 2) / nodes.reduce((sum, x) => sum + Math.exp((-x * x) / 2), 0),
    ),
    means: nodes.map((z) => 24 + 0.4 * Math.exp(0.31 * z)),
    sds: nodes.map((z) => 0.5 + 0.02 * z),
  }

  it("has far fewer parts", () => expect(condensed(many).weights.length).toBeLessThan(31 * 0.8))
  it("keeps mean and SD", () => {
    expect(mixtureMean(condensed(many))).toBeCloseTo(mixtureMean(many), 12)
    expect(mixtureSd(condensed(many))).toBeCloseTo(mixtureSd(many), 10)
  })
  it("moves no quantile by two thousandths of the SD", () => {
    for (const p of [0.005, 0.025, 0.05, 0.25, 0.5, 0.75, 0.95, 0.975, 0.995]) {
      const moved = Math.abs(mixtureQuantile(condensed(many), p) - mixtureQuantile(many, p))
      expect(moved / mixtureSd(many)).toBeLessThan(2e-3)
    }
  })
  it("leaves parts that lie apart as they are", () => {
    expect(condensed(apart)).toEqual(apart)
  })
})
