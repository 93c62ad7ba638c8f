import { afterEach, beforeEach, describe, expect, it } from "vitest"
import { type Draft, migrate, type OpenDatabase, type PracticeRecord } from "../../src/record/index.js"
import { AT, AUTHOR, CHILD, child, common, newPractice, nobody, otherChild, visit } from "./drafts.js"

/** What every database shows of the entries: the list of children, the course, sessions. `openDatabase` gives a fresh, empty one each time. */
export function viewsSuite(name: string, openDatabase: () => Promise<OpenDatabase>): void {
  describe(`views on ${name}`, () => {
    let database: OpenDatabase
    let record: PracticeRecord
    beforeEach(async () => {
      database = await openDatabase()
      await migrate(database)
      record = await newPractice(database, "practice-a")
    })
    afterEach(() => database.close())

    const _messages = async (drafts: readonly Draft[]) => {
      const saved = await record.append(drafts)
      return saved.kind === "saved" ? [] : saved.problems.map(({ message }) => message)
    }

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
