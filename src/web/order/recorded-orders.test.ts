import { beforeAll, describe, expect, it } from "vitest"
import type { BottleOrder } from "../../engine/course.js"
import { inLanguage } from "../../engine/say.js"
import { learnEveryLanguage } from "../../words/index.js"
import { sentence } from "../format.js"
import { orderInWords, stateInWords } from "./recorded-orders.js"

beforeAll(learnEveryLanguage)

const body: BottleOrder = { date: "2026-03-01", concentrationPercent: 0.05, bottles: 1, volumeMl: 2.5 }
const state = (changes: Partial<BottleOrder>, today = "2026-03-05", reason: string | null = null) =>
  sentence(stateInWords({ body: { ...body, ...changes }, reason }, { leadDays: 14, today }))

describe("how far an order has come, in words", () => {
  it("says when it is expected, and by how much it is late", () => {
    expect(state({})).toBe("Not confirmed yet, expected by 15 Mar 2026.")
    expect(state({}, "2026-03-16")).toBe("Not confirmed yet, 1 day late, expected by 15 Mar 2026.")
    expect(state({ confirmed: "2026-03-02" }, "2026-03-17")).toBe(
      "Confirmed on 2 Mar 2026, 2 days late, expected by 15 Mar 2026.",
    )
    expect(state({ received: "2026-03-09" })).toBe("Received on 9 Mar 2026.")
    expect(state({ cancelled: "2026-03-04" }, "2026-03-05", "no drops any more")).toBe(
      "Called off on 4 Mar 2026: no drops any more.",
    )
  })

  it("says the same in Spanish, with its days and decimals", () => {
    inLanguage("es", () => {
      expect(state({}, "2026-03-16")).toBe(
        "Aún sin confirmar, con 1 día de retraso, se esperaba para el 15 mar 2026.",
      )
      expect(state({ confirmed: "2026-03-02" })).toBe(
        "Confirmado el 2 mar 2026, se espera para el 15 mar 2026.",
      )
      expect(orderInWords(body)).toBe("1 frasco de 2,5 mL, atropina al 0,05 %")
    })
  })
})
