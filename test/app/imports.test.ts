import { readdirSync } from "node:fs"
import { afterEach, beforeEach, describe, expect, it } from "vitest"
import type { ImportAtWork, ImportsAnswer, TakeBackAnswer } from "../../src/server/contract/imports.js"
import { problemsOf, type TestApp, testApp } from "./test-app.js"

const HEADINGS = "Number;Name;Born;Sex;Date;AL right mm;AL left mm"
const table = (rows: readonly string[], headings = HEADINGS) => `${[headings, ...rows].join("\n")}\n`
const NOOR = [
  "N-1;Noor Haddad;2016-05-01;male;2024-02-01;23,91;23,88",
  "N-1;Noor Haddad;2016-05-01;male;2024-08-01;24,10;24,05",
]
const COLUMNS = [
  { heading: "Number", field: "number" },
  { heading: "Name", field: "name" },
  { heading: "Born", field: "born" },
  { heading: "Sex", field: "sex" },
  { heading: "Date", field: "date" },
  { heading: "AL right mm", field: "right.axialLengthMm" },
  { heading: "AL left mm", field: "left.axialLengthMm" },
]
const mapping = {
  id: "lengths",
  title: "Lengths",
  rowIs: "visit",
  dateOrder: "year-month-day",
  decimalSign: ",",
  columns: COLUMNS,
} as const
const settled = ["date-order", "decimal-sign"]

describe("a table imported through the API", () => {
  let test: TestApp
  beforeEach(async () => {
    test = await testApp()
    await test.logIn()
  })
  afterEach(() => test.close())

  const upload = (text: string, name = "lengths.csv") =>
    test.ask("POST", `/api/imports?name=${encodeURIComponent(name)}`, {
      body: Buffer.from(text),
      headers: { "content-type": "application/octet-stream" },
    })
  const chosen = async (text: string, name?: string): Promise<ImportAtWork> => {
    const answer = await upload(text, name)
    if (answer.statusCode !== 201) throw new Error(answer.body)
    return answer.json()
  }
  const settledDown = async (id: string): Promise<ImportAtWork> => {
    for (;;) {
      const work: ImportAtWork = (await test.ask("GET", `/api/imports/${id}`)).json()
      if (!["checking", "recording", "taking-back"].includes(work.state)) return work
      await new Promise((next) => setTimeout(next, 5))
    }
  }
  const post = (id: string, what: string, body?: unknown) =>
    test.ask("POST", `/api/imports/${id}/${what}`, body === undefined ? {} : { body })
  const settle = (id: string, ...decisions: readonly unknown[]) => post(id, "settle", { decisions })
  const checked = async (text: string, name?: string) => {
    const { id } = await chosen(text, name)
    const answer = await post(id, "check", { mapping, settled })
    if (answer.statusCode !== 201) throw new Error(answer.body)
    return settledDown(id)
  }
  const imported = async (text: string, name?: string) => {
    const { id, state, failure } = await checked(text, name)
    expect([state, failure]).toEqual(["checked", null])
    await post(id, "run")
    return settledDown(id)
  }
  const list = async (query = ""): Promise<ImportsAnswer> =>
    (await test.ask("GET", `/api/imports${query}`)).json()
  const course = async (name: string) => {
    const { children } = await test.record.children({ search: name, page: 1, pageSize: 5 })
    return children[0] ? test.record.courseOf(children[0].id) : null
  }

  it("is looked at, checked and recorded as one import", async () => {
    const work = await chosen(table(NOOR))
    expect(work.table?.headings).toEqual(HEADINGS.split(";"))
    expect(work.table?.firstRows[0]?.[1]).toBe("Noor Haddad")
    const done = await imported(table(NOOR))
    expect(done).toMatchObject({
      state: "done",
      counts: { rows: 2, childrenNew: 1, childrenKnown: 0, visitsNew: 2, visitsAddedTo: 0, skipped: 0 },
    })
    const noor = await course("Noor")
    expect(noor?.visits.map(({ right }) => right?.axialLength?.mm)).toEqual([23.91, 24.1])
    expect(noor?.visits[0]?.sources?.[0]?.kind).toBe("table")
    expect(await list()).toMatchObject({
      total: 1,
      imports: [{ file: "lengths.csv", by: "Ada Lindqvist", state: "done" }],
    })
    expect(readdirSync(test.record.scratchFolder)).toEqual([])
  })

  it("changes nothing the second time", async () => {
    await imported(table(NOOR))
    const head = await test.record.head()
    expect(await imported(table(NOOR))).toMatchObject({
      state: "done",
      recorded: null,
      counts: { visitsNew: 0 },
    })
    expect(await test.record.head()).toBe(head)
    expect((await list()).total).toBe(1)
  })

  it("fills in a visit of a known child, never changes it, and says what it left", async () => {
    const { child } = await test.addChild({
      name: "Noor Haddad",
      number: "N-1",
      born: "2016-05-01",
      sex: "male",
    })
    await test.ask("POST", `/api/children/${child.id}/visits`, {
      body: { date: "2024-02-01", right: { axialLength: { mm: 23.5 } } },
    })
    const { check } = await checked(table(NOOR))
    expect(check).toMatchObject({ childrenNew: 0, visitsNew: 1, visitsAddedTo: 1 })
    expect(check?.problems.listed.map(({ line, why }) => [line, why])).toEqual([
      [2, expect.stringContaining("what is recorded stays")],
    ])
    await imported(table(NOOR))
    const [first] = (await course("Noor"))?.visits ?? []
    expect([first?.right?.axialLength?.mm, first?.left?.axialLength?.mm]).toEqual([23.5, 23.88])
  })

  it("is taken back in one step, once, and says before what that does", async () => {
    const { child } = await test.addChild({
      name: "Noor Haddad",
      number: "N-1",
      born: "2016-05-01",
      sex: "male",
    })
    await test.ask("POST", `/api/children/${child.id}/visits`, {
      body: { date: "2024-02-01", right: { axialLength: { mm: 23.91 } } },
    })
    const before = await course("Noor")
    const done = await imported(table([...NOOR, "N-2;Ida Berg;2015-03-03;female;2024-02-01;24,91;24,88"]))
    const id = done.recorded ?? ""
    const effect: TakeBackAnswer = (await test.ask("GET", `/api/imports/${id}/undo`)).json()
    expect(effect).toMatchObject({ children: 2, childrenGone: 1, visitsRestored: 1, left: [] })
    expect((await post(id, "undo")).statusCode).toBe(201)
    expect(await settledDown(id)).toMatchObject({ state: "undone", undone: { childrenGone: 1 } })
    expect(await course("Noor")).toEqual(before)
    expect(await course("Ida")).toBeNull()
    expect((await list()).imports[0]?.state).toBe("undone")
    expect((await post(id, "undo")).statusCode).toBe(409)
    expect(await test.record.verifyChain()).toMatchObject({ whole: true })
  })

  it("shuts the family's links of a child that goes with the import", async () => {
    const done = await imported(table(NOOR))
    const [noor] = (await test.record.children({ search: "Noor", page: 1, pageSize: 1 })).children
    const links = `/api/children/${noor?.id}/links`
    const made = await test.ask("POST", links, { body: { language: "en", days: 30 } })
    const url = String(made.json().links[0].path).replace("/f/", "/api/shared/")
    const open = (path: string) =>
      test.app.inject({ method: "POST", url: path, payload: { born: "2016-05-01" } })
    expect((await open(url)).statusCode).toBe(201)
    await post(done.recorded ?? "", "undo")
    await settledDown(done.recorded ?? "")
    const shut = await open(url)
    expect(shut.statusCode).toBe(404)
    expect(shut.body).toBe((await open("/api/shared/nonsense")).body)
    for (const paper of ["pdf", "calendar"])
      expect([paper, (await open(`${url}/${paper}`)).statusCode]).toEqual([paper, 404])
    expect((await test.ask("GET", links)).statusCode).toBe(404)
  })

  it("keeps the list of what was not taken after it is recorded, undecided rows included", async () => {
    await test.addChild({ name: "Nour Haddad", born: "2016-05-01", sex: "male" })
    const rows = [...NOOR, "N-4;Bo Lind;2015-03-03;male;2024-02-01;249,1;24,88"]
    const { id } = await checked(table(rows))
    await post(id, "run")
    expect(await settledDown(id)).toMatchObject({ state: "done", counts: { visitsNew: 1, skipped: 3 } })
    const csv = (await test.ask("GET", `/api/imports/${id}/problems`)).body
    expect(csv).toContain('"2","Noor Haddad","","nobody decided whose these 2 rows are"')
    expect(csv).toContain('"4","AL right mm","249,1"')
  })

  it("settles many near matches in one step, or none that is not asked about", async () => {
    const noor = await test.addChild({ name: "Nour Haddad", born: "2016-05-01", sex: "male" })
    const ida = await test.addChild({ name: "Ida Bergg", born: "2015-03-03", sex: "female" })
    const rows = [...NOOR, "N-2;Ida Berg;2015-03-03;female;2024-02-01;24,91;24,88"]
    const { id, check } = await checked(table(rows))
    const groups = check?.near.map(({ group }) => group) ?? []
    const decisions = [noor, ida].map(({ child }, at) => ({ group: groups[at], as: { child: child.id } }))
    const after: ImportAtWork = (await settle(id, ...decisions)).json()
    expect(after.check).toMatchObject({ nearCount: 0, visitsNew: 3, childrenNew: 0 })
    expect(after.check?.preview.map(({ state }) => state)).toEqual(["same", "same", "same"])
    expect((await settle(id, ...decisions)).statusCode).toBe(404)
    expect((await settle(id)).statusCode).toBe(422)
  })

  it("leaves and names a child that a person has recorded more of since", async () => {
    const { recorded } = await imported(table(NOOR))
    const [child] = (await test.record.children({ page: 1, pageSize: 5 })).children
    await test.ask("POST", `/api/children/${child?.id}/visits`, {
      body: { date: "2025-02-01", right: { axialLength: { mm: 24.3 } } },
    })
    await post(recorded ?? "", "undo")
    await settledDown(recorded ?? "")
    expect((await list()).imports[0]?.leftChildren).toEqual(["Noor Haddad"])
    expect((await course("Noor"))?.visits).toHaveLength(3)
  })

  it("asks a person about a child that is nearly one of the practice", async () => {
    const { child } = await test.addChild({ name: "Nour Haddad", born: "2016-05-01", sex: "male" })
    const work = await checked(table(NOOR))
    expect(work.check).toMatchObject({ nearCount: 1, visitsNew: 0, near: [{ rows: 2, mayBeNew: true }] })
    expect(work.check?.near[0]?.candidates.map((candidate) => candidate.child.name)).toEqual(["Nour Haddad"])
    const group = work.check?.near[0]?.group
    expect((await settle(work.id, { group, as: { child: crypto.randomUUID() } })).statusCode).toBe(404)
    const settledAs: ImportAtWork = (await settle(work.id, { group, as: { child: child.id } })).json()
    expect(settledAs.check).toMatchObject({ nearCount: 0, visitsNew: 2, childrenNew: 0 })
    await post(work.id, "run")
    await settledDown(work.id)
    expect((await test.record.courseOf(child.id))?.visits).toHaveLength(2)
  })

  it("records a near match as another child when a person says so", async () => {
    await test.addChild({ name: "Nour Haddad", born: "2016-05-01", sex: "male" })
    const work = await checked(table(NOOR))
    await settle(work.id, { group: work.check?.near[0]?.group, as: "new" })
    await post(work.id, "run")
    expect(await settledDown(work.id)).toMatchObject({ counts: { childrenNew: 1, visitsNew: 2 } })
    expect((await course("Noor"))?.visits).toHaveLength(2)
  })

  it("lists what is wrong by line, column and value, and takes the rest", async () => {
    const rows = [
      ...NOOR,
      "N-1;Noor Haddad;2016-05-01;male;2025-02-30;24,30;24,20",
      "N-1;Noor Haddad;2015-05-01;male;2025-03-01;24,30;24,20",
      "N-3;Ida Berg;;female;2024-02-01;24,91;24,88",
      "N-4;Bo Lind;2015-03-03;male;2024-02-01;249,1;24,88",
    ]
    const { check, id } = await checked(table(rows))
    const found = check?.problems.listed.map(({ line, heading }) => `${line} ${heading}`) ?? []
    expect(found).toContain("4 Date")
    expect(found).toContain("5 born")
    expect(found).toContain("6 Ida Berg")
    expect(found).toContain("7 AL right mm")
    const csv = await test.ask("GET", `/api/imports/${id}/problems`)
    expect(csv.headers["content-type"]).toContain("text/csv")
    expect(csv.body).toContain('"4","Date","2025-02-30"')
    await post(id, "run")
    expect((await settledDown(id)).counts?.visitsNew).toBe(3)
  })

  it("takes rows of one child wherever they stand in the file", async () => {
    const rows = [NOOR[0] ?? "", "N-2;Ida Berg;2015-03-03;female;2024-02-01;24,91;24,88", NOOR[1] ?? ""]
    const done = await imported(table(rows))
    expect(done.counts).toMatchObject({ childrenNew: 2, visitsNew: 3 })
    expect((await course("Noor"))?.visits).toHaveLength(2)
  })

  it("names what is open before it reads", async () => {
    const { id } = await chosen(table(NOOR))
    const without = { ...mapping, columns: COLUMNS.slice(2) }
    const answer = await post(id, "check", { mapping: without, settled })
    expect(answer.statusCode).toBe(422)
    expect(problemsOf(answer)[0]?.message).toContain("Which column says whose row it is")
    expect((await post(id, "run")).statusCode).toBe(409)
  })

  it("uses a saved mapping when the headings agree", async () => {
    const answer = await test.ask("POST", "/api/rules/mapping", { body: { body: mapping } })
    expect(answer.statusCode).toBe(201)
    const work = await chosen(table(NOOR))
    expect(work.savedMapping).toBe("Lengths")
    expect(work.questions).toEqual([])
    expect((await chosen(table(NOOR, HEADINGS.replace("AL left", "AL other")))).savedMapping).toBeNull()
  })

  it("is at the desk alone: another person is told who is there", async () => {
    await chosen(table(NOOR))
    const ben = await test.app.inject({
      method: "POST",
      url: "/api/session",
      payload: { name: "ben", password: "correct horse battery staple" },
    })
    const cookie = String(ben.headers["set-cookie"]).split(";")[0] ?? ""
    const second = () =>
      test.app.inject({
        method: "POST",
        url: "/api/imports?name=b.csv",
        headers: { cookie, "content-type": "application/octet-stream" },
        payload: Buffer.from(table(NOOR)),
      })
    const refused = await second()
    expect(refused.statusCode).toBe(409)
    expect(problemsOf(refused)[0]?.message).toBe(
      "Ada Lindqvist is about to import lengths.csv; one import at a time",
    )
    test.pass(31 * 60 * 1000)
    expect(
      (await test.app.inject({ method: "GET", url: "/api/imports", headers: { cookie } })).statusCode,
    ).toBe(401)
  })

  it("refuses a body that is no file, and leaves nothing behind when it is discarded", async () => {
    const json = await test.ask("POST", "/api/imports?name=a.csv", { body: { a: 1 } })
    expect(json.statusCode).toBe(415)
    const { id } = await chosen(table(NOOR))
    expect(readdirSync(test.record.scratchFolder)).toHaveLength(1)
    expect((await test.ask("DELETE", `/api/imports/${id}`)).statusCode).toBe(204)
    expect(readdirSync(test.record.scratchFolder)).toEqual([])
    expect((await test.ask("GET", `/api/imports/${id}`)).statusCode).toBe(404)
  })

  it("stops when it is cancelled and takes back what it had recorded", async () => {
    const rows = Array.from({ length: 1500 }, (_, n) => {
      const name = `${"abcdefghijklmnop"[n % 16]}${n.toString(36)}x Qu${(n * 7919).toString(36)}z`
      return `K-${n};${name};${2008 + (n % 9)}-0${1 + (n % 9)}-1${n % 10};female;2024-02-01;24,${10 + (n % 80)};24,00`
    })
    const { id, check } = await checked(table(rows))
    expect(check?.childrenNew).toBeGreaterThan(1000)
    await post(id, "run")
    while ((await test.record.children({ page: 1, pageSize: 1 })).total === 0)
      await new Promise((next) => setTimeout(next, 1))
    await post(id, "cancel")
    expect((await settledDown(id)).state).toBe("cancelled")
    expect((await test.record.children({ page: 1, pageSize: 1 })).total).toBe(0)
    expect((await list()).imports[0]?.state).toBe("cancelled")
    expect(await test.record.verifyChain()).toMatchObject({ whole: true })
  }, 120_000)
})
