import { describe, expect, it } from "vitest"
import { readCourse } from "../../src/interop/course/read-course.js"

/** Bad input that every list of the programme may meet: dates out of life, other things than a list, too much of it. */

const child = { born: "2017-03-14", sex: "female" }
function problems(parts: object) {
  const read = readCourse(JSON.stringify({ lengthwise: 1, child, visits: [], ...parts }), {
    today: "2025-08-01",
  })
  return "problems" in read ? read.problems : []
}

const LISTS = {
  missedNights: "from",
  decisions: "date",
  concerns: "opened",
  orders: "date",
  explanations: "date",
  payments: "date",
} as const

describe.each(Object.entries(LISTS))("the list of %s", (list, field) => {
  it("holds nothing from before birth", () => {
    const found = problems({ [list]: [{ [field]: "2016-01-01" }] }).filter(
      ({ path }) => path === `${list}[0].${field}`,
    )
    expect(found.map(({ message }) => message)).toEqual([
      expect.stringMatching(/day of birth \(2017-03-14\)/),
    ])
  })
  it("holds nothing that has not happened yet", () => {
    const found = problems({ [list]: [{ [field]: "2025-08-02" }] }).filter(
      ({ path }) => path === `${list}[0].${field}`,
    )
    expect(found.map(({ message }) => message)).toEqual([expect.stringMatching(/a day up to 2025-08-01/)])
  })
  it("is refused as a whole when it has 2001 items", () => {
    const found = problems({ [list]: Array.from({ length: 2001 }, () => ({})) })
    expect(found.map(({ path, message }) => [path, message])).toEqual([
      [list, `${list} must be a list of at most 2000, not a list of 2001.`],
    ])
  })
  it.each([
    ["text", "none"],
    ["an object", {}],
    ["a number", 3],
  ])("is not %s", (_what, value) => {
    expect(problems({ [list]: value }).map(({ path }) => path)).toEqual([list])
  })
})
