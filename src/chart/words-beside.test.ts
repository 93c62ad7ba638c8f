import { describe, expect, it } from "vitest"
import { frame as frameOf } from "./frame.js"
import { TEXT, textWidth } from "./text-size.js"
import { wordsBeside } from "./words-beside.js"

const frame = frameOf({ width: 400, domain: [6, 12], todayAge: 9, kind: "plain" })
const text = "check after the stop"
const width = textWidth(text, { size: TEXT.label })

describe("words beside a bar", () => {
  it("stand right of it where they fit", () => {
    const { x, anchor } = wordsBeside(text, { bar: { from: 100, to: 110 }, frame })
    expect({ x, anchor }).toEqual({ x: 116, anchor: "start" })
  })

  it("stand left of it when the right has no room", () => {
    const { x, anchor } = wordsBeside(text, { bar: { from: 350, to: 360 }, frame })
    expect({ x, anchor }).toEqual({ x: 344, anchor: "end" })
  })

  it("are cut with three dots where neither side has room, and then fit", () => {
    const long = `${text} and ${text} and ${text}`
    const { text: cut, anchor } = wordsBeside(long, { bar: { from: 180, to: 190 }, frame })
    expect(cut).toMatch(/^check after the stop.*…$/)
    expect(anchor).toBe("start")
    expect(textWidth(cut, { size: TEXT.label })).toBeLessThanOrEqual(400 - 196)
  })

  it("claim the stretch of bar and words together", () => {
    const { extent } = wordsBeside(text, { bar: { from: 100, to: 110 }, frame })
    expect(extent).toEqual({ from: 100, to: 122 + width })
  })
})
