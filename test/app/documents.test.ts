import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { slowedCourse } from "../e2e/courses.js"
import { hasTool, textOf, toolOn } from "../report/outside-tools.js"
import { faults, problemsOf, type TestApp, testApp } from "./test-app.js"

const TODAY = "2026-11-25"

let t: TestApp
let mira = ""
let tomas = ""
let wayan = ""
let untreated = ""
beforeAll(async () => {
  t = await testApp()
  t.moveTo(TODAY)
  await t.logIn()
  mira = await treated("Mira Solberg", "E-1042")
  tomas = await treated("Tomás Brandl", "E-1043")
  wayan = await treated("ꦮꦪꦤ꧀", "E-1044")
  untreated = (await t.addChild({ name: "Ada Quill" })).child.id
})
afterAll(() => t.close())

async function treated(name: string, number: string): Promise<string> {
  const { child } = await t.addChild({ name, number, ...slowedCourse.child })
  const record = async (path: string, body: unknown) => {
    const answer = await t.ask("POST", `/api/children/${child.id}/${path}`, { body })
    if (answer.statusCode !== 201) throw new Error(answer.body)
  }
  for (const visit of slowedCourse.visits) await record("visits", visit)
  for (const treatment of slowedCourse.treatments ?? []) await record("treatments", treatment)
  return child.id
}

const paper = (kind: string, query = "", child = mira) =>
  t.ask("GET", `/api/children/${child}/documents/${kind}${query}`)
const batch = (body: object) => t.ask("POST", "/api/documents/batch", { body })

describe("a paper of a child", () => {
  it("is content for a page, in the language asked for", async () => {
    const [english, chinese] = await Promise.all([paper("family"), paper("family", "?language=zh-Hans")])
    expect(english.json()).toMatchObject({
      kind: "family",
      language: "en",
      date: TODAY,
      letterhead: { practice: "Quiet Harbour", lines: [] },
      foot: expect.stringMatching(/\w/),
    })
    expect(english.json().blocks.length).toBeGreaterThan(5)
    expect(chinese.json().title).toMatch(/\p{Script=Han}/u)
    expect(chinese.json().blocks).toHaveLength(english.json().blocks.length)
  })

  it("is in the family's own language where nothing else is asked", async () => {
    const [person] = await t.record.people()
    const contact = { name: "Ana Brandl", relation: "mother", language: "es", reachedBy: "none" } as const
    await t.record.append([
      {
        kind: "family",
        child: tomas,
        body: contact,
        author: person?.id ?? "",
        recordedAt: `${TODAY}T09:00:00Z`,
      },
    ])
    expect((await paper("family", "", tomas)).json().language).toBe("es")
    // A pharmacist reads the order, so it is in the language of whoever sends it.
    expect((await paper("order", "", tomas)).json().language).toBe("en")
  })

  it("is bytes of a PDF under a name that tells nothing of the child", async () => {
    const answer = await paper("family", "?as=pdf&paper=letter")
    expect(answer.statusCode, answer.body.slice(0, 300)).toBe(200)
    expect(answer.headers["content-type"]).toBe("application/pdf")
    expect(answer.headers["content-disposition"]).toBe(`inline; filename="family-${TODAY}.pdf"`)
    expect(answer.headers["cache-control"]).toBe("no-store")
    expect(answer.rawPayload.subarray(0, 5).toString()).toBe("%PDF-")
  })

  it.skipIf(!hasTool("pdfinfo"))("is on the paper asked for (needs poppler-utils)", async () => {
    const { rawPayload } = await paper("family", "?as=pdf&paper=letter")
    expect(toolOn(rawPayload, { program: "pdfinfo" }).out).toContain("612 x 792 pts (letter)")
    const a4 = await paper("family", "?as=pdf")
    expect(toolOn(a4.rawPayload, { program: "pdfinfo" }).out).toContain("(A4)")
  })

  it("carries the code of the family's page once a link is open, and of none before", async () => {
    const codes = async () =>
      (await paper("family")).json().blocks.filter(({ kind }: { kind: string }) => kind === "code")
    expect(await codes()).toEqual([])
    await t.ask("POST", `/api/children/${mira}/links`, { body: { language: "en", days: 30 } })
    expect(await codes()).toHaveLength(1)
  })

  it("is refused with the letters that no font holds", async () => {
    const answer = await paper("family", "?as=pdf", wayan)
    expect(answer.statusCode).toBe(422)
    expect(problemsOf(answer)[0]?.message).toMatch(/^no font at hand holds “ꦮ”/)
  })

  it("is refused with its reason, in the language of whoever asks", async () => {
    const english = await paper("order", "?language=zh-Hans", untreated)
    expect(english.statusCode).toBe(422)
    expect(problemsOf(english)[0]?.message).toMatch(/[a-z]/)
    expect(problemsOf(english)[0]?.message).not.toMatch(/\p{Script=Han}/u)
  })

  it.each([
    ["?language=fr", "language: one of en, es, zh-Hans"],
    ["?paper=a5", "paper: one of a4, letter"],
    ["?months=0", "months: a whole number from 1 to 120"],
    ["?treatment=atropine", "concentration: the strength of the drops, % w/v"],
    ["?concentration=0.05", "concentration: absent: only atropine has a strength"],
    ["?treatment=atropine&concentration=2", "concentration: a strength above 0 and up to 1.5 % w/v"],
    ["?order=-1", "order: a whole number from 0"],
  ])("is not made of %s", async (query, fault) => {
    const answer = await paper("estimate", query)
    expect(answer.statusCode).toBe(422)
    expect(faults(answer)).toEqual([fault])
  })

  it("is there for a child and a kind that there are, and for nobody who is not logged in", async () => {
    expect((await paper("diploma")).statusCode).toBe(422)
    expect((await paper("family", "", crypto.randomUUID())).statusCode).toBe(404)
    expect((await t.app.inject(`/api/children/${mira}/documents/family`)).statusCode).toBe(401)
  })
})

describe("a batch of papers", () => {
  it.skipIf(!hasTool("pdftotext"))(
    "is one PDF, each in its family's language, with who has none and why on the last page (needs poppler-utils)",
    async () => {
      const answer = await batch({ children: [mira, tomas, wayan], kind: "family" })
      expect(answer.statusCode, answer.body.slice(0, 500)).toBe(200)
      expect(answer.headers["content-disposition"]).toBe(`inline; filename="family-batch-${TODAY}.pdf"`)
      expect(answer.headers["x-papers-not-printed"]).toBe("1")
      const text = textOf(answer.rawPayload)
      for (const word of ["Mira Solberg", "Tomás Brandl", "Página 1 de", "Page 1 of"])
        expect(text).toContain(word)
      expect(text).toMatch(
        /Not printed, and why.* 1 of the 3 papers asked for could not be made\..*E-1044.*no font at hand holds U\+A9AE/,
      )
    },
  )

  it("is refused with every reason when there is nothing to print", async () => {
    const answer = await batch({ children: [wayan], kind: "family" })
    expect(answer.statusCode).toBe(422)
    expect(problemsOf(answer).map(({ message }) => message)).toEqual([
      "there is nothing to print for any of these children",
      expect.stringMatching(/\(E-1044\): no font at hand holds U\+A9AE/),
    ])
  })

  it.each<[string, object, string]>([
    ["no child", { children: [], kind: "family" }, "children: at least one child"],
    ["one twice", { children: ["x", "x"], kind: "family" }, "children[0]: a UUID"],
    [
      "too many",
      { children: Array.from({ length: 201 }, () => crypto.randomUUID()), kind: "family" },
      "children: at most 200 children",
    ],
  ])("is not made of %s", async (_, body, fault) => {
    const answer = await batch(body)
    expect(answer.statusCode).toBe(422)
    expect(faults(answer)).toContain(fault)
  })

  it("is for nobody who is not logged in, and of children there are", async () => {
    const body = { children: [crypto.randomUUID()], kind: "family" }
    expect((await batch(body)).statusCode).toBe(404)
    const answer = await t.app.inject({ method: "POST", url: "/api/documents/batch", payload: body })
    expect(answer.statusCode).toBe(401)
  })
})
