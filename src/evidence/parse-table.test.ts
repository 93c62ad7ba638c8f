import { describe, expect, it } from "vitest"
import { numberIn, parseTable } from "./parse-table.js"
import { tables } from "./tables.js"

const { provenance } = tables[0]!

describe("a carried-in table", () => {
  it("keeps cells as text, skips comments, reads quoted commas and quotes, and keeps empty cells", () => {
    const read = parseTable(
      "a.csv",
      '# note, not a row\nsex,n,where\nM,,"Bonn, ""school"""\n,6.0,\n',
      provenance,
    )
    expect(read.header).toEqual(["sex", "n", "where"])
    expect(read.rows).toEqual([
      { sex: "M", n: "", where: 'Bonn, "school"' },
      { sex: "", n: "6.0", where: "" },
    ])
  })

  it("is refused when a row has too few cells", () => {
    expect(() => parseTable("a.csv", "a,b\n1\n", provenance)).toThrow(
      "a.csv: row 1 has 1 cells, the header 2",
    )
  })

  it("is refused when it is empty", () => {
    expect(() => parseTable("a.csv", "# only a note\n", provenance)).toThrow(
      "a.csv: a table needs a header and a row",
    )
  })

  it("does not read an empty cell as nought", () => {
    expect(() => numberIn({ p10: "" }, "p10")).toThrow('column p10 needs a number, found ""')
  })
})
