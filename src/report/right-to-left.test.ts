import { describe, expect, it } from "vitest"
import { setApart } from "./right-to-left.js"

describe("a text of others in a sentence", () => {
  it("is set apart where any of its letters run from right to left", () => {
    expect(setApart("Mira 王 محمد")).toBe("\u2068Mira 王 محمد\u2069")
    expect(setApart("מרים")).toBe("\u2068מרים\u2069")
  })
  it("stays as it is where none does", () => {
    expect(setApart("Zoë 王小明 Иванова")).toBe("Zoë 王小明 Иванова")
  })
})
