import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { canonicalJson } from "./canonical-json.js"

describe("canonical JSON", () => {
  it("gives the text of the example", () => {
    expect(canonicalJson({ b: 1, a: [undefined, 2], c: undefined })).toBe('{"a":[null,2],"b":1}')
  })

  it("means the same as the value it was made of", () => {
    fc.assert(
      fc.property(fc.jsonValue({ noUnicodeString: false }), (value) => {
        expect(JSON.parse(canonicalJson(value))).toEqual(JSON.parse(JSON.stringify(value)))
      }),
    )
  })

  it("does not depend on the order in which members were set", () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.integer()), (value) => {
        const turned = Object.fromEntries(Object.entries(value).toReversed())
        expect(canonicalJson(turned)).toBe(canonicalJson(value))
      }),
    )
  })

  it.each([Number.NaN, Number.POSITIVE_INFINITY, () => 1, 1n])(
    "refuses what JSON can't hold: %s",
    (value) => {
      expect(() => canonicalJson({ value })).toThrow(TypeError)
    },
  )
})
