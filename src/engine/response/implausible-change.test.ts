import { describe, expect, it } from "vitest"
import { steadyCourse, studyOf } from "../../../test/steady-child.js"
import type { Course, Eye } from "../course.js"
import { implausibleChanges } from "./implausible-change.js"

const course = steadyCourse({ months: [0, 6, 12, 18, 24], shareAfter: 0.5 })
const shifted = (place: number, mm: number, eyes: readonly Eye[] = ["right"]): Course => ({
  ...course,
  visits: course.visits.map((visit, i) => {
    const moved = eyes.map((eye) => {
      const length = visit[eye]?.axialLength as NonNullable<
        NonNullable<(typeof visit)["right"]>["axialLength"]
      >
      return [eye, { ...visit[eye], axialLength: { ...length, mm: length.mm + mm } }]
    })
    return i === place ? { ...visit, ...Object.fromEntries(moved) } : visit
  }),
})
const paths = (of: Course) => implausibleChanges(studyOf(of)).map(({ path }) => path)

describe("a length that does not follow from the child's own", () => {
  it("is not found in a child who grows steadily", () => expect(paths(course)).toEqual([]))

  it.each([0.6, -0.6, 1, -1])("is named when it is off by %d mm, and nothing else is", (mm) => {
    expect(paths(shifted(2, mm))).toEqual(["visits[2].right.axialLength"])
  })

  it("is named with the other eye's when both are off, as if of another child", () => {
    expect(paths(shifted(2, 0.8, ["right", "left"]))).toEqual(["visits[2]"])
  })

  it("is the later of two visits that disagree", () => {
    const two = steadyCourse({ months: [0, 6], shareAfter: 0.5 })
    const [first, last] = two.visits
    const longer = (exam: Course["visits"][number]["right"]) => ({
      ...exam,
      axialLength: { ...exam?.axialLength, mm: (exam?.axialLength?.mm ?? 0) + 1.5 },
    })
    const off = { ...two, visits: [first, { ...last, right: longer(last?.right), left: longer(last?.left) }] }
    expect(paths(off as Course)).toEqual(["visits[1]"])
  })

  it("is named in either eye", () => {
    expect(paths(shifted(3, 0.8, ["left"]))).toEqual(["visits[3].left.axialLength"])
  })

  it("is not said of 0.1 mm, which wobble and noise explain", () => {
    expect(paths(shifted(2, 0.1))).toEqual([])
  })

  it("may be the first length, which all later ones contradict", () => {
    expect(paths(shifted(0, 0.8, ["right", "left"]))).toEqual(["visits[0]"])
  })

  it("says the value, the eye and the date", () => {
    const [check] = implausibleChanges(studyOf(shifted(2, 0.8)))
    expect(check?.why).toMatch(/^the right eye's length of 25\.\d\d mm on 2025-06-15 /)
  })
})
