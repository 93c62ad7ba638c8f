import { mkdtempSync, readFileSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { beforeAll, describe, expect, it } from "vitest"
import { builtObjects, DUMPS, hasDcmtk, OURS, run, tried } from "./dicom-tried.js"

describe.skipIf(!hasDcmtk)(
  "dcmtk as the sender (skipped where echoscu, storescu or dump2dcm are absent)",
  () => {
    const folder = mkdtempSync(join(tmpdir(), "lengthwise-dicom-"))
    let files: readonly string[] = []
    beforeAll(async () => {
      files = await builtObjects(folder, DUMPS)
      return () => rmSync(folder, { recursive: true })
    })

    it("is answered when it asks whether we are there, and not under another title", async () => {
      const { port, receiver } = await tried({ rules: OURS })
      const called = (title: string) =>
        run("echoscu", "-v", "-aet", "BIOMETER", "-aec", title, "127.0.0.1", String(port))
      expect((await called("EYES")).code).toBe(0)
      const other = await called("OTHER")
      expect(other.code).not.toBe(0)
      expect(other.out).toContain("Called AE Title Not Recognized")
      const stranger = await run(
        "echoscu",
        "-v",
        "-aet",
        "STRANGER",
        "-aec",
        "EYES",
        "127.0.0.1",
        String(port),
      )
      expect(stranger.out).toContain("Calling AE Title Not Recognized")
      const [first, second] = await receiver.heard()
      expect([first, second]).toMatchObject([
        { title: "STRANGER", isAllowed: false, lastEchoAt: null },
        { title: "BIOMETER", isAllowed: true },
      ])
      expect(second?.lastEchoAt).not.toBeNull()
    })

    it("sends every kind of object, in both transfer syntaxes, as it stands in the file", async () => {
      const { port, taken } = await tried()
      for (const syntax of ["-xe", "-xi"])
        expect(
          await run("storescu", "-R", syntax, "-aec", "LENGTHWISE", "127.0.0.1", String(port), ...files),
        ).toMatchObject({ code: 0 })
      expect(taken).toHaveLength(files.length * 2)
      // The data set behind the head of the file is the sender's own, byte for byte.
      const sent = readFileSync(files[0] ?? "")
      const got = Buffer.from(taken[0]?.bytes ?? [])
      expect(got.subarray(dataAt(got)).equals(sent.subarray(dataAt(sent)))).toBe(true)
    })

    it("sends from twenty at once", async () => {
      const { port, taken } = await tried()
      const runs = await Promise.all(
        Array.from({ length: 20 }, () =>
          run("storescu", "-R", "-aec", "LENGTHWISE", "127.0.0.1", String(port), ...files.slice(0, 3)),
        ),
      )
      expect(runs.map(({ code }) => code)).toEqual(runs.map(() => 0))
      expect(taken).toHaveLength(60)
    })

    it("sends 500 objects while memory stays where it was", async () => {
      const { port, taken } = await tried({ take: async (file) => [{ file, outcome: "recorded" }] })
      const before = process.memoryUsage().rss
      const many = Array.from({ length: 500 }, (_, index) => files[index % files.length] ?? "")
      const { code } = await run(
        "env",
        "TCP_NODELAY=1",
        "storescu",
        "-R",
        "-aec",
        "LENGTHWISE",
        "127.0.0.1",
        String(port),
        ...many,
      )
      expect(code).toBe(0)
      expect(taken).toEqual([])
      expect(process.memoryUsage().rss - before).toBeLessThan(150_000_000)
    })

    it("breaks off in the middle, and nothing is left", async () => {
      const { port } = await tried()
      const { code } = await run(
        "storescu",
        "-R",
        "--abort",
        "-aec",
        "LENGTHWISE",
        "127.0.0.1",
        String(port),
        ...files.slice(0, 1),
      )
      expect(code).toBe(0)
      expect((await run("echoscu", "127.0.0.1", String(port))).code).toBe(0)
    })
  },
)

/** Where the data set begins in a file of PS3.10: behind the group whose length stands at its head. */
const dataAt = (file: Buffer): number => 144 + file.readUInt32LE(140)
