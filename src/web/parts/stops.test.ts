import { describe, expect, it } from "vitest"
import { nearestStop, stopAfterKey } from "./stops.js"

describe("the reading line", () => {
  const stops = [{ x: 10 }, { x: 50 }, { x: 52 }]
  it("goes to the nearest date", () => {
    expect([-5, 31, 50.9, 51.1, 900].map((x) => nearestStop(stops, x))).toEqual([0, 1, 1, 2, 2])
  })
  it("moves by one with the arrow keys and stays at the ends", () => {
    expect(stopAfterKey("ArrowRight", { at: 1, count: 3 })).toBe(2)
    expect(stopAfterKey("ArrowRight", { at: 2, count: 3 })).toBe(2)
    expect(stopAfterKey("ArrowLeft", { at: 0, count: 3 })).toBe(0)
  })
  it("jumps to the first and the last with Home and End", () => {
    expect(stopAfterKey("Home", { at: 2, count: 3 })).toBe(0)
    expect(stopAfterKey("End", { at: 0, count: 3 })).toBe(2)
  })
  it("leaves other keys to the page", () => {
    expect(stopAfterKey("a", { at: 0, count: 3 })).toBeNull()
  })
})
