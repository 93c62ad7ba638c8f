import { afterEach, beforeEach, describe, expect, it } from "vitest"
import type { LinksAnswer, SharedAnswer } from "../../src/server/contract/family-links.js"
import { type TestApp, testApp } from "./test-app.js"

const DAY_MS = 86_400_000

let test: TestApp
let childId: string
const BORN = "2017-03-14"

beforeEach(async () => {
  test = await testApp()
  await test.logIn()
  childId = (await test.addChild({ name: "Ilse Vandermeer", born: BORN })).child.id
})
afterEach(() => test.close())

async function made(body: object = { language: "en", days: 30 }): Promise<LinksAnswer["links"][number]> {
  const answer = await test.ask("POST", `/api/children/${childId}/links`, { body })
  expect(answer.statusCode).toBe(201)
  const [link] = answer.json<LinksAnswer>().links
  if (!link) throw new Error("no link was made")
  return link
}

/** As a family asks: with no session at all. */
const open = (path: string, body: object) =>
  test.app.inject({ method: "POST", url: path.replace("/f/", "/api/shared/"), payload: body })

describe("a link to the family's page", () => {
  it("says nothing of the child in its address", async () => {
    const { path, url } = await made()
    expect(path).toMatch(/^\/f\/[\w-]{22}\.[\w-]{22}$/)
    expect(url).toMatch(/^https?:\/\/[^/]+\/f\//)
    for (const word of ["Ilse", "Vandermeer", childId, BORN]) expect(url).not.toContain(word)
  })
  it("opens after the child's birth date and without a log-in, in the language asked for", async () => {
    const { path } = await made({ language: "es", days: 30 })
    const opened = await open(path ?? "", { born: BORN })
    expect(opened.statusCode).toBe(201)
    expect(opened.json<SharedAnswer>()).toMatchObject({ language: "es", document: { language: "es" } })
    const chinese = await open(path ?? "", { born: BORN, language: "zh-Hans" })
    expect(chinese.json<SharedAnswer>().document.language).toBe("zh-Hans")
    const [listed] = (await test.ask("GET", `/api/children/${childId}/links`)).json<LinksAnswer>().links
    expect(listed).toMatchObject({ openedCount: 2, state: "open" })
  })
  it("gives the same as a PDF", async () => {
    const { path } = await made()
    const pdf = await open(`${path}/pdf`, { born: BORN, paper: "letter" })
    expect(pdf.statusCode).toBe(200)
    expect(pdf.rawPayload.subarray(0, 5).toString()).toBe("%PDF-")
  })
  it("answers alike to a wrong date, a forged token, one expired and one taken back", async () => {
    const { path = "", id } = await made()
    const wrong = await open(path ?? "", { born: "2017-03-15" })
    const forged = await open(`/f/${id}.${"A".repeat(22)}`, { born: BORN })
    const other = await open("/f/nonsense", { born: BORN })
    await test.ask("DELETE", `/api/children/${childId}/links/${id}`)
    const revoked = await open(path ?? "", { born: BORN })
    const second = await made({ language: "en", days: 1 })
    test.pass(DAY_MS + 1)
    const expired = await open(second.path ?? "", { born: BORN })
    const answers = [wrong, forged, other, revoked, expired]
    expect(answers.map(({ statusCode }) => statusCode)).toEqual(answers.map(() => 404))
    expect(new Set(answers.map(({ body }) => body)).size).toBe(1)
  })
  it("locks after five wrong dates, many at once included, and a right one clears the count", async () => {
    const { path } = await made()
    for (let tried = 0; tried < 4; tried++) await open(path ?? "", { born: "2017-01-01" })
    expect((await open(path ?? "", { born: BORN })).statusCode).toBe(201)
    await Promise.all(Array.from({ length: 8 }, () => open(path ?? "", { born: "2017-01-01" })))
    expect((await open(path ?? "", { born: BORN })).statusCode).toBe(404)
    const [listed] = (await test.ask("GET", `/api/children/${childId}/links`)).json<LinksAnswer>().links
    expect(listed).toMatchObject({ state: "locked", path: null, url: null })
  })
  it("refuses a life without end, a language not spoken, a child not here, and who is not logged in", async () => {
    const asked = (body: object, id = childId) => test.ask("POST", `/api/children/${id}/links`, { body })
    expect((await asked({ language: "en", days: 400 })).statusCode).toBe(422)
    expect((await asked({ language: "tlh", days: 30 })).statusCode).toBe(422)
    expect((await asked({ language: "en", days: 30 }, crypto.randomUUID())).statusCode).toBe(404)
    const anonymous = await test.app.inject({ method: "GET", url: `/api/children/${childId}/links` })
    expect(anonymous.statusCode).toBe(401)
  })
})

describe("the calendar of a child", () => {
  it("comes in the language asked for, without a word about health, and behind the link too", async () => {
    const staff = await test.ask("GET", `/api/children/${childId}/calendar?language=es`)
    expect(staff.statusCode).toBe(200)
    expect(staff.headers["content-type"]).toContain("text/calendar")
    expect(staff.body).toContain("SUMMARY;LANGUAGE=es:")
    expect(staff.body).not.toMatch(/eye|ojo|atropin|myopia|miop|Ilse/i)
    const { path } = await made({ language: "es", days: 30 })
    const shared = await open(`${path}/calendar`, { born: BORN })
    expect(shared.body).toBe(staff.body)
    expect((await open(`${path}/calendar`, { born: "2017-01-01" })).statusCode).toBe(404)
  })
})
