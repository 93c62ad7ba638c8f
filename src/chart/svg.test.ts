import { describe, expect, it } from "vitest"
import { decimals, el, polygon, svgText } from "./svg.js"

describe("markup", () => {
  it("writes text that looks like markup as text", () => {
    expect(svgText(el("text", { "data-name": '"<a>"' }, "O'Neil & <b>"))).toBe(
      '<text data-name="&quot;&lt;a&gt;&quot;">O\'Neil &amp; &lt;b&gt;</text>\n',
    )
  })

  it("drops characters that no XML may hold", () => {
    expect(svgText(el("text", {}, "a\u0000\u0008b\ud800"))).toBe("<text>ab</text>\n")
  })

  it("leaves out an attribute that has no value", () => {
    expect(svgText(el("line", { x1: 0, stroke: undefined }))).toBe('<line x1="0"/>\n')
  })

  it("puts one element on a line, indented", () => {
    expect(svgText(el("g", {}, [el("g", {}, [el("line", {})])]))).toBe(
      "<g>\n  <g>\n    <line/>\n  </g>\n</g>\n",
    )
  })
})

describe("coordinates", () => {
  it("have two decimals at most and no minus zero", () => {
    expect([1.005, -0.001, 12, 1 / 3].map(decimals)).toEqual(["1.01", "0", "12", "0.33"])
  })

  it("that are not finite are a fault of ours, with the value named", () => {
    expect(() => decimals(Number.NaN)).toThrow("a coordinate must be a finite number: NaN")
  })

  it("make a path, closed when asked", () => {
    const points = [
      { x: 0, y: 0.126 },
      { x: 5, y: 1 },
    ]
    expect(polygon(points, { closed: true })).toBe("M0,0.13L5,1Z")
    expect(polygon(points, { closed: false })).toBe("M0,0.13L5,1")
  })
})
