import { describe, expect, it } from "vitest"
import type { Course } from "../../../src/engine/course.js"
import { study } from "../../../src/engine/growth/study.js"
import { exchangedEyes } from "../../../src/engine/response/exchanged-eyes.js"
import { defaultSettings } from "../../../src/engine/settings.js"
import { measurementPlan } from "../../../src/engine/simulate/plan.js"
import { randomFrom } from "../../../src/engine/simulate/random.js"
import { virtualChild } from "../../../src/engine/simulate/virtual-child.js"
import { evidence } from "../../../src/evidence/index.js"

const CHILDREN = 5000

function child(seed: number): { course: Course; differenceMm: number } {
  const random = randomFrom(160_000 + seed)
  const plan = measurementPlan({
    sex: "female",
    ancestry: "european",
    startAgeYears: 7 + 4 * random.uniform(),
    visitMonths: [0, 6, 12],
  })
  const made = virtualChild({ plan, evidence, random })
  // Eyes of one child seldom differ so much: the difference is set, from none to 0.8 mm.
  const apart = 0.8 * random.uniform()
  const course = {
    ...made.course,
    visits: made.course.visits.map((visit) => {
      const length = visit.right?.axialLength
      return length
        ? { ...visit, right: { ...visit.right, axialLength: { ...length, mm: length.mm + apart } } }
        : visit
    }),
  }
  const last = course.visits.at(-1)
  const differenceMm = Math.abs((last?.right?.axialLength?.mm ?? 0) - (last?.left?.axialLength?.mm ?? 0))
  return { course, differenceMm }
}

function exchangedLast(course: Course): Course {
  const last = course.visits.at(-1)
  if (!last?.right || !last.left) return course
  return {
    ...course,
    visits: [...course.visits.slice(0, -1), { ...last, right: last.left, left: last.right }],
  }
}

const said = (course: Course) =>
  exchangedEyes(
    study({ course, asOf: course.visits.at(-1)?.date ?? "", evidence, settings: defaultSettings }),
  ).length > 0

describe("exchanged eyes, with two earlier visits", () => {
  it("are found when the eyes differ by 0.3 mm or more", () => {
    let apart = 0
    let found = 0
    for (let i = 0; i < CHILDREN / 2; i++) {
      const { course, differenceMm } = child(i)
      if (differenceMm < 0.3) continue
      apart++
      if (said(exchangedLast(course))) found++
    }
    expect(apart).toBeGreaterThan(500)
    expect(found / apart).toBeGreaterThan(0.99)
  })

  it("are falsely said of fewer than 1 child in 500", () => {
    let alarms = 0
    for (let i = 0; i < CHILDREN; i++) if (said(child(i).course)) alarms++
    expect(alarms / CHILDREN).toBeLessThan(1 / 500)
  })
})
