import { describe, expect, it } from "vitest"
import { windowed } from "./frame.js"

interface Row {
  readonly age: number
  readonly mm: number
}

const between = (a: Row, b: Row, share: number): Row => ({
  age: a.age + (b.age - a.age) * share,
  mm: a.mm + (b.mm - a.mm) * share,
})
const curve: readonly Row[] = [
  { age: 6, mm: 22 },
  { age: 8, mm: 23 },
  { age: 10, mm: 24 },
]

describe("a curve in a window", () => {
  it("reaches both edges by interpolation and never passes them", () => {
    expect(windowed(curve, { window: [7, 9], between })).toEqual([
      { age: 7, mm: 22.5 },
      { age: 8, mm: 23 },
      { age: 9, mm: 23.5 },
    ])
  })

  it("crosses a window that lies between two of its rows", () => {
    expect(windowed(curve, { window: [6.5, 7.5], between }).map(({ age }) => age)).toEqual([6.5, 7.5])
  })

  it("keeps to its own ends inside a wider window", () => {
    expect(windowed(curve, { window: [0, 18], between })).toEqual(curve)
  })

  it("can be cut by its length instead of its age", () => {
    expect(windowed(curve, { window: [23.5, 30], between, key: ({ mm }) => mm })).toEqual([
      { age: 9, mm: 23.5 },
      { age: 10, mm: 24 },
    ])
  })
})
