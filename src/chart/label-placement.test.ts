import { describe, expect, it } from "vitest"
import { rows, spread, spreadWithin, type Wish } from "./label-placement.js"

/** Labels in all arrangements of a small deterministic sequence; no two agree, many collide. */
const crowds: readonly (readonly Wish[])[] = Array.from({ length: 60 }, (_, seed) =>
  Array.from({ length: 2 + (seed % 6) }, (_, i) => ({
    at: (seed * 37 + i * i * 53) % 100,
    size: 4 + ((seed + i * 7) % 9),
  })),
)

const overlaps = (wishes: readonly Wish[], middles: readonly number[], gap: number) =>
  wishes.some((a, i) =>
    wishes.some((b, k) => {
      const distance = Math.abs((middles[i] as number) - (middles[k] as number))
      return i < k && distance < (a.size + b.size) / 2 + gap - 1e-9
    }),
  )

describe("labels along a line", () => {
  it("stay where they want to be when they do not touch", () => {
    const wishes = [
      { at: 10, size: 8 },
      { at: 40, size: 8 },
    ]
    expect(spread(wishes, { low: 0, high: 100, gap: 2 })).toEqual([10, 40])
  })

  it("share the way when two want the same place", () => {
    const wishes = [
      { at: 50, size: 8 },
      { at: 50, size: 12 },
    ]
    expect(spread(wishes, { low: 0, high: 100 })).toEqual([45, 55])
  })

  it("never overlap", () => {
    const colliding = crowds.filter((wishes) =>
      overlaps(wishes, spread(wishes, { low: 0, high: 120, gap: 2 }), 2),
    )
    expect(colliding).toEqual([])
  })

  it("never leave the room they have when there is room for all", () => {
    const outside = crowds.filter((wishes) => {
      const middles = spread(wishes, { low: 0, high: 120, gap: 2 })
      return wishes.some(({ size }, i) => {
        const middle = middles[i] as number
        return middle - size / 2 < -1e-9 || middle + size / 2 > 120 + 1e-9
      })
    })
    expect(outside).toEqual([])
  })

  it("keep the order of the places they name", () => {
    const wishes = [
      { at: 30, size: 10 },
      { at: 28, size: 10 },
      { at: 31, size: 10 },
    ]
    const [a, b, c] = spread(wishes, { low: 0, high: 100 }) as [number, number, number]
    expect([b < a, a < c]).toEqual([true, true])
  })

  it("are pushed back from the end without running into those before", () => {
    const wishes = [
      { at: 92, size: 10 },
      { at: 99, size: 10 },
    ]
    expect(spread(wishes, { low: 0, high: 100 })).toEqual([85, 95])
  })

  it("are given up together when one would stand too far from its place", () => {
    const wishes = [
      { at: 50, size: 20 },
      { at: 50, size: 20 },
    ]
    expect(spreadWithin(wishes, { low: 0, high: 100, reach: 9 })).toBeNull()
    expect(spreadWithin(wishes, { low: 0, high: 100, reach: 10 })).toEqual([40, 60])
  })
})

describe("rows of stretches", () => {
  it("put a stretch into the first row where nothing is in its way", () => {
    const stretches = [
      { from: 50, to: 60 },
      { from: 0, to: 40 },
      { from: 55, to: 70 },
      { from: 30, to: 45 },
    ]
    expect(rows(stretches, { gap: 2 })).toEqual([0, 0, 1, 1])
  })
})
