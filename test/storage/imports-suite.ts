import { afterEach, beforeEach, describe, expect, it } from "vitest"
import { type Draft, migrate, type OpenDatabase, type PracticeRecord } from "../../src/record/index.js"
import { AT, AUTHOR, CHILD, child, common, newPractice, otherChild, visit } from "./drafts.js"

const IMPORT = "99999999-9999-4999-8999-999999999999"
const NEW = "33333333-3333-4333-8333-333333333333"
const mapping = {
  id: "m",
  title: "m",
  rowIs: "visit",
  dateOrder: "year-month-day",
  decimalSign: ".",
  columns: [],
} as const

const visitOf = (of: string, date: string, changes: object = {}): Draft =>
  ({ ...common, child: of, kind: "visit", body: { date }, ...changes }) as Draft

/** Imports of whole files, on every database: recorded in parts, taken back as one. */
export function importsSuite(name: string, openDatabase: () => Promise<OpenDatabase>): void {
  describe(`imports on ${name}`, () => {
    let database: OpenDatabase
    let record: PracticeRecord
    const earlier = "77777777-7777-4777-8777-777777777777"
    beforeEach(async () => {
      database = await openDatabase()
      await migrate(database)
      record = await newPractice(database, "practice-a")
      await record.append([child(), visit("2025-01-10", { id: earlier })])
    })
    const others: OpenDatabase[] = []
    afterEach(async () => {
      for (const opened of [database, ...others.splice(0)]) await opened.close()
    })

    const begin = (id = IMPORT, file = "Lengths 100%.csv") =>
      record.imports.start({ id, file, sha256: "0".repeat(64), mapping, author: AUTHOR, startedAt: AT })
    const take = async (id = IMPORT) => {
      let after: number | null = 0
      const left: string[] = []
      while (after !== null) {
        const done = await record.imports.takeBack({
          id,
          after,
          author: AUTHOR,
          at: AT,
          reason: "taken back",
        })
        left.push(...done.left.map((child) => child.name))
        after = done.next
      }
      return left
    }
    const filledIn = {
      date: "2025-01-10",
      right: { axialLength: { mm: 24.12 } },
      left: { axialLength: { mm: 24 } },
    }
    const imported = (): readonly (readonly Draft[])[] => [
      [otherChild(NEW, "Noor Haddad", "N-1"), visitOf(NEW, "2024-02-01"), visitOf(NEW, "2024-08-01")],
      [
        visitOf(CHILD, "2024-06-01"),
        visitOf(CHILD, "2025-01-10", { body: filledIn, supersedes: earlier, reason: "filled in" }),
      ],
    ]
    const recordAll = async () => {
      await begin()
      for (const part of imported()) expect((await record.imports.append(IMPORT, part)).kind).toBe("saved")
    }

    it("gives the same chain whether entries come together or one by one", async () => {
      const drafts = Array.from({ length: 120 }, (_, n) => {
        const id = `00000000-0000-4000-8000-${String(n).padStart(12, "0")}`
        const visits = ["2023-01-05", "2024-01-05"].map((date, k) =>
          visitOf(id, date, { id: `11111111-0000-4000-8000-${String(2 * n + k).padStart(12, "0")}` }),
        )
        return [otherChild(id, `Child ${n}`, `T-${n}`), ...visits]
      }).flat()
      const other = await newPractice(await another(), "practice-a")
      await other.append([child(), visit("2025-01-10", { id: earlier })])
      const [first] = (await record.entriesOf(CHILD)).map(({ hash }) => hash)
      expect((await other.entriesOf(CHILD))[0]?.hash).toBe(first)
      await record.append(drafts)
      for (const draft of drafts) await other.append([draft])
      expect(await record.verifyChain()).toEqual(await other.verifyChain())
      expect(await record.everyChild()).toEqual(await other.everyChild())
    })
    const another = async () => {
      const opened = await openDatabase()
      others.push(opened)
      await migrate(opened)
      return opened
    }
    it("lets two children exchange their numbers, and no two have one", async () => {
      const body = { name: "Noor Haddad", number: "A-7", born: "2016-05-01", sex: "male" }
      const taken = await record.append([
        otherChild(NEW, "Noor Haddad", "N-1"),
        otherChild(AUTHOR, "Ole", "N-1"),
      ])
      expect(taken).toMatchObject({ kind: "conflict", problems: [{ path: "number", value: "N-1" }] })
      await record.append([otherChild(NEW, "Noor Haddad", "N-1")])
      const without = child({
        id: undefined,
        supersedes: CHILD,
        reason: "renumbered",
        body: { name: "Mira Solberg", number: "N-2", born: "2017-03-14", sex: "female" },
      } as Partial<Draft>)
      const renamed = {
        ...otherChild(NEW, "", ""),
        id: undefined,
        body,
        supersedes: NEW,
        reason: "renumbered",
      }
      expect((await record.append([without, renamed as Draft])).kind).toBe("saved")
      expect((await record.child(NEW))?.number).toBe("A-7")
    })

    it("is taken back in one step: its children go, its visits go, what it filled in is as it was", async () => {
      await recordAll()
      const before = await record.courseOf(CHILD)
      expect(before?.visits.map(({ date }) => date)).toEqual(["2024-06-01", "2025-01-10"])
      expect(await record.imports.takeBackEffect({ id: IMPORT, after: 0 })).toMatchObject({
        children: 1,
        childrenGone: 1,
        entriesWithdrawn: 3,
        left: [],
      })
      expect(await record.imports.parts(IMPORT)).toBe(2)
      expect(await take()).toEqual([])
      expect(await record.child(NEW)).toBeNull()
      expect(await record.courseOf(NEW)).toBeNull()
      expect((await record.courseOf(CHILD))?.visits).toEqual([
        { date: "2025-01-10", right: { axialLength: { mm: 24.12 } } },
      ])
      expect((await record.children({ page: 1, pageSize: 10 })).total).toBe(1)
      expect(await record.verifyChain()).toMatchObject({ whole: true, entries: 12 })
      const rows = await record.everyChild()
      expect(await record.rebuild()).toBe(1)
      expect(await record.everyChild()).toEqual(rows)
    })

    it("does nothing the second time, as after a program that ended in the middle of it", async () => {
      await recordAll()
      await record.imports.takeBack({ id: IMPORT, after: 0, author: AUTHOR, at: AT, reason: "taken back" })
      await take()
      const { entries } = (await record.verifyChain()) as { entries: number }
      expect(await take()).toEqual([])
      expect(await record.verifyChain()).toMatchObject({ entries })
    })

    it("leaves and names a child of whom a person has recorded more since", async () => {
      await recordAll()
      await record.append([visitOf(NEW, "2025-03-01")])
      expect(await take()).toEqual(["Noor Haddad"])
      expect((await record.courseOf(NEW))?.visits).toHaveLength(3)
      expect((await record.courseOf(CHILD))?.visits).toHaveLength(1)
    })

    it("waits for an import that came on top of it, and goes once that is taken back", async () => {
      await recordAll()
      const second = "88888888-8888-4888-8888-888888888888"
      await begin(second, "later.csv")
      await record.imports.append(second, [visitOf(NEW, "2025-02-01")])
      expect(await take()).toEqual(["Noor Haddad"])
      expect(await take(second)).toEqual([])
      expect(await take()).toEqual([])
      expect(await record.child(NEW)).toBeNull()
    })

    it("is listed, the latest first, and found by its file", async () => {
      await begin()
      await begin("88888888-8888-4888-8888-888888888888", "other.csv")
      const found = async (search: string) =>
        (await record.imports.list({ search, page: 1, pageSize: 10 })).imports.map(({ file }) => file)
      expect(await found("")).toHaveLength(2)
      expect(await found("100%")).toEqual(["Lengths 100%.csv"])
      expect(await found("_")).toEqual([])
      expect(await record.imports.unfinished()).toHaveLength(2)
      await record.imports.change({ id: IMPORT, state: "done", at: AT })
      expect(await record.imports.unfinished()).toHaveLength(1)
      expect((await record.imports.one(IMPORT))?.state).toBe("done")
    })
  })
}
