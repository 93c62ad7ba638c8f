import { afterEach, beforeEach, describe, expect, it } from "vitest"
import type { Visit } from "../../src/engine/course.js"
import type { Fragment } from "../../src/interop/intake/fragment.js"
import type { InboxAnswer, InboxItemAnswer, TakeInboxBody } from "../../src/server/contract/inbox.js"
import { inTurn } from "../../src/server/in-turn.js"
import { takeRead } from "../../src/server/intake/take-file.js"
import type { From } from "../../src/server/intake/taken.js"
import { faults, problemsOf, type TestApp, TODAY, testApp } from "./test-app.js"

const MIRA = { name: "SOLBERG MIRA", born: "2017-03-14" }
const DAY = "2025-11-20"
const INSTRUMENT: From = { kind: "instrument", title: "BIOMETER" }
const length = (mm: number, date = DAY): Visit => ({
  date,
  right: { axialLength: { mm, device: "Biometer 3" } },
})

let test: TestApp
let clock: { nowMs: () => number; today: () => string }
let child: string
beforeEach(async () => {
  test = await testApp()
  await test.logIn()
  child = (await test.addChild()).child.id
  clock = { nowMs: () => Date.parse(`${TODAY}T10:00:00Z`), today: () => TODAY }
})
afterEach(() => test.close())

const fragment = (visit: Visit | readonly Visit[], changes: Partial<Fragment> = {}): Fragment => ({
  identity: MIRA,
  course: { visits: [visit].flat() as readonly Visit[] },
  documents: [],
  source: { kind: "dicom", id: "1.2.3", device: "Biometer 3" },
  notes: [],
  ...changes,
})

/** What a reader would have made of a file, taken as it came. */
async function send(
  sent: Fragment,
  { bytes = JSON.stringify(sent), from = INSTRUMENT, makesChildren = false } = {},
) {
  const context = { record: test.record, clock, oneAtATime: inTurn() }
  const read = { file: "IM0001", fragments: [sent], skipped: [] }
  const taken = await takeRead(context, {
    file: "IM0001",
    bytes: Buffer.from(bytes),
    from,
    read,
    makesChildren,
  })
  const [one] = taken
  if (!one) throw new Error("nothing was taken")
  return one
}

const course = async () => {
  const found = await test.record.courseOf(child)
  if (!found) throw new Error("no course")
  return found
}
const visitOf = async (date = DAY) => (await course()).visits.find((visit) => visit.date === date)
const item = async (id: string | undefined, query = ""): Promise<InboxItemAnswer> =>
  (await test.ask("GET", `/api/inbox/${id}${query}`)).json()
const list = async (query = ""): Promise<InboxAnswer> => (await test.ask("GET", `/api/inbox${query}`)).json()
const take = (id: string | undefined, body: TakeInboxBody) =>
  test.ask("POST", `/api/inbox/${id}/take`, { body })
const undo = (id: string | undefined, body = {}) => test.ask("POST", `/api/inbox/${id}/undo`, { body })
const recordVisit = async (visit: Visit) => {
  const answer = await test.ask("POST", `/api/children/${child}/visits`, { body: visit })
  expect(answer.statusCode).toBe(201)
}
const chainIsWhole = async () => expect(await test.record.verifyChain()).toMatchObject({ whole: true })

describe("what is certain is recorded at once", () => {
  it("as a new visit, with the object it came from, by the instruments", async () => {
    const taken = await send(fragment(length(24.12)))
    expect(taken).toMatchObject({ outcome: "recorded", child })
    expect(await visitOf()).toMatchObject({
      right: { axialLength: { mm: 24.12 } },
      sources: [{ kind: "dicom", id: "1.2.3", device: "Biometer 3" }],
    })
    const entries = await test.record.entriesOf(child)
    const people = await test.record.people()
    expect(people.find(({ id }) => id === entries.at(-1)?.author)?.name).toBe("Instruments")
    await send(fragment(length(24.2, "2025-11-21"), { source: { kind: "dicom", id: "1.2.4" } }))
    expect((await test.record.people()).filter(({ name }) => name === "Instruments")).toHaveLength(1)
  })

  it("into the visit of the day, which keeps what it has", async () => {
    await recordVisit({ date: DAY, right: { intraocularPressure: { mmHg: 15 } } })
    expect((await send(fragment(length(24.12)))).outcome).toBe("recorded")
    expect(await visitOf()).toMatchObject({
      right: { intraocularPressure: { mmHg: 15 }, axialLength: { mm: 24.12 } },
    })
    expect((await test.record.entriesOf(child)).at(-1)?.reason).toBe("axial length from Biometer 3")
  })

  it("with its paper, which can be fetched", async () => {
    const bytes = Buffer.from("%PDF-1.4 a paper %%EOF")
    const document = { date: DAY, title: "Report", mediaType: "application/pdf", bytes } as const
    await send(fragment([], { documents: [document] }))
    const entry = (await test.record.entriesOf(child)).at(-1)
    expect(entry).toMatchObject({ kind: "document", body: { title: "Report", date: DAY } })
    const file = entry?.kind === "document" ? entry.body.file : ""
    expect((await test.ask("GET", `/api/files/${file}`)).rawPayload).toEqual(bytes)
  })

  it("and is seen by the list of today at once", async () => {
    const before = (await test.ask("GET", "/api/children")).json().children[0].lastVisit
    await send(fragment(length(24.12)))
    const after = (await test.ask("GET", "/api/children")).json().children[0].lastVisit
    expect([before, after]).toEqual([null, DAY])
    expect((await test.ask("GET", "/api/today")).statusCode).toBe(200)
  })

  it("once, however often it comes and however it is encoded", async () => {
    const first = await send(fragment(length(24.12)))
    const head = await test.record.head()
    expect(await send(fragment(length(24.12)))).toMatchObject({ outcome: "known", inboxId: first.inboxId })
    expect(await send(fragment(length(24.12)), { bytes: "another transfer syntax" })).toMatchObject({
      outcome: "known",
    })
    expect(await test.record.head()).toBe(head)
    expect((await list()).total).toBe(1)
  })

  it("and adds nothing where all of it was typed before", async () => {
    await recordVisit(length(24.12))
    const head = await test.record.head()
    expect(await send(fragment(length(24.12)))).toMatchObject({ outcome: "known" })
    expect(await test.record.head()).toBe(head)
  })
})

describe("what is not certain waits, and nothing of it is recorded", () => {
  const waits = async (sent: Fragment, why: string) => {
    const head = await test.record.head()
    const taken = await send(sent)
    expect(taken.outcome).toBe("waiting")
    expect(await test.record.head()).toBe(head)
    expect(await item(taken.inboxId)).toMatchObject({ state: "waiting", why })
    return taken
  }

  it("when no child is named so", async () => {
    const { inboxId } = await waits(
      fragment(length(24.12), { identity: { name: "Ivo Brandt", born: "2016-01-02" } }),
      "no-child",
    )
    expect((await item(inboxId)).candidates).toEqual([])
  })

  it("when a name is one letter off: suggested, never taken", async () => {
    const { inboxId } = await waits(
      fragment(length(24.12), { identity: { ...MIRA, name: "Mira Solbreg" } }),
      "near-child",
    )
    expect((await item(inboxId)).candidates).toMatchObject([
      { id: child, why: "the same birth date; the name differs by one letter" },
    ])
  })

  it("when a figure is recorded otherwise", async () => {
    await recordVisit(length(24.5))
    const { inboxId } = await waits(fragment(length(24.12)), "contradiction")
    const opened = await item(inboxId, `?child=${child}`)
    expect(opened.compared?.visits[0]).toMatchObject({
      recorded: { right: { axialLength: { mm: 24.5 } } },
      contradictions: [{ path: "right.axialLength" }],
    })
    expect(opened.whyInWords).toBe(`recorded otherwise: axial length of the right eye (${DAY})`)
  })

  it.each([
    ["before birth", length(24.12, "2016-01-01")],
    ["in the future", length(24.12, "2026-01-01")],
    ["out of limits", length(99)],
  ])("when it is %s, with the reason", async (_, visit) => {
    const { why } = await waits(fragment(visit), "rules")
    expect(why).toContain(visit.date)
  })

  it("when it holds more than measurements", async () => {
    const treatments = [{ from: "2025-01-10", kind: "atropine", concentrationPercent: 0.05 }] as const
    const { inboxId } = await waits(
      fragment(length(24.12), { course: { visits: [length(24.12)], treatments } }),
      "confirm",
    )
    expect((await item(inboxId, `?child=${child}`)).compared).toMatchObject({
      others: [{ kind: "treatment", body: { from: "2025-01-10" } }],
      entries: 2,
    })
    const answer = await take(inboxId, { child })
    expect(answer.statusCode).toBe(201)
    expect((await course()).treatments).toHaveLength(1)
    await chainIsWhole()
  })

  it("when the same object comes with other content", async () => {
    await send(fragment(length(24.12)))
    const { inboxId } = await waits(fragment(length(25)), "other-content")
    expect(await send(fragment(length(25)))).toMatchObject({ outcome: "known", inboxId })
  })

  it("keeps the bytes, which can be fetched under the name they came with", async () => {
    const { inboxId } = await waits(fragment(length(24.12), { identity: {} }), "no-child")
    const answer = await test.ask("GET", `/api/inbox/${inboxId}/file`)
    expect(answer.headers["content-disposition"]).toContain('filename="IM0001"')
    expect(answer.rawPayload.toString()).toContain("24.12")
  })
})

it("skips what holds nothing", async () => {
  expect(await send(fragment([]))).toMatchObject({ outcome: "skipped" })
  expect((await list()).total).toBe(0)
})

describe("a person decides", () => {
  const stranger = { name: "Mira Solbreg", born: "2017-03-14" }
  const waiting = async (changes: Partial<Fragment> = {}) =>
    (await send(fragment(length(24.12), { identity: stranger, ...changes }))).inboxId

  it("puts an object under a child; later ones of exactly that name follow, until it is undone", async () => {
    const first = await waiting()
    expect((await take(first, { child })).json()).toMatchObject({ state: "taken", child: { id: child } })
    const next = (uid: string, date: string) =>
      send(fragment(length(24.2, date), { identity: stranger, source: { kind: "dicom", id: uid } }))
    expect(await next("2", "2025-11-21")).toMatchObject({ outcome: "recorded", child })
    expect(
      await send(
        fragment(length(24.2, "2025-11-23"), {
          identity: { ...stranger, sex: "male" },
          source: { kind: "dicom", id: "4" },
        }),
      ),
    ).toMatchObject({ outcome: "waiting" })
    expect((await undo(first)).statusCode).toBe(201)
    expect(await next("3", "2025-11-22")).toMatchObject({ outcome: "waiting" })
  })

  it("lets what waits under exactly the same name follow, but for what contradicts", async () => {
    const first = await waiting()
    const iop = { date: DAY, right: { intraocularPressure: { mmHg: 14 } } }
    const same = await waiting({ course: { visits: [iop] }, source: { kind: "dicom", id: "2" } })
    const against = await waiting({ course: { visits: [length(25)] }, source: { kind: "dicom", id: "3" } })
    expect((await item(first)).alike).toBe(2)
    await take(first, { child })
    expect(await item(same)).toMatchObject({ state: "taken", child: { id: child } })
    expect(await item(against)).toMatchObject({ state: "waiting", why: "contradiction" })
    expect(await visitOf()).toMatchObject({
      right: { axialLength: { mm: 24.12 }, intraocularPressure: { mmHg: 14 } },
    })
  })

  it("makes a new child of it, and both go when it is taken back", async () => {
    const id = await waiting()
    const made = { name: "Mira Solbreg", born: "2017-03-14", sex: "female" } as const
    const answer = await take(id, { newChild: made })
    expect(answer.statusCode).toBe(201)
    const { child: under, undo: lines } = answer.json() as InboxItemAnswer
    expect(under?.name).toBe("Mira Solbreg")
    expect(lines.map(({ text }) => text)).toEqual([
      `the visit of ${DAY} is withdrawn`,
      "the child that was made for it is withdrawn",
    ])
    expect((await undo(id)).statusCode).toBe(201)
    expect((await test.ask("GET", "/api/children")).json().total).toBe(1)
    await chainIsWhole()
  })

  it("keeps what is recorded, or corrects it with a reason; undone, all is as before", async () => {
    await recordVisit({ ...length(24.5), left: { axialLength: { mm: 24 } } })
    const { inboxId: id } = await send(
      fragment({ ...length(24.12), left: { intraocularPressure: { mmHg: 14 } } }),
    )
    expect(faults(await take(id, { child }))).toEqual(["settle: keep or correct"])
    expect(faults(await take(id, { child, settle: "correct" }))).toEqual([
      "reason: why it is corrected, in words",
    ])
    const before = await visitOf()
    await take(id, { child, settle: "keep" })
    expect(await visitOf()).toMatchObject({
      right: { axialLength: { mm: 24.5 } },
      left: { axialLength: { mm: 24 }, intraocularPressure: { mmHg: 14 } },
    })
    await undo(id)
    expect(await visitOf()).toEqual(before)
    await take(id, { child, settle: "correct", reason: "typed wrongly" })
    expect(await visitOf()).toMatchObject({ right: { axialLength: { mm: 24.12 } } })
    expect((await test.record.entriesOf(child)).at(-1)?.reason).toBe("typed wrongly")
    await undo(id, { reason: "it was right" })
    expect(await visitOf()).toEqual(before)
    await chainIsWhole()
  })

  it("takes back only what still stands as it was recorded", async () => {
    const { inboxId } = await send(fragment(length(24.12)))
    const entry = (await test.record.entriesOf(child)).at(-1)
    await test.ask("POST", `/api/children/${child}/visits/${entry?.id}/correction`, {
      body: { visit: length(24.3), reason: "measured again" },
    })
    const answer = await undo(inboxId)
    expect(answer.statusCode).toBe(409)
    expect(problemsOf(answer)[0]?.message).toContain("was changed since")
    expect(await visitOf()).toMatchObject({ right: { axialLength: { mm: 24.3 } } })
  })

  it("takes back one of two objects of a visit and leaves the other", async () => {
    const { inboxId } = await send(fragment(length(24.12)))
    await send(
      fragment(
        { date: DAY, right: { intraocularPressure: { mmHg: 14 } } },
        {
          source: { kind: "dicom", id: "9.9" },
        },
      ),
    )
    await undo(inboxId)
    expect(await visitOf()).toEqual({
      date: DAY,
      right: { intraocularPressure: { mmHg: 14 } },
      sources: [{ kind: "dicom", id: "9.9" }],
    })
  })

  it("sets an object aside, and takes that back", async () => {
    const id = await waiting()
    const aside = (body: object) => test.ask("POST", `/api/inbox/${id}/set-aside`, { body })
    expect((await aside({ reason: " " })).statusCode).toBe(422)
    expect((await aside({ reason: "a test object" })).json()).toMatchObject({ state: "set-aside" })
    expect((await aside({ reason: "again" })).statusCode).toBe(409)
    expect((await list()).counts).toEqual({ waiting: 0, taken: 0, "set-aside": 1 })
    expect((await undo(id)).json()).toMatchObject({ state: "waiting", why: "undone" })
  })

  it("finds an object by what the file says, the child and the state", async () => {
    await waiting()
    await send(fragment(length(24.3), { source: { kind: "dicom", id: "5" } }))
    expect((await list("?search=solbreg")).total).toBe(1)
    expect((await list("?search=im0001&state=taken")).items).toMatchObject([
      { child: { name: "Mira Solberg" } },
    ])
    expect((await list("?state=elsewhere")) as unknown).toMatchObject({ problems: [{ path: "state" }] })
  })

  it("must name one child, known or new, and an object that is there", async () => {
    const id = await waiting()
    expect((await take(id, {})).statusCode).toBe(422)
    const nobody = "99999999-9999-4999-8999-999999999999"
    expect((await take(id, { child: nobody })).statusCode).toBe(404)
    expect((await take(nobody, { child })).statusCode).toBe(404)
    const newChild = { name: "Ivo", born: "2030-01-01", sex: "male" } as const
    expect((await take(id, { newChild })).statusCode).toBe(422)
    expect((await item(id)).state).toBe("waiting")
  })
})

describe("whole records", () => {
  const records = (changes: Partial<Fragment> = {}) =>
    fragment(length(24.12), {
      identity: { number: "K-1", born: "2016-05-01", sex: "male" },
      source: { kind: "course-file", id: "sha" },
      course: {
        visits: [length(24.12)],
        treatments: [{ from: "2025-01-10", kind: "atropine", concentrationPercent: 0.05 }],
      },
      ...changes,
    })

  it("make a child where that is wanted, and say when a number stands for its name", async () => {
    const taken = await send(records(), { makesChildren: true })
    expect(taken).toMatchObject({ outcome: "recorded", why: expect.stringContaining("gives no name") })
    expect(await test.record.courseOf(taken.child ?? "")).toMatchObject({
      treatments: [{ kind: "atropine" }],
      visits: [{ date: DAY }],
    })
  })

  it("of an instrument, or of a child not told completely, make none", async () => {
    const dicom = records({ source: { kind: "dicom", id: "7" } })
    expect((await send(dicom, { makesChildren: true })).outcome).toBe("waiting")
    const sexless = records({ identity: { number: "K-2", born: "2016-05-01" } })
    expect((await send(sexless, { makesChildren: true })).outcome).toBe("waiting")
  })
})

it("reads a dropped file and says what became of it", async () => {
  const post = (payload: Buffer, file = "notes.txt") =>
    test.ask("POST", `/api/inbox/files?file=${file}`, {
      body: payload,
      headers: { "content-type": "application/octet-stream" },
    })
  const answer = await post(Buffer.from("nothing a reader knows"))
  expect(answer.statusCode).toBe(201)
  expect(answer.json().taken).toMatchObject([{ file: "notes.txt", outcome: "skipped" }])
  expect((await post(Buffer.alloc(50_000_001))).statusCode).toBe(413)
})
