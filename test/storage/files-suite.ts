import { createHash } from "node:crypto"
import { sql } from "kysely"
import { afterEach, beforeEach, describe, expect, it } from "vitest"
import { migrate, type OpenDatabase, type PracticeRecord } from "../../src/record/index.js"
import { AT, AUTHOR, CHILD, newPractice } from "./drafts.js"

/** What every database does with files: kept whole under the hash of their bytes, for good. */
export function filesSuite(name: string, openDatabase: () => Promise<OpenDatabase>): void {
  describe(`files on ${name}`, () => {
    let database: OpenDatabase
    let record: PracticeRecord
    beforeEach(async () => {
      database = await openDatabase()
      await migrate(database)
      record = await newPractice(database, "practice-a")
    })
    afterEach(() => database.close())

    // Every byte there is, so that nothing on the way may take it for text.
    const bytes = Buffer.from(Array.from({ length: 512 }, (_, index) => index % 256))
    const file = { mediaType: "application/pdf", bytes, author: AUTHOR, recordedAt: AT }

    it("gives back every byte, the media type, the author and the day", async () => {
      const sha256 = await record.addFile(file)
      expect(await record.file(sha256)).toEqual({ ...file, sha256 })
    })

    it("knows a file by the SHA-256 of its bytes", async () => {
      expect(await record.addFile(file)).toBe(createHash("sha256").update(bytes).digest("hex"))
    })

    it("keeps the same bytes once, as they were first stored", async () => {
      const first = await record.addFile(file)
      const again = await record.addFile({
        ...file,
        mediaType: "image/png",
        recordedAt: "2026-01-01T00:00:00.000Z",
      })
      expect(again).toBe(first)
      expect(await record.file(first)).toMatchObject({ mediaType: "application/pdf", recordedAt: AT })
    })

    it("tells the media type without the bytes", async () => {
      expect(await record.mediaTypeOf(await record.addFile(file))).toBe("application/pdf")
      expect(await record.mediaTypeOf("0".repeat(64))).toBeNull()
    })

    it("shows a practice nothing of another one's files", async () => {
      const other = await newPractice(database, "practice-b")
      const sha256 = await record.addFile(file)
      expect(await other.file(sha256)).toBeNull()
    })

    it("refuses an author who is nobody of the practice", async () => {
      await expect(record.addFile({ ...file, author: CHILD })).rejects.toThrow(/FOREIGN KEY|foreign key/)
    })

    it.each(["UPDATE files SET media_type = 'text/html'", "DELETE FROM files"])(
      "the database itself refuses: %s",
      async (statement) => {
        await record.addFile(file)
        await expect(sql.raw(statement).execute(database.queries)).rejects.toThrow("append-only")
      },
    )

    it("does not hand out bytes that were altered behind its back", async () => {
      const sha256 = await record.addFile(file)
      await sql.raw("DROP TRIGGER files_no_update").execute(database.queries)
      await database.queries
        .updateTable("files")
        .set({ bytes: Buffer.from("other") })
        .execute()
      await expect(record.file(sha256)).rejects.toThrow("was altered")
    })
  })
}
