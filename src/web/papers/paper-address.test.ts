import { describe, expect, it } from "vitest"
import { paperAddress } from "./paper-address.js"

const drops = { kind: "atropine", concentrationPercent: 0.05 } as const
const asked = { language: null, paper: "letter", treatment: drops, months: 12, order: 1, concern: 0 } as const

describe("the address of a paper", () => {
  it("asks only what that paper depends on", () => {
    expect(paperAddress("c", { ...asked, kind: "family" }, "content")).toBe(
      "/api/children/c/documents/family",
    )
    expect(paperAddress("c", { ...asked, kind: "consent" }, "content")).toBe(
      "/api/children/c/documents/consent?treatment=atropine&concentration=0.05",
    )
    expect(paperAddress("c", { ...asked, kind: "order" }, "content")).toBe(
      "/api/children/c/documents/order?order=1",
    )
    expect(paperAddress("c", { ...asked, kind: "adverse-event" }, "content")).toBe(
      "/api/children/c/documents/adverse-event?concern=0",
    )
  })

  it("asks observation as a plan without treatment, and the paper only of a PDF", () => {
    expect(paperAddress("c", { ...asked, kind: "estimate", treatment: null, language: "es" }, "pdf")).toBe(
      "/api/children/c/documents/estimate?language=es&paper=letter&as=pdf&treatment=none&months=12",
    )
  })
})
