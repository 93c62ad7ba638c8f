import { sql } from "kysely"
import { afterEach, beforeEach, describe, expect, it } from "vitest"
import {
  addPractice,
  type Draft,
  migrate,
  type OpenDatabase,
  type PracticeRecord,
  practiceRecord,
} from "../../src/record/index.js"

const AUTHOR = "11111111-1111-4111-8111-111111111111"
const CHILD = "22222222-2222-4222-8222-222222222222"
const AT = "2025-01-10T10:00:00.000Z"
const common = { child: CHILD, author: AUTHOR, recordedAt: AT }

const child = (changes: Partial<Draft> = {}): Draft =>
  ({
    ...common,
    kind: "child",
    id: CHILD,
    body: { name: "Mira Solberg", number: "A-7", born: "2017-03-14", sex: "female" },
    ...changes,
  }) as Draft
const visit = (date: string, changes: Partial<Draft> = {}): Draft =>
  ({ ...common, kind: "visit", body: { date, right: { axialLength: { mm: 24.12 } } }, ...changes }) as Draft
const otherChild = (id: string, name: string, number?: string): Draft =>
  child({
    id,
    child: id,
    body: { name, born: "2016-05-01", sex: "male", ...(number ? { number } : {}) },
  } as Partial<Draft>)

/** What every database under the record must do. `openDatabase` gives a fresh, empty one each time. */
export function storageSuite(name: string, openDatabase: () => Promise<OpenDatabase>): void {
  describe(`record on ${name}`, () => {
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

      it("does not let the child itself be withdrawn", async () => {
        const withdrawal = { ...common, kind: "withdrawal", body: {}, supersedes: CHILD, reason: "left" }
        expect(await messages([withdrawal as Draft])).toEqual(["no such entry to withdraw"])
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

    describe("the list of children", () => {
      const second = "44444444-4444-4444-8444-444444444444"
      beforeEach(async () => {
        await record.append([
          child(),
          visit("2024-06-01"),
          visit("2025-01-10", { from: undefined } as Partial<Draft>),
        ])
        await record.append([otherChild(second, "José Ångström 100%", "B_1")])
      })
      const found = async (search: string) =>
        (await record.children({ search, page: 1, pageSize: 50 })).children.map(({ name }) => name)

      it.each([
        ["a part of the name", "solb", ["Mira Solberg"]],
        ["words in any order", "solberg mira", ["Mira Solberg"]],
        ["a name without its accents", "angstrom jose", ["José Ångström 100%"]],
        ["the number", "a-7", ["Mira Solberg"]],
        ["the birth date", "2017-03-14", ["Mira Solberg"]],
        ["the birth date, day first", "14.3.2017", ["Mira Solberg"]],
        ["the birth date, month first", "3/14/2017", ["Mira Solberg"]],
        ["nothing", " ", ["José Ångström 100%", "Mira Solberg"]],
        ["a percent sign, which stands for itself", "%", ["José Ångström 100%"]],
        ["an underscore, which stands for itself", "_", ["José Ångström 100%"]],
        ["what nobody is called", "'; DROP TABLE entries; --", []],
      ])("is searched by %s", async (_, search, names) => {
        expect(await found(search)).toEqual(names)
      })

      it("comes in pages", async () => {
        const page = await record.children({ page: 2, pageSize: 1 })
        expect(page.total).toBe(2)
        expect(page.children.map(({ name }) => name)).toEqual(["Mira Solberg"])
      })

      it("knows the last visit", async () => {
        expect((await record.child(CHILD))?.lastVisit).toBe("2025-01-10")
      })

      it("is the same after it is made anew from the entries", async () => {
        const before = await database.queries.selectFrom("children").selectAll().orderBy("child").execute()
        await database.queries.deleteFrom("children").execute()
        expect(await record.rebuild()).toBe(2)
        const after = await database.queries.selectFrom("children").selectAll().orderBy("child").execute()
        expect(after).toEqual(before)
      })

      it("shows a corrected name and finds it", async () => {
        const body = { name: "Mira Sörberg", number: "A-7", born: "2017-03-14", sex: "female" }
        await record.append([
          child({ id: undefined, body, supersedes: CHILD, reason: "spelling" } as Partial<Draft>),
        ])
        expect(await found("sorberg")).toEqual(["Mira Sörberg"])
        expect(await found("solberg")).toEqual([])
      })
    })

    describe("the course", () => {
      it("holds what still holds, in order of date", async () => {
        await record.append([
          child(),
          visit("2025-07-10"),
          visit("2025-01-10"),
          {
            ...common,
            kind: "treatment",
            body: { from: "2025-01-10", kind: "atropine", concentrationPercent: 0.05 },
          },
          { ...common, kind: "supply", body: { dispensed: "2025-01-12", volumeMl: 5 } },
          { ...common, kind: "consent", body: { date: "2025-01-10", covers: { kind: "atropine" } } },
        ])
        expect(await record.courseOf(CHILD)).toEqual({
          lengthwise: 1,
          child: { id: CHILD, born: "2017-03-14", sex: "female" },
          practice: { latitude: 51.5 },
          visits: ["2025-01-10", "2025-07-10"].map((date) => ({
            date,
            right: { axialLength: { mm: 24.12 } },
          })),
          treatments: [{ from: "2025-01-10", kind: "atropine", concentrationPercent: 0.05 }],
          supplies: [{ dispensed: "2025-01-12", volumeMl: 5 }],
          consents: [{ date: "2025-01-10", covers: { kind: "atropine" } }],
        })
      })

      it("is nothing for a child that is not there", async () => {
        expect(await record.courseOf(CHILD)).toBeNull()
      })

      it("is the same whether asked for one child or several", async () => {
        await record.append([child(), visit("2025-01-10"), visit("2025-07-10")])
        expect((await record.coursesOf([CHILD, AUTHOR])).get(CHILD)).toEqual(await record.courseOf(CHILD))
      })
    })

    it("a practice sees nothing of another", async () => {
      await record.append([child(), visit("2025-01-10")])
      const other = await newPractice(database, "practice-b")
      expect(await other.entriesOf(CHILD)).toEqual([])
      expect(await other.child(CHILD)).toBeNull()
      expect(await other.courseOf(CHILD)).toBeNull()
      expect((await other.children({ page: 1, pageSize: 50 })).total).toBe(0)
      expect(await other.personByLogIn("nobody-practice-a")).toBeNull()
    })

    describe("a session", () => {
      const minute = 60_000
      const hour = 60 * minute
      const start = Date.parse(AT)
      let token: string
      beforeEach(async () => {
        token = await record.openSession({ person: AUTHOR, nowMs: start })
      })
      const holds = async (nowMs: number) => (await record.personOfSession({ token, nowMs })) !== null

      it("is not stored in a form that opens it", async () => {
        const rows = await database.queries.selectFrom("sessions").selectAll().execute()
        expect(JSON.stringify(rows)).not.toContain(token)
      })

      it("ends half an hour after its last use", async () => {
        expect(await holds(start + 29 * minute)).toBe(true)
        expect(await holds(start + 58 * minute)).toBe(true)
        expect(await holds(start + 89 * minute)).toBe(false)
      })

      it("ends twelve hours after its start, however much it is used", async () => {
        for (let at = start; at < start + 12 * hour; at += 20 * minute) expect(await holds(at)).toBe(true)
        expect(await holds(start + 12 * hour)).toBe(false)
      })

      it("ends at once when it is ended", async () => {
        await record.endSession({ token, nowMs: start })
        expect(await holds(start)).toBe(false)
      })

      it("is forgotten when it is too old and somebody logs in", async () => {
        await record.openSession({ person: AUTHOR, nowMs: start + 12 * hour })
        expect(await database.queries.selectFrom("sessions").selectAll().execute()).toHaveLength(1)
      })

      it("is the only one left when the others are ended", async () => {
        const other = await record.openSession({ person: AUTHOR, nowMs: start })
        await record.endSessionsOf({ person: AUTHOR, except: token, nowMs: start })
        expect(await holds(start)).toBe(true)
        expect(await record.personOfSession({ token: other, nowMs: start })).toBeNull()
      })

      it("of one practice opens nothing in another", async () => {
        const other = await newPractice(database, "practice-b")
        expect(await other.personOfSession({ token, nowMs: start })).toBeNull()
      })
    })

    it("a log-in name is found whatever its capitals, and taken once", async () => {
      expect((await record.personByLogIn(" Nobody-PRACTICE-a "))?.id).toBe(AUTHOR)
      const twice = record.addPerson({ ...nobody("practice-a"), id: CHILD, logIn: "NOBODY-practice-a" })
      await expect(twice).rejects.toThrow()
    })

    it("counts wrong passwords by name and forgets them after a time", async () => {
      const attempts = { failures: 3, lastFailedAt: AT, lockedUntil: null }
      await record.setLogInAttempts({ logIn: "Ada", attempts, forgetBefore: "2025-01-01" })
      expect(await record.logInAttempts("ada")).toEqual(attempts)
      const later = { ...attempts, lastFailedAt: "2025-02-01T00:00:00.000Z" }
      await record.setLogInAttempts({ logIn: "Ben", attempts: later, forgetBefore: "2025-01-31" })
      expect(await record.logInAttempts("ada")).toBeNull()
    })

    it("may be brought up to date again and again", async () => {
      await record.append([child()])
      await migrate(database)
      expect(await record.entriesOf(CHILD)).toHaveLength(1)
    })
  })
}

const nobody = (practice: string) =>
  ({
    id: AUTHOR,
    name: "Nobody",
    logIn: `nobody-${practice}`,
    role: "clinician",
    passwordHash: null,
    createdAt: AT,
  }) as const

async function newPractice(database: OpenDatabase, id: string): Promise<PracticeRecord> {
  const practice = { id, name: id, latitude: 51.5, settings: {} }
  await addPractice(database.queries, { ...practice, createdAt: AT })
  const record = practiceRecord(database, practice)
  await record.addPerson(nobody(id))
  return record
}

/** What someone with the file in hand and time to spare could do. */
async function withoutProtection(database: OpenDatabase, statement: string): Promise<void> {
  for (const trigger of ["no_update", "no_delete", "no_replace"])
    await sql.raw(`DROP TRIGGER entries_${trigger}`).execute(database.queries)
  await sql.raw(statement).execute(database.queries)
}
