import { describe, expect, it } from "vitest"
import { readTable } from "./read-table.js"

const read = (text: string) => readTable({ file: "visits.csv", bytes: new TextEncoder().encode(text) })

describe("a table always says something", () => {
  it("of rows that are empty", async () => {
    const { fragments, skipped } = await read("id,date,al od\n,,\n,,\n")
    expect(fragments).toEqual([])
    expect(skipped.map(({ why }) => why)).toEqual(["The table has no row with a figure of a day."])
  })

  it("of headings alone", async () => {
    const { fragments, skipped } = await read("id,date,al od\n")
    expect(fragments).toEqual([])
    expect(skipped).not.toEqual([])
  })
})
