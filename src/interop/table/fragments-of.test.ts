import { describe, expect, it } from "vitest"
import { fragmentsOf } from "./fragments-of.js"
import type { RowReading } from "./table-types.js"

const source = { kind: "table", id: "abc" } as const
const row = (line: number, identity: RowReading["identity"], rest: Partial<RowReading> = {}): RowReading => ({
  line,
  identity,
  child: {},
  visits: [],
  treatments: [],
  notes: [],
  ...rest,
})
const length = (mm: number) => ({ axialLength: { mm } })
const date = "2025-01-28"

describe("rows by child", () => {
  it("a row of the right eye and one of the left are one visit, with its source", () => {
    const rows = [
      row(2, { number: "17" }, { visits: [{ date, right: length(24.1) }] }),
      row(3, { number: "17", born: "2017-03-14" }, { visits: [{ date, left: length(24) }] }),
    ]
    expect(fragmentsOf(rows, { source })).toEqual([
      {
        identity: { number: "17", born: "2017-03-14" },
        course: { visits: [{ date, right: length(24.1), left: length(24), sources: [source] }] },
        documents: [],
        source,
        notes: [],
      },
    ])
  })

  it("what contradicts stays as it was first, and a note says so", () => {
    const rows = [24.1, 24.3].map((mm, at) =>
      row(at + 2, { number: "17" }, { visits: [{ date, right: length(mm) }] }),
    )
    const [fragment] = fragmentsOf(rows, { source })
    expect(fragment?.course.visits?.[0]?.right).toEqual(length(24.1))
    expect(fragment?.notes).toMatchObject([
      { kind: "rows-contradict", path: `visits[${date}].right.axialLength` },
    ])
    expect(fragment?.notes[0]?.why).toContain("line 3")
  })

  it("one number with two birth dates is two children; a name that fits two is nobody's", () => {
    const rows = [
      row(2, { number: "17", born: "2017-03-14" }),
      row(3, { number: "17", born: "2016-03-14" }),
      row(4, { number: "1", name: "Ana Luna" }),
      row(5, { number: "2", name: "Ana Luna" }),
      row(6, { name: "Ana Luna" }),
    ]
    expect(fragmentsOf(rows, { source })).toHaveLength(5)
  })

  it("earlier glasses stay apart from a visit of the same day", () => {
    const refraction = { sphere: -1 }
    const glasses = row(
      2,
      { number: "17" },
      { visits: [{ date, right: { refraction }, from: "old glasses" }] },
    )
    const visit = row(3, { number: "17" }, { visits: [{ date, right: length(24.1) }] })
    const [fragment] = fragmentsOf([glasses, visit], { source })
    expect(fragment?.course.visits).toEqual([{ date, right: length(24.1), sources: [source] }])
    expect(fragment?.notes).toMatchObject([{ kind: "glasses-on-a-visit" }])
  })

  it("a treatment in every row is one treatment, which ends when a row says so", () => {
    const atropine = { from: date, kind: "atropine", concentrationPercent: 0.05 } as const
    const rows = [
      row(2, { number: "17" }, { treatments: [atropine] }),
      row(3, { number: "17" }, { treatments: [{ ...atropine, to: "2026-01-28" }] }),
      row(4, { number: "17" }, { treatments: [atropine] }),
    ]
    expect(fragmentsOf(rows, { source })[0]?.course.treatments).toEqual([{ ...atropine, to: "2026-01-28" }])
  })
})
