import { sql } from "kysely"
import { afterEach, beforeEach, describe, expect, it } from "vitest"
import { type Draft, migrate, type OpenDatabase, type PracticeRecord } from "../../src/record/index.js"
import { AUTHOR, CHILD, child, common, newPractice, otherChild, visit, withoutProtection } from "./drafts.js"

/** What every database does with entries: recorded whole, corrected by new ones, in one chain. `openDatabase` gives a fresh, empty one each time. */
export function entriesSuite(name: string, openDatabase: () => Promise<OpenDatabase>): void {
  describe(`entries on ${name}`, () => {
    let database: OpenDatabase
    let record: PracticeRecord
    beforeEach(async () => {
      database = await openDatabase()
      await migrate(database)
      record = await newPractice(database, "practice-a")
    })
    afterEach(() => database.close())

    const messages = async (drafts: readonly Draft[]) => {
      const saved = await record.append(drafts)
      return saved.kind === "saved" ? [] : saved.problems.map(({ message }) => message)
    }

    describe("recording", () => {
      it("gives back what was recorded, to the last digit", async () => {
        await record.append([child(), visit("2025-01-10")])
        const [, entry] = await record.entriesOf(CHILD)
        expect(entry?.body).toEqual({ date: "2025-01-10", right: { axialLength: { mm: 24.12 } } })
      })

      it("records all drafts of a request or none of them", async () => {
        await record.append([child()])
        const saved = await record.append([visit("2025-01-10"), visit("2025-01-10"), visit("2025-03-01")])
        expect(saved.kind).toBe("conflict")
        expect(await record.entriesOf(CHILD)).toHaveLength(1)
      })

      it("tells every draft that can't be recorded, not only the first", async () => {
        await record.append([child()])
        expect(
          await messages([
            visit("2025-01-10"),
            visit("2025-01-10"),
            visit("2025-02-01", { supersedes: AUTHOR, reason: "slip" }),
          ]),
        ).toEqual(["a visit on 2025-01-10 is already recorded", "no such visit to correct"])
      })

      it("refuses a second visit of one child on one day", async () => {
        await record.append([child(), visit("2025-01-10")])
        expect(await messages([visit("2025-01-10")])).toEqual(["a visit on 2025-01-10 is already recorded"])
      })

      it("refuses an entry about a child it does not know", async () => {
        expect(await messages([visit("2025-01-10")])).toEqual(["no such child"])
      })

      it("refuses a number that another child has", async () => {
        await record.append([child()])
        expect(await messages([otherChild(AUTHOR, "Tomas Brandl", "A-7")])).toEqual([
          "the number A-7 belongs to Mira Solberg",
        ])
      })

      it("refuses an author who is nobody of the practice", async () => {
        await expect(record.append([child({ author: CHILD })])).rejects.toThrow(/FOREIGN KEY|foreign key/)
        expect(await record.entriesOf(CHILD)).toEqual([])
      })
    })

    describe("the same id twice", () => {
      const id = "33333333-3333-4333-8333-333333333333"

      it("is one entry when the content is the same", async () => {
        await record.append([child()])
        const first = await record.append([visit("2025-01-10", { id })])
        const second = await record.append([
          visit("2025-01-10", { id, recordedAt: "2025-01-11T00:00:00.000Z" }),
        ])
        expect(second).toEqual(first)
        expect(await record.entriesOf(CHILD)).toHaveLength(2)
      })

      it("is one entry when ten requests arrive at once", async () => {
        await record.append([child()])
        const saved = await Promise.all(
          Array.from({ length: 10 }, () => record.append([visit("2025-01-10", { id })])),
        )
        expect(saved.every(({ kind }) => kind === "saved")).toBe(true)
        expect(await record.entriesOf(CHILD)).toHaveLength(2)
      })

      it("is refused when the content differs", async () => {
        await record.append([child(), visit("2025-01-10", { id })])
        expect(await messages([visit("2025-02-10", { id })])).toEqual([
          `the id ${id} already stands for another entry`,
        ])
      })
    })

    describe("correcting", () => {
      const wrong = "33333333-3333-4333-8333-333333333333"
      const corrected = (changes: Partial<Draft> = {}) =>
        visit("2025-01-10", {
          body: { date: "2025-01-10", right: { axialLength: { mm: 24.21 } } },
          supersedes: wrong,
          reason: "digits exchanged",
          ...changes,
        } as Partial<Draft>)
      beforeEach(async () => {
        await record.append([child(), visit("2025-01-10", { id: wrong })])
      })

      it("keeps the old value and shows the new one", async () => {
        await record.append([corrected()])
        expect((await record.courseOf(CHILD))?.visits[0]?.right?.axialLength?.mm).toBe(24.21)
        expect((await record.entriesOf(CHILD)).map(({ reason }) => reason)).toEqual([
          null,
          null,
          "digits exchanged",
        ])
      })

      it("needs a reason", async () => {
        expect(await messages([corrected({ reason: "  " })])).toEqual(["a correction needs a reason"])
      })

      it("is refused for an entry that no longer holds", async () => {
        await record.append([corrected()])
        expect(await messages([corrected()])).toEqual(["already corrected on 2025-01-10"])
      })

      it("can't turn a visit into something else", async () => {
        const draft = { ...common, kind: "consent", body: { date: "2025-01-10", covers: { kind: "none" } } }
        expect(await messages([{ ...draft, supersedes: wrong, reason: "slip" } as Draft])).toEqual([
          "no such consent to correct",
        ])
      })

      it("leaves the day free again after a withdrawal", async () => {
        const withdrawal = {
          ...common,
          kind: "withdrawal",
          body: {},
          supersedes: wrong,
          reason: "other child",
        }
        await record.append([withdrawal as Draft])
        expect((await record.courseOf(CHILD))?.visits).toEqual([])
        expect(await messages([visit("2025-01-10")])).toEqual([])
      })

      const withdrawn = (supersedes: string): Draft =>
        ({ ...common, kind: "withdrawal", body: {}, supersedes, reason: "no child of ours" }) as Draft

      it("does not let the child itself be withdrawn while anything of it holds", async () => {
        expect(await messages([withdrawn(CHILD)])).toEqual(["1 entry of this child still holds"])
      })

      it("lets a child go of whom nothing else holds, and its number with it", async () => {
        expect(await messages([withdrawn(wrong), withdrawn(CHILD)])).toEqual([])
        expect(await record.child(CHILD)).toBeNull()
        expect(await record.courseOf(CHILD)).toBeNull()
        expect((await record.coursesOf([CHILD])).size).toBe(0)
        expect(await record.entriesOf(CHILD)).toHaveLength(4)
        expect(await messages([visit("2025-03-10")])).toEqual(["no such child"])
        const other = "55555555-5555-4555-8555-555555555555"
        expect(await messages([otherChild(other, "Noor", "A-7")])).toEqual([])
        expect(await record.rebuild()).toBe(1)
        expect(await record.verifyChain()).toMatchObject({ whole: true })
      })
    })

    describe("nothing is ever overwritten", () => {
      beforeEach(async () => {
        await record.append([child(), visit("2025-01-10")])
      })

      it.each([
        ["an update", "UPDATE entries SET body = '{}'"],
        ["a deletion", "DELETE FROM entries"],
      ])("the database itself refuses %s", async (_, statement) => {
        await expect(sql.raw(statement).execute(database.queries)).rejects.toThrow("append-only")
      })

      it("the database itself refuses a replacement", async () => {
        const row = await database.queries.selectFrom("entries").selectAll().executeTakeFirstOrThrow()
        const replacing = database.queries.replaceInto("entries").values({ ...row, body: "{}" })
        await expect(replacing.execute()).rejects.toThrow("append-only")
      })
    })

    describe("the chain", () => {
      beforeEach(async () => {
        await record.append([child(), visit("2025-01-10"), visit("2025-07-10")])
      })

      it("is whole after recording", async () => {
        const entries = await record.entriesOf(CHILD)
        expect(await record.verifyChain()).toEqual({ whole: true, entries: 3, head: entries.at(-1)?.hash })
      })

      it("is apart for each practice", async () => {
        const other = await newPractice(database, "practice-b")
        expect(await other.verifyChain()).toEqual({ whole: true, entries: 0, head: "0".repeat(64) })
      })

      it.each([
        [
          "an altered body",
          'UPDATE entries SET body = \'{"date":"2025-01-11"}\' WHERE position = 2',
          2,
          "hash",
        ],
        ["an altered author", "UPDATE entries SET recorded_at = '2020-01-01' WHERE position = 1", 1, "hash"],
        ["a missing entry", "DELETE FROM entries WHERE position = 2", 3, "entry 2 is missing"],
      ])("names the first broken link after %s", async (_, statement, position, why) => {
        await withoutProtection(database, statement)
        expect(await record.verifyChain()).toMatchObject({
          whole: false,
          position,
          why: expect.stringContaining(why),
        })
      })

      it("notices an entry whose hash was made anew", async () => {
        await withoutProtection(database, `UPDATE entries SET hash = '${"a".repeat(64)}' WHERE position = 1`)
        expect(await record.verifyChain()).toMatchObject({ whole: false, position: 1 })
      })
    })
  })
}
