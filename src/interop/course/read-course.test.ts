import { describe, expect, it } from "vitest"
import { readCourse } from "./read-course.js"

const girl = { born: "2017-03-14", sex: "female" }
const read = (file: unknown) => readCourse(JSON.stringify(file))
const course = (file: unknown) => {
  const result = read(file)
  if ("problems" in result) throw new Error(result.problems.map(({ message }) => message).join("\n"))
  return result
}

describe("a course file that is read", () => {
  it("needs a day of birth and a sex, and nothing more", () => {
    expect(course({ child: girl }).course).toEqual({ lengthwise: 1, child: girl, visits: [] })
  })

  it("says when it does not state its version", () => {
    expect(course({ child: girl }).notes).toMatchObject([{ kind: "version-not-stated", path: "lengthwise" }])
  })

  it("gives its visits by date", () => {
    const visits = [{ date: "2025-07-01" }, { date: "2025-01-10" }, { date: "2026-01-08" }]
    expect(course({ child: girl, visits }).course.visits.map(({ date }) => date)).toEqual([
      "2025-01-10",
      "2025-07-01",
      "2026-01-08",
    ])
  })

  it("says where in the file each visit stands", () => {
    const visits = [{ date: "2025-07-01" }, { date: "2025-01-10" }, { date: "2026-01-08" }]
    expect(course({ child: girl, visits }).visitOrder).toEqual([1, 0, 2])
  })

  it("takes a null on an optional field as absent", () => {
    const file = {
      lengthwise: 1,
      child: { ...girl, ancestry: null },
      practice: null,
      visits: [{ date: "2025-01-10", left: null, right: { axialLength: null } }],
      treatments: [{ from: "2025-01-10", to: null, kind: "lenslet-spectacles" }],
    }
    expect(course(file)).toStrictEqual({
      course: {
        lengthwise: 1,
        child: girl,
        visits: [{ date: "2025-01-10", right: {} }],
        treatments: [{ from: "2025-01-10", kind: "lenslet-spectacles" }],
      },
      notes: [],
      visitOrder: [0],
    })
  })

  it("reads an axis of 0 as 180", () => {
    const right = { refraction: { sphere: -1, cylinder: -0.5, axis: 0 } }
    const { visits } = course({ child: girl, visits: [{ date: "2025-01-10", right }] }).course
    expect(visits[0]?.right?.refraction?.axis).toBe(180)
  })

  it("notes a field it does not know, with its path, and leaves it out", () => {
    const visits = [{ date: "2025-01-10", right: { axialLenght: { mm: 24 } } }]
    const { course: sound, notes } = course({ lengthwise: 1, child: girl, visits })
    expect(notes).toMatchObject([{ kind: "unknown-field", path: "visits[0].right.axialLenght" }])
    expect(sound.visits[0]?.right).toEqual({})
  })

  it("may begin with a byte order mark", () => {
    expect(readCourse(`\uFEFF${JSON.stringify({ child: girl })}`)).toHaveProperty("course")
  })

  it("lets one treatment begin on the day another of its kind ends", () => {
    const treatments = [
      { from: "2025-01-10", to: "2025-07-01", kind: "atropine", concentrationPercent: 0.025 },
      { from: "2025-07-01", kind: "atropine", concentrationPercent: 0.05 },
    ]
    expect(course({ child: girl, treatments }).course.treatments).toEqual(treatments)
  })

  it("lets glasses and drops run side by side", () => {
    const treatments = [
      { from: "2025-01-10", kind: "atropine", concentrationPercent: 0.025 },
      { from: "2025-02-10", kind: "lenslet-spectacles" },
    ]
    expect(course({ child: girl, treatments }).course.treatments).toHaveLength(2)
  })

  it("does not judge the age of a child: the engine refuses by name", () => {
    expect(course({ child: { ...girl, born: "2000-01-01" }, visits: [{ date: "2025-01-10" }] })).toBeTruthy()
  })

  it("reads a treatment that starts within a year as planned, and says so", () => {
    const treatments = [{ from: "2025-02-01", kind: "atropine", concentrationPercent: 0.05 }]
    const file = JSON.stringify({ lengthwise: 1, child: girl, treatments })
    expect(readCourse(file, { today: "2025-01-13" })).toMatchObject({
      notes: [{ kind: "planned-treatment", path: "treatments[0].from" }],
    })
  })

  it("lets a planned stop and a beyond-use date lie ahead", () => {
    const file = {
      lengthwise: 1,
      child: girl,
      treatments: [{ from: "2025-01-10", to: "2027-01-10", kind: "atropine", concentrationPercent: 0.05 }],
      supplies: [{ dispensed: "2025-01-12", beyondUse: "2025-02-11" }],
    }
    expect(readCourse(JSON.stringify(file), { today: "2025-01-13" })).toHaveProperty("course")
  })
})
