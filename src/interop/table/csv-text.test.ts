import { describe, expect, it } from "vitest"
import { csvText } from "./csv-text.js"

const cellOf = (text: string) => csvText({ header: ["a"], rows: [[text]] }).split("\r\n")[1]

describe("a table as comma-separated text", () => {
  it("has one line for each row, ended as RFC 4180 ends them", () => {
    const text = csvText({ header: ["a", "b"], rows: [["1", "x,y"]] })
    expect(text).toBe('"a","b"\r\n"1","x,y"\r\n')
  })

  it("doubles the quotes inside a cell", () => {
    expect(cellOf('the "left" eye')).toBe('"the ""left"" eye"')
  })

  it.each(["=HYPERLINK(1)", "+1", "-1", "@SUM(A1)", "\tx"])("shows %s and never runs it", (text) => {
    expect(cellOf(text)).toBe(`"'${text}"`)
  })

  it("leaves a sign inside a text alone", () => {
    expect(cellOf("worse = grade 2")).toBe('"worse = grade 2"')
  })
})
