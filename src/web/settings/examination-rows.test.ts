import { describe, expect, it } from "vitest"
import { switchGroups, switchPaper } from "./examination-rows.js"

const rows = switchGroups().flatMap((group) => group.rows)
const rowOf = (duty: string) => rows.find((row) => row.duty === duty)

describe("the switches of the examinations", () => {
  it("stand under the first stage at which they ask", () => {
    const baseline = switchGroups().find(({ stage }) => stage === "baseline")
    expect(baseline?.rows.map(({ duty }) => duty)).toContain("CD-028")
  })

  it("say what was read of a row, and how", () => {
    expect(rowOf("CD-028")).toMatchObject({
      asks: ["intraocular pressure"],
      words: "Measure intraocular pressure before atropine and repeat it on treatment.",
      source: "Source: ATOM-CRITERIA, PALESTINE-2019, TIANJIN-SAFETY; read as secondary + abstracts.",
    })
  })

  it("say of a row from memory that nothing was read, and quote no source", () => {
    expect(rowOf("CD-031")).toMatchObject({ source: null, note: null })
    expect(rowOf("CD-031")?.statusWords).toContain("no text was read")
  })

  it("have words for every row", () => {
    expect(rows.filter(({ words }) => words === "")).toEqual([])
  })

  it("are each there once", () => {
    expect(new Set(rows.map(({ duty }) => duty)).size).toBe(rows.length)
  })
})

describe("the paper of the switches", () => {
  it("holds only what differs from what ships", () => {
    expect(switchPaper({ "CD-028": true, "CD-031": false, "CD-013": false, "CD-018": true })).toEqual({
      "CD-028": true,
      "CD-013": false,
    })
  })
})
