import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { compoundingOrder } from "./compounding-order.js"
import type { CompoundingRequest } from "./order-request.js"

const ordered = (request: CompoundingRequest) => {
  const order = compoundingOrder(request)
  if (order.kind === "refused") throw new Error(order.problems.map(({ message }) => message).join("; "))
  return order
}
const faults = (request: CompoundingRequest) => {
  const order = compoundingOrder(request)
  return order.kind === "refused" ? order.problems.map(({ path }) => path) : []
}
const usual: CompoundingRequest = { concentrationPercent: 0.01, stockPercent: 1, bottles: 1, volumeMl: 10 }

describe("an order that one transfer can make", () => {
  const order = ordered({ ...usual, concentrationPercent: 0.05 })

  it("takes the stock by C1 V1 = C2 V2", () => {
    expect(order.steps).toMatchObject([
      { takeMl: 0.5, of: "stock 1 %", addDiluentMl: 9.5, givesPercent: 0.05, discardMl: 0 },
    ])
  })

  it("carries the error of both measured volumes, each with the diluent's share of the mixture", () => {
    const relative = 0.95 * Math.sqrt(2 * 0.03 ** 2)
    expect(order.low95Percent).toBeCloseTo(0.05 * (1 - relative), 12)
    expect(order.high95Percent).toBeCloseTo(0.05 * (1 + relative), 12)
    expect(order.withinLimits).toBe(true)
  })

  it("warns of poison at exactly 5 mg in a bottle", () => {
    expect(order.mgPerBottle).toBe(5)
    expect(order.poisonCaution).toBe(true)
    expect(order.cautions.join(" ")).toContain("5 mg of atropine")
  })
})

describe("an order whose one transfer would be too small to measure", () => {
  it("goes by way of a tenth, and says what is left over", () => {
    expect(ordered(usual).steps).toMatchObject([
      { takeMl: 0.5, of: "stock 1 %", addDiluentMl: 4.5, givesPercent: 0.1, discardMl: 4 },
      { takeMl: 1, of: "step 1, 0.1 %", addDiluentMl: 9, givesPercent: 0.01, discardMl: 0 },
    ])
  })

  it("adds the errors of its steps as squares", () => {
    const relative = Math.sqrt(2 * 2 * (0.9 * 0.03) ** 2)
    expect(ordered(usual).low95Percent).toBeCloseTo(0.01 * (1 - relative), 12)
  })

  it("takes a smaller factor where a tenth would overshoot", () => {
    const { steps } = ordered({ ...usual, concentrationPercent: 0.1, volumeMl: 4 })
    expect(steps.map(({ givesPercent }) => givesPercent)).toEqual([0.2, 0.1])
  })

  it("goes in three steps to a thousandth", () => {
    expect(ordered({ ...usual, concentrationPercent: 0.001 }).steps).toHaveLength(3)
  })

  it("needs one step when smaller volumes can be measured", () => {
    expect(ordered({ ...usual, smallestVolumeMl: 0.1 }).steps).toHaveLength(1)
  })

  it("needs one step when all bottles are made at once", () => {
    const { steps, mgPerBottle } = ordered({ ...usual, bottles: 24, volumeMl: 5 })
    expect(steps).toMatchObject([
      { takeMl: 1.2, of: "stock 1 %", addDiluentMl: 118.8, givesPercent: 0.01, discardMl: 0 },
    ])
    expect(mgPerBottle).toBe(0.5)
  })
})

describe("the tolerance of each measured volume", () => {
  it("stands beside the volume, as its 95 % limits", () => {
    const [step] = ordered({ ...usual, concentrationPercent: 0.05 }).steps
    expect(step).toMatchObject({ takeLow95Ml: 0.485, takeHigh95Ml: 0.515 })
    expect(step).toMatchObject({ diluentLow95Ml: 9.215, diluentHigh95Ml: 9.785 })
  })

  it("is that of the most exact device that measures it", () => {
    const devices = [
      {
        name: "syringe",
        smallestVolumeMl: 0.5,
        largestVolumeMl: 1,
        graduationMl: 0.01,
        toleranceFraction: 0.02,
      },
      { name: "cylinder", smallestVolumeMl: 1, graduationMl: 0.1, toleranceFraction: 0.01 },
    ]
    const order = ordered({ ...usual, concentrationPercent: 0.05, devices })
    expect(order.steps[0]).toMatchObject({ takeWith: "syringe", diluentWith: "cylinder" })
    const relative = 0.95 * Math.sqrt(0.02 ** 2 + 0.01 ** 2)
    expect(order.high95Percent).toBeCloseTo(0.05 * (1 + relative), 12)
  })

  it("takes volumes to the graduation of the device", () => {
    const devices = [{ smallestVolumeMl: 0.5, graduationMl: 0.2, toleranceFraction: 0.01 }]
    expect(ordered({ ...usual, concentrationPercent: 0.05, devices }).steps[0]?.takeMl).toBe(0.6)
  })

  it("is joined by the stock's own, as squares", () => {
    const relative = Math.sqrt(0.05 ** 2 + 2 * (0.95 * 0.03) ** 2)
    const order = ordered({ ...usual, concentrationPercent: 0.05, stockTolerance: 0.05 })
    expect(order.high95Percent).toBeCloseTo(0.05 * (1 + relative), 12)
  })

  it("leaves the stock's own out of undiluted stock only when it is not stated", () => {
    const order = ordered({ ...usual, concentrationPercent: 1, stockTolerance: 0.05 })
    expect([order.low95Percent, order.high95Percent]).toEqual([0.95, 1.05])
  })

  it("says that the stock's own is left out while none is stated", () => {
    const saysSo = ({ cautions }: { cautions: readonly string[] }) => /stock's own/.test(cautions.join(" "))
    expect(saysSo(ordered(usual))).toBe(true)
    expect(saysSo(ordered({ ...usual, stockTolerance: 0.01 }))).toBe(false)
  })
})

describe("the limits", () => {
  it("are broken by a device that errs by 6 %", () => {
    expect(ordered({ ...usual, transferTolerance: 0.06 }).withinLimits).toBe(false)
  })

  it("can be those of another pharmacopoeia", () => {
    const limits = { lowPercentOfLabel: 99, highPercentOfLabel: 101, source: "test" }
    const order = ordered({ ...usual, limits })
    expect(order.withinLimits).toBe(false)
    expect(order.limitsPercent.low).toBeCloseTo(0.0099, 12)
    expect(order.limitsPercent.source).toBe("test")
  })

  it("hold when stock is dispensed undiluted", () => {
    const order = ordered({ ...usual, concentrationPercent: 1 })
    expect(order.steps[0]).toMatchObject({ takeMl: 10, addDiluentMl: 0 })
    expect([order.low95Percent, order.high95Percent]).toEqual([1, 1])
  })

  it("are judged by the volumes as read off, not by the strength wished for", () => {
    const order = ordered({ ...usual, concentrationPercent: 0.0555 })
    expect(order.steps[0]?.takeMl).toBe(0.56)
    expect(order.finalPercent).toBeCloseTo(0.056, 12)
  })
})

describe("an order that cannot be made", () => {
  it("asks for more than the stock holds", () => {
    expect(faults({ ...usual, concentrationPercent: 2 })).toEqual(["concentrationPercent"])
  })

  it("is told every fault at once", () => {
    const request = { concentrationPercent: -1, stockPercent: Number.NaN, bottles: 1.5, volumeMl: 0 }
    expect(faults({ ...request, smallestVolumeMl: Number.POSITIVE_INFINITY, transferTolerance: 1 })).toEqual([
      "concentrationPercent",
      "stockPercent",
      "bottles",
      "volumeMl",
      "smallestVolumeMl",
      "transferTolerance",
    ])
  })

  it.each([0, Number.NaN, Number.POSITIVE_INFINITY, 101])("has a stock of %f %%", (stockPercent) => {
    expect(faults({ ...usual, stockPercent })).toContain("stockPercent")
  })

  it("is larger than what any device measures", () => {
    const devices = [
      {
        name: "syringe",
        smallestVolumeMl: 0.5,
        largestVolumeMl: 5,
        graduationMl: 0.01,
        toleranceFraction: 0.02,
      },
    ]
    expect(faults({ ...usual, devices })).toEqual(["devices"])
  })

  it("names every fault of a device by its place", () => {
    const devices = [
      { smallestVolumeMl: 0, graduationMl: 0.01, toleranceFraction: 0.02 },
      { smallestVolumeMl: 1, largestVolumeMl: 0.5, graduationMl: -1, toleranceFraction: 1 },
    ]
    expect(faults({ ...usual, devices, graduationMl: 0, stockTolerance: -0.1 })).toEqual([
      "graduationMl",
      "stockTolerance",
      "devices[0].smallestVolumeMl",
      "devices[1].largestVolumeMl",
      "devices[1].graduationMl",
      "devices[1].toleranceFraction",
    ])
  })

  it("is so small that no diluent can be measured", () => {
    expect(faults({ ...usual, concentrationPercent: 0.96, volumeMl: 5 })).toEqual(["volumeMl"])
    expect(faults({ ...usual, volumeMl: 0.8 })).toEqual(["volumeMl"])
  })
})

describe("every order that is made", () => {
  const requests = fc.record({
    concentrationPercent: fc.double({ min: 0.001, max: 1, noNaN: true }),
    stockPercent: fc.constantFrom(0.5, 1, 2),
    bottles: fc.integer({ min: 1, max: 30 }),
    volumeMl: fc.constantFrom(2.5, 3.5, 5, 10, 15),
    smallestVolumeMl: fc.constantFrom(0.1, 0.2, 0.5, 1),
  })
  const everyOrder = (holds: (order: ReturnType<typeof ordered>, request: CompoundingRequest) => void) =>
    fc.assert(
      fc.property(requests, (request) => {
        const order = compoundingOrder(request)
        if (order.kind === "order") holds(order, request)
      }),
      { seed: 3, numRuns: 2000 },
    )

  it("measures nothing smaller than the device allows", () => {
    everyOrder(({ steps }, { smallestVolumeMl = 0 }) => {
      for (const { takeMl, addDiluentMl } of steps) {
        expect(takeMl).toBeGreaterThanOrEqual(smallestVolumeMl - 1e-9)
        if (addDiluentMl !== 0) expect(addDiluentMl).toBeGreaterThanOrEqual(smallestVolumeMl - 1e-9)
      }
    })
  })

  it("fills the bottles exactly", () => {
    everyOrder(({ steps }, { bottles, volumeMl }) => {
      const last = steps.at(-1)!
      expect(last.takeMl + last.addDiluentMl).toBeCloseTo(bottles * volumeMl, 9)
    })
  })

  it("makes enough of each step for the next one", () => {
    everyOrder(({ steps }) => {
      for (const { discardMl } of steps) expect(discardMl).toBeGreaterThanOrEqual(0)
    })
  })

  it("agrees with its back-calculation to one part in a thousand million", () => {
    everyOrder(({ finalPercent, checkPercent }) => {
      expect(Math.abs(checkPercent / finalPercent - 1)).toBeLessThan(1e-9)
    })
  })

  it("misses the strength wished for by no more than the graduation of the last transfers", () => {
    everyOrder(({ steps, finalPercent }, { concentrationPercent }) => {
      const graduation = steps.reduce((sum, { takeMl }) => sum + 0.01 / takeMl, 0)
      expect(Math.abs(finalPercent / concentrationPercent - 1)).toBeLessThan(graduation)
    })
  })
})
