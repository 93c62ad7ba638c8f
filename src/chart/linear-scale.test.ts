import { describe, expect, it } from "vitest"
import { linearScale } from "./linear-scale.js"

describe("a linear scale", () => {
  it("maps the ends of the domain to the ends of the range, upside down as well", () => {
    const y = linearScale([22, 26], [300, 100])
    expect([y(22), y(24), y(26)]).toEqual([300, 200, 100])
  })

  it("goes on beyond its ends in a straight line", () => {
    expect(linearScale([0, 10], [0, 100])(12)).toBe(120)
  })

  it("names round values inside the domain", () => {
    expect(linearScale([22.4, 25.1], [0, 1]).ticks(3)).toEqual([23, 24, 25])
    expect(linearScale([0.37, 0.62], [0, 1]).ticks(5)).toEqual([0.4, 0.45, 0.5, 0.55, 0.6])
  })
})
