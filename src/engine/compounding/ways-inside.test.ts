import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { compoundingOrder } from "./compounding-order.js"
import type { CompoundingRequest } from "./order-request.js"

const usual: CompoundingRequest = { concentrationPercent: 0.01, stockPercent: 1, bottles: 1, volumeMl: 10 }
const outside: CompoundingRequest = { ...usual, stockTolerance: 0.05 }
const ordered = (request: CompoundingRequest) => {
  const order = compoundingOrder(request)
  if (order.kind === "refused") throw new Error("refused")
  return order
}
const way = (request: CompoundingRequest, kind: string) =>
  ordered(request).waysInside.find((found) => found.kind === kind)

describe("an order whose interval leaves the limits", () => {
  it("needs nothing when it does not", () => {
    expect(ordered(usual).waysInside).toEqual([])
  })

  it("is told the smallest batch that one transfer can make", () => {
    expect(ordered(outside).withinLimits).toBe(false)
    expect(way(outside, "larger-volume")).toMatchObject({ totalMl: 50 })
    expect(way(outside, "larger-volume")?.words).toContain("50 mL in one batch (5 bottles)")
  })

  it("is told the strongest of the pharmacy's other stocks that would do", () => {
    const request = { ...outside, otherStockPercents: [2, 1, 0.1, 0.05, 0.005] }
    expect(way(request, "other-stock")).toMatchObject({ stockPercent: 0.1 })
  })

  it("is told of no stock where the pharmacy has none that helps", () => {
    expect(way({ ...outside, otherStockPercents: [2] }, "other-stock")).toBeUndefined()
  })

  it("is told how closely every volume would have to be measured", () => {
    // 7 % allowed, 5 % of it the stock's: sqrt(0.07^2 - 0.05^2) = 4.90 % for two steps of 0.9 sqrt(2) t each.
    expect(way(outside, "closer-measuring")).toMatchObject({ toleranceFraction: 0.027 })
  })

  it("is told how well the stock would have to be known", () => {
    expect(way(outside, "known-stock")).toMatchObject({ stockTolerance: 0.044 })
  })

  it("is told nothing when the stock alone may be further off than the limits allow, but to measure it", () => {
    expect(ordered({ ...usual, stockTolerance: 0.08 }).waysInside.map(({ kind }) => kind)).toEqual([
      "known-stock",
    ])
  })

  it("is told only what holds when it is done", () => {
    const requests = fc.record({
      concentrationPercent: fc.constantFrom(0.01, 0.02, 0.025, 0.05),
      stockPercent: fc.constantFrom(0.5, 1, 2),
      bottles: fc.integer({ min: 1, max: 6 }),
      volumeMl: fc.constantFrom(5, 10),
      transferTolerance: fc.double({ min: 0.02, max: 0.08, noNaN: true }),
      stockTolerance: fc.double({ min: 0, max: 0.1, noNaN: true }),
    })
    let told = 0
    fc.assert(
      fc.property(requests, (request) => {
        const order = compoundingOrder(request)
        if (order.kind === "refused") return
        for (const found of order.waysInside) {
          told++
          const changes: Partial<CompoundingRequest> =
            found.kind === "larger-volume"
              ? { bottles: Math.round(found.totalMl / request.volumeMl) }
              : found.kind === "other-stock"
                ? { stockPercent: found.stockPercent }
                : found.kind === "closer-measuring"
                  ? { transferTolerance: found.toleranceFraction }
                  : { stockTolerance: found.stockTolerance }
          expect(ordered({ ...request, ...changes }).withinLimits).toBe(true)
        }
      }),
      { seed: 5, numRuns: 200 },
    )
    expect(told).toBeGreaterThan(100)
  })
})
