import { sql } from "kysely"
import { afterEach, beforeEach, describe, expect, it } from "vitest"
import { migrate, type NewInboxItem, type OpenDatabase, type PracticeRecord } from "../../src/record/index.js"
import { AT, AUTHOR, CHILD, child, newPractice, visit } from "./drafts.js"

const ITEM = "33333333-3333-4333-8333-333333333333"
const BYTES = Buffer.from("an object")

/** What every database does with what comes from outside: one of each, and no figure without its row. */
export function inboxSuite(name: string, openDatabase: () => Promise<OpenDatabase>): void {
  describe(`inbox on ${name}`, () => {
    let database: OpenDatabase
    let record: PracticeRecord
    let sha256: string
    beforeEach(async () => {
      database = await openDatabase()
      await migrate(database)
      record = await newPractice(database, "practice-a")
      await record.append([child()])
      sha256 = await store(record)
    })
    afterEach(() => database.close())

    const store = (into: PracticeRecord) =>
      into.addFile({ mediaType: "application/dicom", bytes: BYTES, author: AUTHOR, recordedAt: AT })

    const item = (changes: Partial<NewInboxItem> = {}): NewInboxItem => ({
      id: ITEM,
      key: "1.2.3",
      file: "length.dcm",
      sha256,
      mediaType: "application/dicom",
      contentHash: "c",
      sentBy: "BIOMETER",
      receivedAt: AT,
      identity: { name: "Mira Sólberg" },
      identityKey: "mira",
      content: { course: {} },
      day: "2025-01-10",
      search: "length.dcm Mira Sólberg",
      state: "waiting",
      why: "no-child",
      child: null,
      result: null,
      reason: null,
      changedAt: AT,
      changedBy: null,
      ...changes,
    })
    const taken = {
      id: ITEM,
      from: ["waiting"],
      state: "taken",
      why: null,
      child: CHILD,
      result: { entries: [] },
      reason: null,
      changedAt: AT,
      changedBy: AUTHOR,
    } as const

    it("keeps an object as it was received, once", async () => {
      await record.inbox.add(item())
      expect(await record.inbox.byKey("1.2.3")).toMatchObject({
        file: "length.dcm",
        identity: { name: "Mira Sólberg" },
      })
      await expect(record.inbox.add(item({ id: "other" }))).rejects.toThrow()
      expect(await record.inbox.counts()).toEqual({ waiting: 1, taken: 0, "set-aside": 0 })
    })

    it("records an object with its figures, or neither", async () => {
      await record.inbox.add(item())
      const head = await record.head()
      const refused = await record.inbox.change(taken, [visit("2025-01-10"), visit("2025-01-10")])
      expect(refused.kind).toBe("conflict")
      expect(await record.head()).toBe(head)
      expect(await record.inbox.item(taken.id)).toMatchObject({ state: "waiting" })
      expect((await record.inbox.change(taken, [visit("2025-01-10")])).kind).toBe("saved")
      expect(await record.inbox.item(taken.id)).toMatchObject({ state: "taken", child: CHILD })
      await expect(record.inbox.change(taken, [visit("2025-02-10")])).rejects.toThrow("in no state to change")
      expect((await record.courseOf(CHILD))?.visits).toHaveLength(1)
    })

    it("needs the bytes that it speaks of", async () => {
      await expect(record.inbox.add(item({ sha256: "0".repeat(64) }))).rejects.toThrow()
    })

    it("knows which child a person put an identity under, while it stays there", async () => {
      await record.inbox.add(item())
      expect(await record.inbox.matchedByPerson("mira")).toEqual([])
      await record.inbox.change(taken)
      expect(await record.inbox.matchedByPerson("mira")).toEqual([CHILD])
      await record.inbox.change({ ...taken, from: ["taken"], state: "waiting", child: null })
      expect(await record.inbox.matchedByPerson("mira")).toEqual([])
    })

    it("does not learn from what the program matched by itself", async () => {
      await record.inbox.add(item({ state: "taken", child: CHILD }))
      expect(await record.inbox.matchedByPerson("mira")).toEqual([])
    })

    it("keeps every state it was in", async () => {
      await record.inbox.add(item())
      await record.inbox.change(taken)
      expect((await record.inbox.events(taken.id)).map(({ state, by }) => [state, by])).toEqual([
        ["waiting", null],
        ["taken", AUTHOR],
      ])
      await expect(sql.raw("UPDATE inbox_events SET state = 'x'").execute(database.queries)).rejects.toThrow(
        "append-only",
      )
    })

    it.each([
      ["mira SOLBERG", 1],
      ["length.dcm", 1],
      ["A-7", 1],
      ["100%", 0],
      ["nobody", 0],
    ])("is searched by what the file says and the child it is under: %s", async (search, total) => {
      await record.inbox.add(item({ state: "taken", child: CHILD }))
      const found = await record.inbox.list({ search, page: 1, pageSize: 10 })
      expect(found.total).toBe(total)
      expect(found.items.map(({ childName }) => childName)).toEqual(total ? ["Mira Solberg"] : [])
    })

    it("shows a practice nothing of another one's", async () => {
      const other = await newPractice(database, "practice-b")
      await record.inbox.add(item())
      expect(await other.inbox.item(taken.id)).toBeNull()
      expect(await other.inbox.byKey("1.2.3")).toBeNull()
      expect((await other.inbox.list({ page: 1, pageSize: 10 })).total).toBe(0)
      await store(other)
      expect((await other.inbox.add(item())).kind).toBe("saved")
    })
  })
}
