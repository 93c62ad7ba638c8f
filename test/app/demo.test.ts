import { afterEach, beforeEach, describe, expect, it } from "vitest"
import type { Course } from "../../src/engine/course.js"
import { loadDemo } from "../../src/server/demo.js"
import { type TestApp, TODAY, testApp } from "./test-app.js"

const treated: Course = {
  lengthwise: 1,
  child: { id: "slowed-1", born: "2016-05-01", sex: "male", ancestry: "european" },
  practice: { latitude: 51.5 },
  visits: ["2024-01-10", "2024-07-10", TODAY].map((date) => ({ date, right: { axialLength: { mm: 24 } } })),
  treatments: [
    { from: "2024-01-10", to: "2024-07-10", kind: "atropine", concentrationPercent: 0.025 },
    { from: "2024-07-10", kind: "atropine", concentrationPercent: 0.05 },
  ],
  supplies: [{ dispensed: "2024-01-12", volumeMl: 5 }],
  consents: [{ date: "2024-01-10", covers: { kind: "atropine", concentrationPercent: 0.05 } }],
}
const seenOnce: Course = {
  lengthwise: 1,
  child: { id: "new-1", born: "2017-05-01", sex: "female" },
  visits: [{ date: "2023-06-01" }],
}
const children = () => [
  { name: "Invented One", number: "LW-0001", course: treated },
  { name: "Invented Two", number: "LW-0002", course: seenOnce },
]
const nowMs = Date.parse(`${TODAY}T09:00:00Z`)

let t: TestApp
beforeEach(async () => {
  t = await testApp()
})
afterEach(() => t.close())

const courseOf = async (name: string) => {
  const [child] = (await t.record.children({ search: name, page: 1, pageSize: 1 })).children
  return t.record.courseOf(child?.id ?? "")
}

describe("loading the demo", () => {
  it("gives each child the course that was invented for it", async () => {
    expect(await loadDemo({ record: t.record, children, nowMs })).toBe(2)
    const course = await courseOf("Invented One")
    expect(course).toEqual({ ...treated, child: { ...treated.child, id: course?.child.id } })
  })

  it("records day by day, and nothing in the future", async () => {
    await loadDemo({ record: t.record, children, nowMs })
    const found = (await t.record.children({ page: 1, pageSize: 9 })).children
    const ofChildren = (await Promise.all(found.map(({ id }) => t.record.entriesOf(id)))).flat()
    const entries = [...(await t.record.papers()), ...ofChildren]
    const times = entries.toSorted((a, b) => a.position - b.position).map(({ recordedAt }) => recordedAt)
    expect(times).toEqual(times.toSorted())
    expect(times.at(-1)).toBe(new Date(nowMs).toISOString())
    expect(await t.record.verifyChain()).toMatchObject({ whole: true, entries: entries.length })
  })

  it("does nothing the second time, nor in a practice that has children", async () => {
    await loadDemo({ record: t.record, children, nowMs })
    const fail = () => {
      throw new Error("asked for children that are not needed")
    }
    expect(await loadDemo({ record: t.record, children: fail, nowMs })).toBe(0)
  })

  it("names an author who can't log in", async () => {
    await loadDemo({ record: t.record, children, nowMs })
    const answer = await t.ask("POST", "/api/session", { body: { name: "Demo staff", password: "" } })
    expect(answer.statusCode).toBe(422)
    expect((await t.record.personByLogIn("Demo staff"))?.passwordHash).toBeNull()
  })
})
