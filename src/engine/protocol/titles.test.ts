import { beforeAll, describe, expect, it } from "vitest"
import { spanish } from "../../words/es/index.js"
import { inLanguage, learn } from "../say.js"
import { shippedProtocols } from "./shipped.js"
import { protocolSource, protocolTitle, stepTitle, titleAfterChange } from "./titles.js"

beforeAll(() => learn("es", spanish))

const steps = shippedProtocols.flatMap((protocol) => protocol.steps)

describe("titles", () => {
  it("that ship read in English as they are written", () => {
    expect(steps.map(stepTitle)).toEqual(steps.map(({ title }) => title))
    expect(shippedProtocols.map(protocolSource)).toEqual(shippedProtocols.map(({ source }) => source))
  })
  it("that ship are all said in Spanish", () => {
    inLanguage("es", () => {
      expect(steps.filter((step) => stepTitle(step) === step.title)).toEqual([])
      expect(shippedProtocols.filter((protocol) => protocolTitle(protocol) === protocol.title)).toEqual([])
      expect(shippedProtocols.filter((protocol) => protocolSource(protocol) === protocol.source)).toEqual([])
    })
  })
  it("of a practice stay as written, braces and all", () => {
    inLanguage("es", () => {
      expect(stepTitle({ title: "look {again}, Mr O'Neil" })).toBe("look {again}, Mr O'Neil")
      expect(stepTitle({ title: "06-month review" })).toBe("06-month review")
    })
  })
  it("of a practice that differ from one that ships by their figure are said as well", () => {
    expect(inLanguage("es", () => stepTitle({ title: "9-month review" }))).toBe("revisión de los 9 meses")
    expect(inLanguage("es", () => stepTitle({ title: "step down to 1 night a week" }))).toContain("1 noche ")
  })
  it("after a change name the eye", () => {
    const check = { title: "1-month check" }
    expect(titleAfterChange(check, "left")).toBe("1-month check after the change of strength (left eye)")
    expect(inLanguage("es", () => titleAfterChange(check, "left"))).toMatch(/^control .*ojo izquierdo\)$/)
  })
})
