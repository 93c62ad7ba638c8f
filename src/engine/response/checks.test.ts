import { describe, expect, it } from "vitest"
import { steadyCourse, studyOf } from "../../../test/steady-child.js"
import type { Course, EyeExamination, Visit } from "../course.js"
import { checks } from "./checks.js"

const plain = steadyCourse({
  months: [0, 6, 12, 18, 24],
  shareAfter: 0.5,
  startMm: { right: 24.4, left: 24 },
})
const course: Course = { ...plain, practice: { latitude: 51.5 } }
const told = (changed: Course, asOf?: string) => checks(asOf ? studyOf(changed, asOf) : studyOf(changed))
const kinds = (changed: Course, asOf?: string) => told(changed, asOf).map(({ kind }) => kind)
const at = (place: number, change: (visit: Visit) => Visit): Course => ({
  ...course,
  visits: course.visits.map((visit, i) => (i === place ? change(visit) : visit)),
})
const exchanged = (visit: Visit): Visit => ({ ...visit, right: visit.left, left: visit.right })
const withRefraction = (refraction: EyeExamination["refraction"]) => (visit: Visit) => ({
  ...visit,
  right: { ...visit.right, refraction },
})

describe("checks", () => {
  it("are none for a complete course that fits itself", () => expect(told(course)).toEqual([]))

  it("name exchanged eyes once, not as two implausible changes as well", () => {
    expect(told(at(3, exchanged)).map(({ kind, path }) => [kind, path])).toEqual([
      ["eyes-exchanged", "visits[3]"],
    ])
  })

  it("still name another visit's implausible length beside exchanged eyes", () => {
    const both = at(3, exchanged)
    const longer = (visit: Visit): Visit => ({
      ...visit,
      left: { axialLength: { ...visit.left?.axialLength, mm: (visit.left?.axialLength?.mm as number) + 2 } },
    })
    const visits = both.visits.map((visit, i) => (i === 1 ? longer(visit) : visit))
    expect(told({ ...both, visits }).map(({ path }) => path)).toContain("visits[1].left.axialLength")
  })

  it("put doubtful figures before what is missing", () => {
    const { practice: _, ...nowhere } = at(3, exchanged)
    expect(kinds(nowhere)).toEqual(["eyes-exchanged", "latitude-missing"])
  })

  it("count the visits left out and name the first of them", () => {
    expect(told(course, "2025-01-01")).toEqual([
      { kind: "after-as-of", path: "visits[2]", why: "3 visits after 2025-01-01 left out of this answer" },
    ])
  })

  it("doubt no figure that is not known yet", () => {
    expect(kinds(at(4, exchanged), "2026-01-01")).toEqual(["after-as-of"])
  })
})

describe("a lost sign", () => {
  const cycloplegic = (sphere: number, cylinder = 0) =>
    withRefraction({ sphere, cylinder, axis: 180, cycloplegic: true })
  const signs = (changed: Course) => kinds(changed).filter((kind) => kind === "sign-changed")

  it.each([
    ["is asked about when signs are opposite, 4 D apart", 2, 1],
    ["is not when both are minus", -4, 0],
    ["is not of a plano eye", 0, 0],
  ])("%s", (_, sphere, times) => {
    expect(signs(at(2, cycloplegic(sphere)))).toHaveLength(times)
  })

  it("is not asked about when the change is small: less than 1.5 D", () => {
    const small = steadyCourse({ months: [0, 6, 12], shareAfter: 0.5, sphereD: -0.75 })
    const changed = { ...small, visits: small.visits.map((v, i) => (i === 2 ? cycloplegic(0.5)(v) : v)) }
    expect(signs(changed)).toHaveLength(0)
  })

  it("counts the cylinder in the size of the change", () => {
    const small = steadyCourse({ months: [0, 6, 12], shareAfter: 0.5, sphereD: -0.75 })
    const changed = (cylinder: number) => ({
      ...small,
      visits: small.visits.map((v, i) => (i === 2 ? cycloplegic(1, cylinder)(v) : v)),
    })
    expect(signs(changed(0))).toHaveLength(1)
    expect(signs(changed(-0.75))).toHaveLength(0)
  })
})

describe("what is missing", () => {
  it("a method is asked for only where there is a length", () => {
    const noMethod = at(1, (visit) => ({ ...visit, right: { axialLength: { mm: 24.5 } } }))
    expect(kinds(noMethod)).toContain("method-not-stated")
    expect(kinds(at(1, ({ date }) => ({ date, right: {} })))).not.toContain("method-not-stated")
  })

  it("cycloplegia is asked of autorefraction, not of subjective refraction", () => {
    const dry = (method: "autorefraction" | "subjective") =>
      kinds(at(1, withRefraction({ sphere: -2.25, method })))
    expect(dry("autorefraction")).toContain("not-cycloplegic")
    expect(dry("subjective")).not.toContain("not-cycloplegic")
  })

  it("a latitude of 0 is a latitude", () => {
    expect(told({ ...course, practice: { latitude: 0 } })).toEqual([])
  })

  it("any ancestry stated is stated, 'other' too", () => {
    expect(kinds({ ...course, child: { ...course.child, ancestry: "other" } })).not.toContain(
      "ancestry-unstated",
    )
  })
})
