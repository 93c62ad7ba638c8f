import { describe, expect, it } from "vitest"
import { ownReference } from "./own-table.js"
import { position } from "./position.js"
import { valueAtCentile } from "./value-at-centile.js"

// Invented tables: they only have the shape of published ones.
const provenance = {
  id: "practice-2026-al",
  title: "An invented table",
  authors: "nobody",
  year: 2026,
  doi: null,
  where: "table 2",
  obtained: "full text",
  population: "invented children",
  n: "100 per cell",
  ageRange: "6 to 8 a",
  device: "optical biometry",
  units: "a; mm",
  licence: "none needed",
  transcribedBy: "first person",
  checkedBy: "second person",
  checkedOn: "2026-03-31",
  sha256: "0".repeat(64),
  supersedes: null,
  notes: "",
}
const LMS = "sex,age_years,L,M,S\nF,6,1,22.2,0.03\nF,8,1,22.8,0.03\nM,6,1,22.7,0.03\nM,8,1,23.3,0.03\n"
const CENTILES =
  "sex,age_years,n,p3,p50,p97\ngirls,6,90,21,22,23.5\ngirls,7,90,21.2,22.3,24\ngirls,8,90,,22.6,24.5\n"

function accepted(csv: string, changes: object = {}) {
  const answer = ownReference({ csv, provenance: { ...provenance, ...changes } })
  if ("problems" in answer) throw new Error(answer.problems.map((problem) => problem.message).join("\n"))
  return answer.reference
}

function faults(csv: string, changes: object = {}) {
  const answer = ownReference({ csv, provenance: { ...provenance, ...changes } })
  return "problems" in answer ? answer.problems.map((problem) => problem.message) : []
}

describe("a practice's own table is taken", () => {
  it("as L, M and S, and places a child", () => {
    const reference = accepted(LMS)
    expect(reference).toMatchObject({
      id: "practice-2026-al",
      shape: "lms",
      grade: "B",
      youngestAgeYears: 6,
      oldestAgeYears: 8,
    })
    const answer = position({ measure: "axial-length", value: 22.5, ageYears: 7, sex: "female", reference })
    expect(answer).toMatchObject({ centile: 50, grade: "B" })
    expect(position({ measure: "axial-length", value: 22.5, ageYears: 9, sex: "female", reference })).toEqual(
      {
        refused: "the reference practice-2026-al covers 6 to 8 years for a female child; age 9 lies outside",
        reference: "practice-2026-al",
        grade: "B",
      },
    )
  })

  it("as centiles, where a blank cell is not printed and not bridged", () => {
    const reference = accepted(CENTILES)
    const at = (centile: number, ageYears: number) =>
      valueAtCentile({ centile, ageYears, sex: "female", reference })
    expect(at(3, 6.5)).toHaveProperty("value")
    expect(at(3, 7.5)).toHaveProperty("refused")
    expect(at(97, 8)).toEqual({ value: 24.5 })
  })

  it("with semicolons and decimal commas, comments, empty lines and a byte order mark", () => {
    const csv = "\uFEFF# a comment\r\n\r\nSex;Age_years;l;m;s\r\nFemale;6,5;1,0;22,2;0,03\r\n"
    expect(accepted(csv).rows).toEqual([{ sex: "female", ageYears: 6.5, l: 1, m: 22.2, s: 0.03 }])
  })

  it("as approximate when nobody has checked the figures", () => {
    expect(accepted(LMS, { checkedBy: null, checkedOn: null }).grade).toBe("C")
  })
})

describe("a practice's own table is refused with line, column, value and what is allowed", () => {
  it("every fault of the cells at once", () => {
    const csv = "sex,age_years,L,M,S\nF,6,1,2.22,0.03\nX,7,1,22.4,0.8\nF,30,one,22.6,\n"
    expect(faults(csv)).toEqual([
      "line 2, M must be a length from 15 to 35 mm, not 2.22",
      "line 3, sex must be F, M, female, male, or all, not X",
      "line 3, S must be a coefficient of variation above 0 and up to 0.2, not 0.8",
      "line 4, age_years must be an age from 0 to 25 years, not 30",
      "line 4, L must be a number, not one",
      "line 4, S must be a coefficient of variation above 0 and up to 0.2, and is missing",
    ])
  })

  it("as data too, for a page that marks the cell", () => {
    const answer = ownReference({ csv: "sex,age_years,L,M,S\nF,6,1,241,0.03\n", provenance })
    expect(answer).toMatchObject({
      problems: [
        { line: 2, column: "M", value: "241", allowed: "a length from 15 to 35 mm", path: "line 2, M" },
      ],
    })
  })

  it("ages that do not ascend within a sex", () => {
    const csv = "sex,age_years,L,M,S\nF,8,1,22.8,0.03\nM,6,1,22.7,0.03\nF,6,1,22.2,0.03\n"
    expect(faults(csv)).toEqual(["line 4, age_years must be an age above 8, the one before for girls, not 6"])
  })

  it("centiles that do not rise along a row", () => {
    const csv = CENTILES.replace("21.2,22.3,24", "22.4,22.3,24")
    expect(faults(csv)).toEqual(["line 3, p50 must be above p3 of the same row, 22.4, not 22.3"])
  })

  it("centiles that cross between two ages though every row is in order", () => {
    // p50 is flat at first and p3 steep, so that their curves meet before the last row.
    const csv = "sex,age_years,p3,p50,p97\nF,6,21,23,25\nF,7,22.99,23,25\nF,12,24.5,27,28\n"
    expect(faults(csv)).toEqual(["line 4, p50 must be above p3 at every age from 7 to 12, not 27"])
  })

  it("a row with a single printed centile", () => {
    const csv = CENTILES.replace(",,22.6,24.5", ",,22.6,")
    expect(faults(csv)).toEqual(["line 4, row must be two or more printed centiles, not 1"])
  })

  it("a skewness that no eye has", () => {
    const csv = LMS.replace("M,8,1,", "M,8,-300,")
    expect(faults(csv)).toEqual([
      "line 5, L must be an L that with M and S puts the centiles 2 and 98 from 15 to 35 mm, not -300",
    ])
  })

  it.each([
    ["sex,L,M,S\nF,1,22,0.03\n", "line 1, age_years must be a column, and is missing"],
    [
      "sex,age_years,p3,p50\nF,6,21,22\n",
      "line 1, header must be either L, M and S together, or three or more centiles, and not both, not sex,age_years,p3,p50",
    ],
    [
      "sex,age_years,L,M,S,height\nF,6,1,22,0.03,120\n",
      "line 1, height must be sex, age_years, n, L, M, S, or a centile such as p3 or p2.5, not height",
    ],
    [
      "sex,age_years,p3,p03,p50,p97\nF,6,21,21,22,23\n",
      "line 1, p3 must be a column that stands only once, not p3",
    ],
    ["sex,age_years,L,M,S\nF,6,1,22\n", "line 2, row must be as many cells as the header, 5, not 4"],
  ])("%j", (csv, message) => {
    expect(faults(csv)).toEqual([message])
  })

  it.each(["", "# only a comment\n", "sex,age_years,L,M,S\n", `${LMS}${"\n".repeat(1000)}F,9,1,23,0.03\n`])(
    "a file without rows or with too many",
    (csv) => {
      expect(faults(csv)).toEqual([expect.stringContaining("a header and rows below it, up to 1000 lines")])
    },
  )

  it("50 MB of junk, with one fault", () => {
    expect(faults("x,".repeat(25_000_000))).toHaveLength(1)
  })

  it("every key of the provenance that is missing or wrong, beside the faults of the table", () => {
    const csv = LMS.replace("22.2", "222")
    const changes = {
      id: "An Id",
      year: "2026",
      units: "a; cm",
      checkedOn: "2026-02-30",
      sha256: "",
      notes: undefined,
    }
    const { title: _title, ...rest } = { ...provenance, ...changes }
    const answer = ownReference({ csv, provenance: rest })
    const paths = "problems" in answer ? answer.problems.map((problem) => problem.path) : []
    expect(paths).toEqual([
      "provenance.id",
      "provenance.title",
      "provenance.year",
      "provenance.units",
      "provenance.checkedOn",
      "provenance.sha256",
      "provenance.notes",
      "line 2, M",
    ])
  })
})
