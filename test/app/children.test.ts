import { afterEach, beforeEach, describe, expect, it } from "vitest"
import { api } from "../../src/server/contract/api.js"
import { faults, type TestApp, TODAY, testApp } from "./test-app.js"

let t: TestApp
beforeEach(async () => {
  t = await testApp()
  await t.logIn()
})
afterEach(() => t.close())

const add = (body: object) => t.ask("POST", "/api/children", { body })
const mira = { name: "Mira Solberg", born: "2017-03-14", sex: "female" }

describe("adding a child", () => {
  it("answers with the child, its empty course and the entry that names it", async () => {
    const answer = await add({ ...mira, number: "A-7", ancestry: "european", myopicParents: 1 })
    expect(answer.statusCode).toBe(201)
    const view = api.addChild.answer.parse(answer.json())
    expect(view.child).toEqual({
      id: view.child.id,
      name: mira.name,
      number: "A-7",
      born: mira.born,
      sex: "female",
    })
    expect(view.course).toMatchObject({
      child: { born: mira.born, ancestry: "european", myopicParents: 1 },
      practice: { latitude: 51.5 },
      visits: [],
    })
    expect(view.entries).toMatchObject([{ kind: "child", author: "Ada Lindqvist", supersededBy: null }])
  })

  it("tells every fault at once", async () => {
    const answer = await add({ name: " ", born: "2025-02-30", sex: "f", ancestry: "martian", height: 120 })
    expect(answer.statusCode).toBe(422)
    expect(faults(answer)).toEqual([
      "born: a day of the calendar written YYYY-MM-DD",
      "sex: female or male",
      "ancestry: one of east-asian, european, south-asian, african, other, unstated",
      "name: the child's name",
    ])
  })

  it("refuses a field nobody knows rather than lose it", async () => {
    expect(faults(await add({ ...mira, height: 120 }))).toEqual(["height: a field of the course file"])
  })

  it("refuses a birth in the future", async () => {
    expect(faults(await add({ ...mira, born: "2025-11-26" }))).toEqual([`born: a day up to ${TODAY}`])
  })

  it("refuses a number that is taken, and says whose it is", async () => {
    await add({ ...mira, number: "A-7" })
    const answer = await add({ ...mira, name: "Tomas Brandl", number: "A-7" })
    expect(answer.statusCode).toBe(409)
    expect(answer.json().problems[0].message).toBe("the number A-7 belongs to Mira Solberg")
  })

  it("sent twice with one id is one child", async () => {
    const id = "0f8fad5b-d9cb-469f-a165-70867728950e"
    const answers = await Promise.all([add({ ...mira, id }), add({ ...mira, id: id.toUpperCase() })])
    expect(answers.map(({ statusCode }) => statusCode)).toEqual([201, 201])
    expect((await t.ask("GET", "/api/children")).json().total).toBe(1)
  })

  it("keeps a name exactly as it is written, whatever it holds", async () => {
    const name = `Robert'); DROP TABLE entries;-- <script>alert(1)</script> 李 "O'Neil"`
    const { child } = await t.addChild({ name })
    expect((await t.ask("GET", `/api/children/${child.id}`)).json().child.name).toBe(name)
    expect(await t.record.verifyChain()).toMatchObject({ whole: true, entries: 1 })
  })
})

describe("correcting who the child is", () => {
  it("keeps the first version and asks why", async () => {
    const { child } = await t.addChild({ born: "2017-03-13" })
    const url = `/api/children/${child.id}/correction`
    const withoutReason = await t.ask("POST", url, { body: { child: mira } })
    expect(faults(withoutReason)).toEqual(["reason: why it is corrected, in words"])
    const answer = await t.ask("POST", url, { body: { child: mira, reason: "read the wrong line" } })
    const { child: corrected, entries } = api.correctChild.answer.parse(answer.json())
    expect(corrected.born).toBe("2017-03-14")
    expect(entries).toMatchObject([
      { kind: "child", date: "2017-03-13", supersededBy: entries[1]?.id },
      { kind: "child", date: "2017-03-14", reason: "read the wrong line", supersedes: entries[0]?.id },
    ])
  })

  it("does not let a child be born after a visit", async () => {
    const { child } = await t.addChild()
    await t.ask("POST", `/api/children/${child.id}/visits`, { body: { date: "2025-01-10" } })
    const body = { child: { ...mira, born: "2025-02-01" }, reason: "slip" }
    const answer = await t.ask("POST", `/api/children/${child.id}/correction`, { body })
    expect(answer.statusCode).toBe(422)
    expect(answer.body).toContain("on or after the day of birth")
  })
})

describe("the list", () => {
  it("gives each child in one line, with what the engine says of it", async () => {
    const { child } = await t.addChild({ number: "A-7" })
    for (const [date, mm] of [
      ["2024-06-03", 23.9],
      ["2025-06-02", 24.35],
    ] as const) {
      const eye = { axialLength: { mm }, refraction: { sphere: -2, cycloplegic: true } }
      await t.ask("POST", `/api/children/${child.id}/visits`, { body: { date, right: eye, left: eye } })
    }
    const list = api.children.answer.parse((await t.ask("GET", "/api/children")).json())
    expect(list).toMatchObject({ total: 1, page: 1, pageSize: 50 })
    const [row] = list.children
    expect(row).toMatchObject({ id: child.id, number: "A-7", lastVisit: "2025-06-02", treatment: null })
    // 2017-03-14 to 2025-11-25 is 3178 days.
    expect(row?.ageYears).toBeCloseTo(3178 / 365.25, 10)
    expect(row?.finding.state).toBe("no-treatment")
    const assessment = (await t.ask("GET", `/api/children/${child.id}/assessment`)).json()
    expect(row?.growth).toEqual({ state: assessment.growth.state, mmPerYear: assessment.growth.mmPerYear })
  })

  it("is up to date after a visit and on the next day", async () => {
    const { child } = await t.addChild()
    const row = async () => (await t.ask("GET", "/api/children")).json().children[0]
    const before = await row()
    await t.ask("POST", `/api/children/${child.id}/visits`, { body: { date: "2025-11-01" } })
    expect((await row()).lastVisit).toBe("2025-11-01")
    t.moveTo("2025-11-26")
    expect((await row()).ageYears).toBeGreaterThan(before.ageYears)
  })

  it("is searched by name, number or birth date", async () => {
    await t.addChild({ number: "A-7" })
    await t.addChild({ name: "Tomas Brandl", born: "2016-05-01" })
    const found = async (search: string) =>
      (await t.ask("GET", `/api/children?search=${encodeURIComponent(search)}`))
        .json()
        .children.map(({ name }: { name: string }) => name)
    expect(await found("brandl")).toEqual(["Tomas Brandl"])
    expect(await found("A-7")).toEqual(["Mira Solberg"])
    expect(await found("2016-05-01")).toEqual(["Tomas Brandl"])
    expect(await found("nobody")).toEqual([])
  })

  it.each(["0", "-1", "1.5", "x", "1e9"])("has no page %s", async (page) => {
    const answer = await t.ask("GET", `/api/children?page=${page}`)
    expect(answer.statusCode).toBe(422)
    expect(answer.json().problems[0].path).toBe("page")
  })
})

describe("a child that is not there", () => {
  const unknown = "00000000-0000-4000-8000-000000000000"

  it.each(["", "/assessment"])("is not found: GET %s", async (rest) => {
    const answer = await t.ask("GET", `/api/children/${unknown}${rest}`)
    expect(answer.statusCode).toBe(404)
    expect(answer.json().problems[0].message).toBe("no such child")
  })

  it("gets no visit", async () => {
    const answer = await t.ask("POST", `/api/children/${unknown}/visits`, { body: { date: "2025-01-10" } })
    expect(answer.statusCode).toBe(404)
  })

  it.each(["1", "%00", "'%20OR%201=1", "..%2F..%2Fetc%2Fpasswd", "a".repeat(90)])(
    "can't be asked for by a made-up id: %s",
    async (id) => {
      expect((await t.ask("GET", `/api/children/${id}`)).statusCode).toBe(422)
    },
  )
})

describe("an assessment", () => {
  it("is of the day asked for, today otherwise", async () => {
    const { child } = await t.addChild()
    const asked = async (query: string) =>
      api.assessment.answer.parse((await t.ask("GET", `/api/children/${child.id}/assessment${query}`)).json())
    expect((await asked("")).asOf).toBe(TODAY)
    expect((await asked("?asOf=2025-01-10")).asOf).toBe("2025-01-10")
  })

  it("of a child too young is a refusal with its reason", async () => {
    const { child } = await t.addChild({ born: "2022-11-25" })
    const assessment = (await t.ask("GET", `/api/children/${child.id}/assessment`)).json()
    expect(assessment.refused).toMatch(/\d/)
    expect(assessment.growth.mmPerYear).toBeNull()
  })

  it("is refused for what is no day", async () => {
    const { child } = await t.addChild()
    const answer = await t.ask("GET", `/api/children/${child.id}/assessment?asOf=2025-02-30`)
    expect(faults(answer)).toEqual(["asOf: a day of the calendar written YYYY-MM-DD"])
  })
})
