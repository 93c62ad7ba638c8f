import * as fc from "fast-check"
import { describe, expect, it } from "vitest"
import { firstJsonFault } from "./json-position.js"

describe("the first place at which a text stops being JSON", () => {
  it.each([
    ['{ "a": 1,\n "b" 2 }', { line: 2, column: 6, found: "2" }],
    ['{ "a": 1, }', { line: 1, column: 11, found: "}" }],
    ["[1, 2", { line: 1, column: 6, found: "the end of the file" }],
    ["[1, 2] 3", { line: 1, column: 8, found: "3" }],
    ["{ 'a': 1 }", { line: 1, column: 3, found: "'a':" }],
    ['{ "a": 01 }', { line: 1, column: 8, found: "01" }],
    ['{ "a": NaN }', { line: 1, column: 8, found: "NaN" }],
    ["[1}", { line: 1, column: 3, found: "}" }],
    ['["a\nb"]', { line: 1, column: 2, found: '"a' }],
    ['["\\x"]', { line: 1, column: 2, found: '"\\x"]' }],
  ])("%j", (text, fault) => {
    expect(firstJsonFault(text)).toEqual(fault)
  })

  it("is found in a string of megabytes without running out of stack", () => {
    expect(firstJsonFault(`"${"a".repeat(5_000_000)}`)).toMatchObject({ line: 1, column: 1 })
  })

  it("is nowhere in what JSON.stringify writes", () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.constantFrom(0, 2), (value, space) => {
        expect(firstJsonFault(JSON.stringify(value, null, space))).toBeNull()
      }),
    )
  })

  it("exists exactly when JSON.parse throws", () => {
    const nearJson = fc.array(
      fc.constantFrom("{", "}", "[", "]", ",", ":", '"a"', "1", "-", ".", "e", "true", "nul", " ", '"', "\\"),
      { maxLength: 8 },
    )
    fc.assert(
      fc.property(
        nearJson.map((parts) => parts.join("")),
        (text) => {
          expect(firstJsonFault(text) !== null).toBe(throws(() => JSON.parse(text)))
        },
      ),
      { numRuns: 3000 },
    )
  })
})

function throws(act: () => unknown): boolean {
  try {
    act()
    return false
  } catch {
    return true
  }
}
