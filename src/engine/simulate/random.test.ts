import { describe, expect, it } from "vitest"
import { randomFrom } from "./random.js"

const COUNT = 40_000
const draw = (seed: number, pick: (random: ReturnType<typeof randomFrom>) => number, count = COUNT) => {
  const random = randomFrom(seed)
  return Array.from({ length: count }, () => pick(random))
}
const mean = (values: readonly number[]) => values.reduce((sum, x) => sum + x, 0) / values.length
/** Five standard errors: a right generator fails once in two million seeds, and the seeds here are fixed. */
const SIGMAS = 5

describe("seeded random numbers", () => {
  it("are the same again from the same seed", () => {
    expect(draw(7, (r) => r.uniform(), 20)).toEqual(draw(7, (r) => r.uniform(), 20))
  })

  it.each([
    [0, 1],
    [1, 2],
    [7, 8],
  ])("of the neighbouring seeds %i and %i have nothing in common", (a, b) => {
    const [x, y] = [draw(a, (r) => r.normal()), draw(b, (r) => r.normal())]
    expect(x.slice(0, 5)).not.toEqual(y.slice(0, 5))
    expect(Math.abs(mean(x.map((value, i) => value * (y[i] as number))))).toBeLessThan(
      SIGMAS / Math.sqrt(COUNT),
    )
  })

  it.each([0, 1, 2026])("are uniform between 0 and 1, seed %i", (seed) => {
    const values = draw(seed, (r) => r.uniform())
    expect(Math.min(...values.slice(0, 10_000))).toBeGreaterThan(0)
    expect(Math.max(...values.slice(0, 10_000))).toBeLessThan(1)
    const cells = new Array<number>(100).fill(0)
    for (const u of values) cells[Math.floor(u * 100)] = (cells[Math.floor(u * 100)] as number) + 1
    const chiSquared = cells.reduce((sum, n) => sum + (n - COUNT / 100) ** 2 / (COUNT / 100), 0)
    expect(Math.abs(chiSquared - 99)).toBeLessThan(SIGMAS * Math.sqrt(2 * 99))
  })

  it.each([0, 1, 2026])("are standard normal, seed %i", (seed) => {
    const values = draw(seed, (r) => r.normal())
    const power = (k: number) => mean(values.map((x) => x ** k))
    const error = SIGMAS / Math.sqrt(COUNT)
    expect(Math.abs(power(1))).toBeLessThan(error)
    expect(Math.abs(power(2) - 1)).toBeLessThan(error * Math.sqrt(2))
    expect(Math.abs(power(3))).toBeLessThan(error * Math.sqrt(15))
    expect(Math.abs(power(4) - 3)).toBeLessThan(error * Math.sqrt(96))
  })

  it("do not depend on the one before", () => {
    for (const lag of [1, 2, 3]) {
      const values = draw(3, (r) => r.normal())
      const products = values.slice(lag).map((x, i) => x * (values[i] as number))
      expect(Math.abs(mean(products))).toBeLessThan(SIGMAS / Math.sqrt(COUNT))
    }
  })

  it("pick every one of a list about equally often", () => {
    const picked = draw(5, (r) => r.pick([0, 1, 2]), 3000)
    for (const one of [0, 1, 2]) {
      expect(Math.abs(picked.filter((x) => x === one).length - 1000)).toBeLessThan(
        SIGMAS * Math.sqrt(3000 * (2 / 9)),
      )
    }
  })
})
