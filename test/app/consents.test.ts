import { createHash } from "node:crypto"
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest"
import type { ChildView } from "../../src/server/contract/child.js"
import { faults, problemsOf, type TestApp, TODAY, testApp } from "./test-app.js"

let t: TestApp
let childUrl: string
beforeAll(async () => {
  t = await testApp()
  await t.logIn()
})
afterAll(() => t.close())
beforeEach(async () => {
  childUrl = `/api/children/${(await t.addChild()).child.id}`
})

const OCTETS = { "content-type": "application/octet-stream" }
const store = (mediaType: string, bytes: Buffer | string) =>
  t.ask("POST", `/api/files?mediaType=${encodeURIComponent(mediaType)}`, {
    body: Buffer.from(bytes),
    headers: OCTETS,
  })
const stored = async (mediaType: string, bytes: Buffer | string): Promise<string> => {
  const answer = await store(mediaType, bytes)
  if (answer.statusCode !== 201) throw new Error(answer.body)
  return answer.json().sha256
}
const post = (rest: string, body: unknown) => t.ask("POST", `${childUrl}/${rest}`, { body })
const consentIn = ({ entries }: ChildView) => entries.findLast(({ kind }) => kind === "consent")

const DRAWING =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 150" width="300" height="150"><path d="M 1,2 C 3,4 5,6 7,8" stroke-width="2.25" stroke="black" fill="none" stroke-linecap="round"></path><circle r="1.5" cx="9" cy="9" fill="black"></circle></svg>'
const PDF = "%PDF-1.7\n%%EOF\n"
const TEXT = "What the family read.\n"
const covers = { kind: "atropine", concentrationPercent: 0.05 }
const plain = { date: TODAY, covers }
const signedBody = async () => ({
  ...plain,
  by: { name: "Ines Solberg", relation: "mother" },
  form: "screen",
  assent: "given",
  wording: { id: "drops", version: "1", sha256: await stored("text/plain", TEXT) },
})

describe("a file", () => {
  it("is stored under the hash of its bytes and given back as it was", async () => {
    const sha256 = await stored("application/pdf", PDF)
    expect(sha256).toBe(createHash("sha256").update(PDF).digest("hex"))
    const answer = await t.ask("GET", `/api/files/${sha256}`)
    expect(answer.rawPayload).toEqual(Buffer.from(PDF))
    expect(answer.headers["content-type"]).toBe("application/pdf")
  })

  it("is given as a download in a sandbox, whose type nobody may guess", async () => {
    const { headers } = await t.ask("GET", `/api/files/${await stored("image/svg+xml", DRAWING)}`)
    expect(headers["content-disposition"]).toMatch(/^attachment; filename="file-[0-9a-f]{12}\.svg"$/)
    expect(headers["content-security-policy"]).toBe("sandbox; default-src 'none'")
    expect(headers["x-content-type-options"]).toBe("nosniff")
    expect(headers["cache-control"]).toBe("no-store")
  })

  it.each([
    ["a page called a PDF", "application/pdf", "<html>"],
    ["text called a PNG", "image/png", "PNG"],
    ["a PDF called a JPEG", "image/jpeg", PDF],
    ["a drawing with a script", "image/svg+xml", "<svg xmlns='x'><script>alert(1)</script></svg>"],
    ["a drawing that does something when shown", "image/svg+xml", '<svg onload="alert(1)"></svg>'],
    [
      "a drawing that links elsewhere",
      "image/svg+xml",
      '<svg><a href="https://elsewhere.example"></a></svg>',
    ],
    ["bytes called text", "text/plain", Buffer.from([0xff, 0xfe, 0x00])],
    ["text with a null in it", "text/plain", "a\u0000b"],
    ["nothing", "text/plain", ""],
  ])("is refused when it is %s", async (_, mediaType, bytes) => {
    const answer = await store(mediaType, bytes)
    expect(answer.statusCode).toBe(422)
    expect(problemsOf(answer)[0]?.message).toMatch(/^The file must be /)
  })

  it("of more than 10 MB is refused in words, one of exactly 10 MB is kept", async () => {
    const most = Buffer.concat([Buffer.from(PDF), Buffer.alloc(10_000_000 - PDF.length)])
    expect((await store("application/pdf", most)).statusCode).toBe(201)
    expect(faults(await store("application/pdf", Buffer.concat([most, Buffer.from("x")])))).toEqual([
      "file: a file of at most 10 MB",
    ])
  })

  it("of an unknown type is refused with the types there are", async () => {
    expect(faults(await store("text/html", "<p>"))[0]).toMatch(/^mediaType: one of application\/pdf, /)
  })

  it("sent as a form or as JSON is refused", async () => {
    const send = (type: string) =>
      t.ask("POST", "/api/files?mediaType=text%2Fplain", { body: "{}", headers: { "content-type": type } })
    expect((await send("text/plain")).statusCode).toBe(415)
    expect((await send("application/json")).statusCode).toBe(415)
  })

  it("that is not there is not found", async () => {
    expect((await t.ask("GET", `/api/files/${"0".repeat(64)}`)).statusCode).toBe(404)
    expect((await t.ask("GET", "/api/files/..%2Frecord.sqlite")).statusCode).toBe(422)
  })
})

describe("a consent", () => {
  it("is kept as plainly as the course file has it", async () => {
    const answer = await post("consents", plain)
    expect(answer.statusCode).toBe(201)
    expect(answer.json().course.consents).toEqual([plain])
  })

  it("drawn on screen keeps its signature beside the course", async () => {
    const signature = { kind: "drawn", file: await stored("image/svg+xml", DRAWING) }
    const body = await signedBody()
    const view: ChildView = (await post("consents", { ...body, signature })).json()
    expect(consentIn(view)?.body).toEqual({ ...body, signature })
    expect(view.course.consents).toEqual([body])
  })

  it("may be signed with a typed name", async () => {
    const signature = { kind: "typed", name: "Ines Solberg" }
    expect((await post("consents", { ...(await signedBody()), signature })).statusCode).toBe(201)
  })

  it("may be a scan of a paper whose text is no longer known", async () => {
    const { wording: _, ...body } = await signedBody()
    const signature = { kind: "scan", file: await stored("application/pdf", PDF) }
    expect((await post("consents", { ...body, form: "paper", signature })).statusCode).toBe(201)
  })

  it("is refused when the file of its signature is not stored", async () => {
    const signature = { kind: "drawn", file: "0".repeat(64) }
    const answer = await post("consents", { ...(await signedBody()), signature })
    expect(answer.statusCode).toBe(422)
    expect(faults(answer)).toEqual(["signature.file: a file that was stored before"])
  })

  it("is refused when its signature is a file of the wrong kind", async () => {
    const signature = { kind: "scan", file: await stored("text/plain", TEXT) }
    expect(faults(await post("consents", { ...(await signedBody()), form: "paper", signature }))).toEqual([
      "signature.file: a file of the type application/pdf, image/png, image/jpeg",
    ])
  })

  it("signed on screen is refused without the text that was signed, without who signed, and in the wrong form, all at once", async () => {
    const signature = { kind: "typed", name: "Ines Solberg" }
    const answer = await post("consents", { ...plain, form: "paper", signature })
    expect(faults(answer).toSorted()).toEqual([
      "by.name: the name of who signed",
      "by.relation: how who signed is related to the child",
      "form: screen, since the signature is typed",
      "wording.sha256: the text that was signed, stored before as text/plain",
    ])
  })

  it("tells faults of the course and of the signature together, and keeps nothing", async () => {
    const answer = await post("consents", { date: "2030-01-01", covers, signature: { kind: "stamp" } })
    expect(faults(answer)).toEqual([`date: a day up to ${TODAY}`, "signature.kind: drawn, scan or typed"])
    expect((await t.ask("GET", childUrl)).json().entries).toHaveLength(1)
  })

  it("with a field nobody knows is still refused", async () => {
    expect((await post("consents", { ...plain, signd: true })).statusCode).toBe(422)
  })
})

describe("a signed consent", () => {
  const signed = async () => {
    const signature = { kind: "drawn", file: await stored("image/svg+xml", DRAWING) }
    const entry = consentIn(
      (await post("consents", { ...(await signedBody()), date: "2025-06-01", signature })).json(),
    )
    if (!entry) throw new Error("no consent")
    return { entry, fields: entry.body as object, amend: `entries/${entry.id}/amendment` }
  }

  it("is withdrawn with a reason and keeps its signature", async () => {
    const { fields, amend } = await signed()
    const answer = await post(amend, { fields: { ...fields, until: TODAY }, reason: "the family moved away" })
    expect(answer.statusCode).toBe(201)
    expect(consentIn(answer.json())).toMatchObject({
      body: { ...fields, until: TODAY },
      reason: "the family moved away",
    })
  })

  it("keeps its signature when the amendment leaves it out", async () => {
    const { fields, amend } = await signed()
    const { signature, ...rest } = fields as { signature: unknown }
    const answer = await post(amend, { fields: { ...rest, until: TODAY }, reason: "moved away" })
    expect(consentIn(answer.json())?.body).toMatchObject({ signature })
  })

  it("can't be made one to another strength or wording: that is signed anew", async () => {
    const { fields, amend } = await signed()
    const other = { ...fields, covers: { kind: "atropine", concentrationPercent: 0.1 }, wording: null }
    const answer = await post(amend, { fields: other, reason: "a slip" })
    expect(answer.statusCode).toBe(422)
    expect(problemsOf(answer).map(({ path }) => path)).toEqual([
      "fields.covers.concentrationPercent",
      "fields.wording.id",
      "fields.wording.version",
      "fields.wording.sha256",
    ])
  })

  it("that was plain may be put right as any entry", async () => {
    const entry = consentIn((await post("consents", plain)).json())
    const fields = { date: TODAY, covers: { kind: "atropine", concentrationPercent: 0.01 } }
    const answer = await post(`entries/${entry?.id}/amendment`, { fields, reason: "a slip" })
    expect(answer.json().course.consents).toEqual([fields])
  })
})

describe("a wording of the practice", () => {
  const wording = {
    id: "drops",
    version: "2025-12",
    from: "2025-12-01",
    language: "en",
    title: "Consent to {treatment}",
    sections: [{ heading: "In figures", text: "{benefit}" }],
    isMaterial: true,
  }
  const record = (body: object) => t.ask("POST", "/api/rules/wording", { body: { body } })

  it("is recorded, and in force with the rules", async () => {
    expect((await record(wording)).statusCode).toBe(201)
    expect((await t.ask("GET", "/api/practice")).json().rules.consentWordings).toContainEqual(wording)
  })

  it("needs a version that was never used, not even by the wording that ships", async () => {
    expect(faults(await record(wording))).toEqual([
      "body.version: a version that has not been used before, or the very name of the one it translates",
    ])
    expect(faults(await record({ ...wording, version: "1" }))).toEqual([
      "body.version: a version that has not been used before, or the very name of the one it translates",
    ])
  })

  it("is recorded once when the same request comes twice", async () => {
    const sent = { id: crypto.randomUUID(), body: { ...wording, version: "twice" } }
    await t.ask("POST", "/api/rules/wording", { body: sent })
    expect((await t.ask("POST", "/api/rules/wording", { body: sent })).statusCode).toBe(201)
  })

  it("is refused with a name that nothing is known for, or for something that is not consented to", async () => {
    const sections = [{ heading: "In figures", text: "{benefits} and {cost}" }]
    const answer = await record({ ...wording, id: "lunch", version: "3", sections })
    expect(problemsOf(answer).map(({ path, value }) => [path, value])).toEqual([
      ["body.id", "lunch"],
      ["body.sections", "{benefits}"],
    ])
  })

  it("that is material makes a duty to consent again", async () => {
    const consent = { ...plain, date: "2025-11-01", wording: { id: "drops", version: "1" } }
    await post("treatments", { from: "2025-11-02", kind: "atropine", concentrationPercent: 0.05 })
    await post("consents", consent)
    t.moveTo("2025-12-02")
    const { children } = (await t.ask("GET", "/api/children")).json()
    t.moveTo(TODAY)
    const child = children.find(({ id }: { id: string }) => childUrl.endsWith(id))
    expect(child.nextDuty).toEqual({
      step: "consent to atropine 0.05 % again",
      due: "2025-12-01",
      state: "overdue",
    })
  })
})
