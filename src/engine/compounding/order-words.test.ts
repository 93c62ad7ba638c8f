import { describe, expect, it } from "vitest"
import type { BottleOrder } from "../course.js"
import { labelText } from "./label-text.js"
import { orderRemarks } from "./order-remarks.js"
import { isAwaited, orderState } from "./order-state.js"
import { benzalkoniumCarriedOver } from "./preservative.js"
import { stabilityLines } from "./stability.js"

const order: BottleOrder = { date: "2026-03-01", concentrationPercent: 0.05, bottles: 3, volumeMl: 5 }

describe("the state of an order", () => {
  it("goes from ordered to confirmed to received", () => {
    expect(orderState(order)).toBe("ordered")
    expect(orderState({ ...order, confirmed: "2026-03-02" })).toBe("confirmed")
    expect(orderState({ ...order, confirmed: "2026-03-02", received: "2026-03-09" })).toBe("received")
  })

  it("is received even when nobody noted that it was confirmed", () => {
    expect(orderState({ ...order, received: "2026-03-09" })).toBe("received")
  })

  it("stays cancelled, and is then awaited no more", () => {
    const cancelled = { ...order, confirmed: "2026-03-02", cancelled: "2026-03-04" }
    expect(orderState(cancelled)).toBe("cancelled")
    expect([order, cancelled].map(isAwaited)).toEqual([true, false])
  })
})

describe("what is said before an order goes out", () => {
  const running = { from: "2025-01-10", kind: "atropine", concentrationPercent: 0.05 } as const
  const remarks = (course: Parameters<typeof orderRemarks>[0]["course"], concentrationPercent = 0.05) =>
    orderRemarks({ course, concentrationPercent, on: "2026-03-10" })

  it("is nothing for the strength in use", () => {
    expect(remarks({ treatments: [running] })).toEqual([])
  })

  it("is that the strength is another than the one in use", () => {
    expect(remarks({ treatments: [running] }, 0.01)).toEqual([
      "The order is for 0.01 %; the treatment in use is atropine 0.05 %.",
    ])
  })

  it("is that no drops are running once they have ended", () => {
    expect(remarks({ treatments: [{ ...running, to: "2026-03-10" }] })).toEqual([
      "No drops are running or decided on for this child.",
    ])
  })

  it("is nothing for the strength that was decided on and begins later", () => {
    expect(remarks({ treatments: [{ ...running, from: "2026-03-11" }] })).toEqual([])
  })

  it("is what was decided on when the order is for another strength", () => {
    const change = [
      { ...running, to: "2026-04-01" },
      { ...running, from: "2026-04-01", concentrationPercent: 0.025 },
    ]
    expect(remarks({ treatments: change }, 0.025)).toEqual([])
    expect(remarks({ treatments: change }, 0.01)).toEqual([
      "The order is for 0.01 %; the treatment in use is atropine 0.05 %; decided on is atropine 0.025 % from 2026-04-01.",
    ])
  })

  it("is that earlier bottles have not come yet", () => {
    expect(remarks({ treatments: [running], orders: [order, { ...order, received: "2026-03-05" }] })).toEqual(
      ["3 bottles of 0.05 % ordered on 2026-03-01 have not come yet."],
    )
  })
})

describe("the label", () => {
  const plain = {
    concentrationPercent: 0.01,
    volumeMl: 5,
    isPreserved: false,
    daysAfterOpening: 30,
  }

  it("gives the strength both ways, use, preservative, dates and the poison caution", () => {
    expect(labelText(plain)).toEqual([
      "Atropine sulfate eye drops 0.01 % w/v (0.1 mg in 1 mL), 5 mL",
      "One drop in each eye at bedtime. For the eyes only.",
      "Without preservative",
      "Lot ________  Beyond use ________",
      "Opened on ________  Throw away 30 days after opening",
      "Poisonous when swallowed. Keep out of sight and reach of children.",
    ])
  })

  it("names the child, the maker and the poison centre where they are known", () => {
    const named = labelText({
      ...plain,
      isPreserved: true,
      child: { name: "Mira Solberg", born: "2017-03-14" },
      pharmacy: "Harbour Pharmacy",
      contacts: { poisonCentre: "01 234" },
    })
    expect(named).toContain("For Mira Solberg, born 2017-03-14")
    expect(named).toContain("Contains a preservative")
    expect(named.join("\n")).toMatch(/Poison centre: 01 234\nMade by Harbour Pharmacy$/)
  })
})

describe("preservative carried over", () => {
  it("is known only for the usual 1 % product", () => {
    expect(benzalkoniumCarriedOver({ concentrationPercent: 0.01, stockPercent: 0.5 })).toBeNull()
  })

  it("counts as none from 1 in 20 on", () => {
    const counts = [0.05, 0.1].map((concentrationPercent) =>
      benzalkoniumCarriedOver({ concentrationPercent, stockPercent: 1 }),
    )
    expect(counts.map((carried) => carried?.countsAsUnpreserved)).toEqual([true, false])
  })
})

describe("studies of stability", () => {
  const row = { study: "a1", diluent: "saline", result: "within 5%", how_obtained: "abstract" }
  const rows = [
    { ...row, strengths_percent: [0.01] },
    { ...row, study: "b2", strengths_percent: [0.05, 0.1], storage: "5 and 25 C", months: 6 },
  ]

  it("come with diluent, storage, months, strengths and how they were read, the strength ordered first", () => {
    expect(stabilityLines(rows, 0.05)).toEqual([
      "Saline; 5 and 25 C; 6 months: within 5% (0.05, 0.1 %; b2, abstract).",
      "Saline: within 5% (0.01 %; a1, abstract).",
    ])
  })

  it("say so when none is of the strength ordered", () => {
    expect(stabilityLines(rows, 0.025)[0]).toBe("None of the studies read is of 0.025 %.")
    expect(stabilityLines([], 0.025)).toEqual([])
  })
})
