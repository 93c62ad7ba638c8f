import { sql } from "kysely"
import { afterEach, beforeEach, describe, expect, it } from "vitest"
import { migrate, type OpenDatabase, type Outbox, type PracticeRecord } from "../../src/record/index.js"
import { AT, AUTHOR, CHILD, child, newPractice } from "./drafts.js"

type NewMessage = Parameters<Outbox["add"]>[0]

export const newMessage = (changes: Partial<NewMessage> = {}): NewMessage => ({
  key: `${CHILD} visit-ahead 2025-07-10`,
  child: CHILD,
  kind: "visit-ahead",
  channel: "email",
  recipient: "parent@example.org",
  name: "Ines Solberg",
  language: "en",
  subject: "Time to book a visit",
  text: "Hello",
  due: "2025-07-10",
  plannedFor: "2025-06-20",
  messageId: "<one@example.org>",
  ...changes,
})

/** What every database does with messages: one of each, and no state lost or jumped. */
export function outboxSuite(name: string, openDatabase: () => Promise<OpenDatabase>): void {
  describe(`outbox on ${name}`, () => {
    let database: OpenDatabase
    let record: PracticeRecord
    let outbox: Outbox
    beforeEach(async () => {
      database = await openDatabase()
      await migrate(database)
      record = await newPractice(database, "practice-a")
      outbox = record.outbox
      await record.append([child()])
    })
    afterEach(() => database.close())

    const first = async () => {
      const [message] = (await outbox.list({ page: 1, pageSize: 10 })).messages
      if (!message) throw new Error("the outbox is empty")
      return message
    }

    it("takes a message of each key once", async () => {
      expect(await outbox.add(newMessage(), AT)).toBe(true)
      expect(await outbox.add(newMessage({ messageId: "<two@example.org>" }), AT)).toBe(false)
      expect(await outbox.counts()).toMatchObject({ waiting: 1, sent: 0 })
    })

    it("lets only one of two take the same message for sending", async () => {
      await outbox.add(newMessage(), AT)
      const { id } = await first()
      const claim = () => outbox.change({ id, from: ["waiting"], state: "sending", at: AT })
      expect([await claim(), await claim()]).toEqual([true, false])
    })

    it("finds what was under way as unknown, and never as waiting", async () => {
      await outbox.add(newMessage(), AT)
      const { id } = await first()
      await outbox.change({ id, from: ["waiting"], state: "sending", at: AT })
      expect(await outbox.interrupted(AT)).toBe(1)
      expect(await outbox.message(id)).toMatchObject({ state: "unknown", problem: "interrupted" })
      expect(await outbox.nextEmail("2099-01-01T00:00:00.000Z")).toBeNull()
    })

    it("keeps every state a message was in, with who brought it there", async () => {
      await outbox.add(newMessage(), AT)
      const { id } = await first()
      await outbox.change({ id, from: ["waiting"], state: "cancelled", at: AT, by: AUTHOR })
      expect((await outbox.events(id)).map(({ state, by }) => [state, by])).toEqual([
        ["waiting", null],
        ["cancelled", AUTHOR],
      ])
      await expect(sql.raw("DELETE FROM outbox_events").execute(database.queries)).rejects.toThrow(
        "append-only",
      )
    })

    it("gives the next e-mail in the order of waiting, and none before its time", async () => {
      await outbox.add(newMessage(), AT)
      await outbox.add(newMessage({ key: "b", messageId: "<b@example.org>" }), "2025-01-10T11:00:00.000Z")
      const { id } = (await outbox.nextEmail(AT)) ?? { id: "" }
      await outbox.change({
        id,
        from: ["waiting"],
        state: "waiting",
        at: AT,
        problem: "put-off",
        nextAttemptAt: "2025-01-10T12:00:00.000Z",
      })
      expect((await outbox.nextEmail("2025-01-10T11:59:00.000Z"))?.key).toBe("b")
      expect((await outbox.nextEmail("2025-01-10T12:00:00.000Z"))?.id).toBe(id)
    })

    it("rewrites only what waits", async () => {
      await outbox.add(newMessage(), AT)
      const { id } = await first()
      const wording = { ...newMessage(), recipient: "new@example.org" }
      await outbox.rewrite({ id, wording })
      expect((await first()).recipient).toBe("new@example.org")
      await outbox.change({ id, from: ["waiting"], state: "sent", at: AT })
      await outbox.rewrite({ id, wording: { ...wording, recipient: "late@example.org" } })
      expect((await first()).recipient).toBe("new@example.org")
    })

    it.each([
      ["solberg", 1],
      ["A-7 mira", 1],
      ["PARENT@example", 1],
      ["100%", 0],
      ["nobody", 0],
    ])("is searched by child, family and address: %s", async (search, total) => {
      await outbox.add(newMessage(), AT)
      expect((await outbox.list({ search, page: 1, pageSize: 10 })).total).toBe(total)
    })

    it("hands a channel over as one list, which can be taken back", async () => {
      await outbox.add(newMessage({ channel: "sms", recipient: "+353 1 555 0100" }), AT)
      await outbox.add(newMessage({ key: "b", messageId: "<b@example.org>" }), AT)
      expect(await outbox.handOver({ channel: "sms", list: "list-1", at: AT, by: AUTHOR })).toBe(1)
      expect(await outbox.ofList("list-1")).toHaveLength(1)
      expect(await outbox.counts()).toMatchObject({ waiting: 1, sent: 1 })
      expect(await outbox.takeBack({ list: "list-1", at: AT, by: AUTHOR })).toBe(1)
      expect(await outbox.ofList("list-1")).toEqual([])
      expect(await outbox.counts()).toMatchObject({ waiting: 2, sent: 0 })
    })

    it("shows a practice nothing of another one's messages", async () => {
      const other = await newPractice(database, "practice-b")
      await outbox.add(newMessage(), AT)
      const { id } = await first()
      expect(await other.outbox.message(id)).toBeNull()
      expect(await other.outbox.change({ id, from: ["waiting"], state: "sent", at: AT })).toBe(false)
      expect(await other.outbox.add(newMessage(), AT)).toBe(true)
    })

    it("knows the contact in force of each family, and leaves it out of the course", async () => {
      const contact = { name: "Ines Solberg", relation: "mother", language: "es", reachedBy: "none" } as const
      const common = { child: CHILD, author: AUTHOR, recordedAt: AT }
      const saved = await record.append([{ ...common, kind: "family", body: contact }])
      if (saved.kind !== "saved") throw new Error("not saved")
      const [entry] = saved.entries
      await record.append([
        {
          ...common,
          kind: "family",
          body: { ...contact, language: "en" },
          supersedes: entry?.id,
          reason: "speaks English",
        },
      ])
      expect([...(await record.familyContacts())]).toEqual([[CHILD, { ...contact, language: "en" }]])
      expect(JSON.stringify(await record.courseOf(CHILD))).not.toContain("Ines")
    })
  })
}
