import { describe, expect, it } from "vitest"
import type { CalendarDate, Course, Eye, EyeExamination, Treatment } from "../course.js"
import { growthWindow } from "./growth-window.js"

const measured: EyeExamination = { axialLength: { mm: 24 } }
const course = (dates: readonly CalendarDate[], treatments: readonly Treatment[] = []): Course => ({
  lengthwise: 1,
  child: { born: "2015-01-01", sex: "female" },
  visits: dates.map((date) => ({ date, right: measured, left: measured })),
  treatments,
})
const drops = (from: CalendarDate, to: CalendarDate | null = null): Treatment => ({
  kind: "atropine",
  from,
  to,
})
const window = (from: Course, asOf = "2030-01-01") => growthWindow({ course: from, asOf })

describe("the stretch that growth is asked about", () => {
  it.each([{ dates: [] }, { dates: ["2024-01-01"] }, { dates: ["2024-01-01", "2024-01-01"] }])(
    "does not exist with lengths on fewer than two days: $dates",
    ({ dates }) => expect(window(course(dates))).toBeNull(),
  )

  it("is all there is when the first length is less than a year old", () => {
    expect(window(course(["2024-01-01", "2024-07-01"]))).toEqual({
      from: "2024-01-01",
      to: "2024-07-01",
      sinceChange: false,
    })
  })

  it("is the last twelve months when there is more", () => {
    expect(window(course(["2022-01-01", "2023-06-30", "2024-06-30"]))).toMatchObject({
      from: "2023-06-30",
      to: "2024-06-30",
    })
  })

  it("begins at a visit up to 45 days from twelve months ago", () => {
    expect(window(course(["2022-01-01", "2023-05-20", "2024-06-30"]))?.from).toBe("2023-05-20")
  })

  it("begins twelve months ago between visits that are further from it", () => {
    expect(window(course(["2022-01-01", "2023-03-01", "2024-06-30"]))?.from).toBe("2023-06-30")
  })

  it("begins at a change of treatment of the last year, and says so", () => {
    const changed = course(["2022-01-01", "2023-12-01", "2024-06-30"], [drops("2023-12-01")])
    expect(window(changed)).toEqual({ from: "2023-12-01", to: "2024-06-30", sinceChange: true })
  })

  it("counts a stop as a change", () => {
    const stopped = course(["2022-01-01", "2024-02-01", "2024-06-30"], [drops("2022-01-01", "2024-02-01")])
    expect(window(stopped)).toMatchObject({ from: "2024-02-01", sinceChange: true })
  })

  it("does not count a change on the day of the last length, which acts only after it", () => {
    expect(window(course(["2023-06-30", "2024-06-30"], [drops("2024-06-30")]))).toMatchObject({
      from: "2023-06-30",
      sinceChange: false,
    })
  })

  it("does not begin before a change, even at a visit near twelve months ago", () => {
    const changed = course(["2022-01-01", "2023-06-10", "2023-07-15", "2024-06-30"], [drops("2023-06-20")])
    expect(window(changed)?.from).toBe("2023-07-15")
  })

  it("does not look past the day asked about", () => {
    expect(window(course(["2023-01-01", "2023-07-01", "2024-01-01"]), "2023-12-31")?.to).toBe("2023-07-01")
  })

  it("is the same whatever the order of the file", () => {
    expect(window(course(["2024-06-30", "2022-01-01", "2023-06-30"]))).toEqual(
      window(course(["2022-01-01", "2023-06-30", "2024-06-30"])),
    )
  })

  it("of one eye ends at the last length of that eye", () => {
    const both = course(["2023-06-30", "2024-06-30"])
    const only: Course = { ...both, visits: [...both.visits, { date: "2024-12-30", left: measured }] }
    const of = (eye: Eye) => growthWindow({ course: only, asOf: "2030-01-01", eyes: [eye] })?.to
    expect([of("right"), of("left")]).toEqual(["2024-06-30", "2024-12-30"])
  })
})
