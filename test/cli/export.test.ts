import { createHash } from "node:crypto"
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import { sql } from "kysely"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { archiveContent, isArchive } from "../../src/cli/import/archive.js"
import type { Course, EyeExamination } from "../../src/engine/course.js"
import { readCourse } from "../../src/interop/course/read-course.js"
import {
  ARCHIVE_TABLES,
  inSnapshot,
  openEmbedded,
  practiceRecord,
  practicesIn,
} from "../../src/record/index.js"
import { commandLine, json } from "./fake-io.js"
import { folders, onDisk, partsOf, practiceFolder, restore, zipOf } from "./practice-folder.js"

const EXAMPLE = "examples/slowed.json"
const made = folders()
afterAll(made.clear)

/** Every row of the tables that are kept, but for what is new by design: passwords. */
const rowsOf = (folder: string) =>
  inSnapshot(folder, async ({ queries }) => {
    const found: Record<string, unknown> = {}
    for (const [table, { kept }] of Object.entries(ARCHIVE_TABLES)) {
      if (kept === "no" && table !== "children") continue
      const { rows } = await sql<Record<string, unknown>>`SELECT * FROM ${sql.table(table)}`.execute(queries)
      found[table] = rows
        .map((row) => ({ ...row, password_hash: row.password_hash == null ? null : "set" }))
        .sort((a, b) => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1))
    }
    return found
  })

describe("a practice taken out and put back", () => {
  const folder = made.next()
  const out = join(made.next(), "out.zip")
  const back = join(made.next(), "deep", "new")
  let exported: Awaited<ReturnType<typeof onDisk>>
  let restored: Awaited<ReturnType<typeof restore>>
  beforeAll(async () => {
    await practiceFolder(folder)
    exported = await onDisk(["export", folder, "--format", "archive", "--out", out, "--json"])
    restored = await restore(out, back)
  }, 120_000)

  it("is one file that only its owner reads, with a README, checksums and the last entry", async () => {
    expect(exported.stderr).not.toContain("fault")
    expect(exported.code).toBe(0)
    expect(statSync(out).mode & 0o777).toBe(0o600)
    const parts = await partsOf(out)
    const manifest = JSON.parse(String(parts.get("manifest.json")))
    expect([...parts.keys()][0]).toBe("README.txt")
    expect(manifest.parts.map(({ name }: { name: string }) => name).sort()).toEqual(
      [...parts.keys()].filter((name) => name !== "manifest.json").sort(),
    )
    for (const { name, sha256, bytes } of manifest.parts) {
      const content = parts.get(name) ?? Buffer.alloc(0)
      expect([name, createHash("sha256").update(content).digest("hex"), content.length]).toEqual([
        name,
        sha256,
        bytes,
      ])
    }
    const answer = JSON.parse(exported.stdout)
    expect(answer).toMatchObject({ head: manifest.head, of: "practice", damage: [], papersNotMade: [] })
    expect(answer.counts).toMatchObject({ children: 6, files: 1, outbox: 2, family_links: 2 })
    expect([...parts.keys()].filter((name) => name.endsWith("record.pdf"))).toHaveLength(6)
  })

  it("holds no password, not even as a hash, and no key", async () => {
    const text = [...(await partsOf(out))]
      .filter(([name]) => !name.endsWith(".pdf"))
      .map(([, bytes]) => String(bytes))
      .join()
    expect(text).not.toMatch(/argon2|password_hash|passwordHash|token_hash/)
  })

  it("has tables whose negative figures are figures", async () => {
    const visits = String((await partsOf(out)).get("tables/visits.csv"))
    expect(visits.split("\r\n")[0]).toContain("Axial length (mm),")
    expect(visits).toMatch(/,-\d+\.\d+,/)
    expect(visits).not.toMatch(/'-\d/)
  })

  it("comes back with the same head, the same rows of every table that is kept, and the same children", async () => {
    expect(restored.stderr).not.toContain("fault")
    expect(restored.code).toBe(0)
    const before = JSON.parse((await onDisk(["verify", folder, "--json"])).stdout)
    const after = JSON.parse((await onDisk(["verify", back, "--json"])).stdout)
    expect(after).toEqual(before)
    expect(after).toMatchObject({ whole: true, files: { count: 1, broken: 0 }, children: 6 })
    expect(JSON.parse(restored.stdout)).toMatchObject({ restored: true, head: before.head, linksEnded: 1 })
    const [was, is] = [await rowsOf(folder), await rowsOf(back)]
    const { family_links: oldLinks, ...rest } = was
    const { family_links: links, ...others } = is
    expect(others).toEqual(rest)
    expect((links as { revoked_at: unknown }[]).filter(({ revoked_at }) => revoked_at !== null)).toHaveLength(
      1,
    )
    expect((oldLinks as { revoked_at: unknown }[]).every(({ revoked_at }) => revoked_at === null)).toBe(true)
  })

  it("has the same rules", async () => {
    const rules = (place: string) =>
      inSnapshot(place, async (database) => {
        const [practice] = await practicesIn(database.queries)
        return practice && practiceRecord(database, practice).rules()
      })
    expect(await rules(back)).toEqual(await rules(folder))
  })

  it("gives who could log in a new password, in a file that only the owner reads", async () => {
    const file = join(back, "first-log-in.txt")
    expect(readFileSync(file, "utf8")).toMatch(/^name: clinician\npassword: [a-z-]{27}\n$/)
    expect(statSync(file).mode & 0o777).toBe(0o600)
    expect(readdirSync(back).sort()).toEqual(["first-log-in.txt", "lock.sqlite", "record.sqlite"])
  })

  it("taken out again is the same archive, part by part, but for when it was made", async () => {
    const again = join(made.next(), "again.zip")
    await onDisk(["export", back, "--format", "archive", "--out", again, "--json"])
    const [first, second] = [await partsOf(out), await partsOf(again)]
    expect([...second.keys()]).toEqual([...first.keys()])
    for (const [name, bytes] of first) {
      if (name === "manifest.json") continue
      expect([name, bytes.equals(second.get(name) ?? Buffer.alloc(0))]).toEqual([name, true])
    }
    const manifest = (parts: ReadonlyMap<string, Buffer>) => ({
      ...JSON.parse(String(parts.get("manifest.json"))),
      madeAt: "",
    })
    expect(manifest(second)).toEqual(manifest(first))
  }, 120_000)

  it("is refused by a folder that already has a record, which stays as it is", async () => {
    const before = readFileSync(join(folder, "record.sqlite"))
    const refused = await restore(out, folder)
    expect(refused.code).toBe(1)
    expect(refused.stderr).toContain("two records cannot be one")
    expect(readFileSync(join(folder, "record.sqlite")).equals(before)).toBe(true)
  })

  it("is refused by a folder with other things in it", async () => {
    const other = made.next()
    writeFileSync(join(other, "letters.txt"), "x")
    expect((await restore(out, other)).stderr).toContain("is not empty (letters.txt)")
    expect(readdirSync(other)).toEqual(["letters.txt"])
  })

  it("fills a folder in which a server was started and nothing recorded", async () => {
    const fresh = made.next()
    await openEmbedded(fresh).close()
    expect((await restore(out, fresh)).code).toBe(0)
  })

  it("without papers has none, and says so", async () => {
    const plain = join(made.next(), "plain.zip")
    await onDisk(["export", folder, "--format", "archive", "--no-papers", "--out", plain])
    const names = [...(await partsOf(plain)).keys()]
    expect(names.filter((name) => name.endsWith(".pdf"))).toEqual([])
    expect(JSON.parse(String((await partsOf(plain)).get("manifest.json"))).papers).toBeNull()
  })

  describe("with a hostile archive in its place", () => {
    let parts: ReadonlyMap<string, Buffer>
    beforeAll(async () => {
      const plain = join(made.next(), "plain.zip")
      await onDisk(["export", folder, "--format", "archive", "--no-papers", "--out", plain])
      parts = await partsOf(plain)
    })
    type Changes = Readonly<Record<string, Buffer | string | null>>

    /** The parts with changes, null for one that is left out; the manifest put right where asked. */
    const changed = (
      changes: Changes,
      { fixed = true, manifest = {} }: { readonly fixed?: boolean; readonly manifest?: object } = {},
    ) => {
      const all = new Map(parts)
      for (const [name, content] of Object.entries(changes))
        if (content === null) all.delete(name)
        else all.set(name, Buffer.from(content))
      const stated = JSON.parse(String(parts.get("manifest.json")))
      const named = fixed
        ? [...all.keys()].filter((name) => name !== "manifest.json")
        : stated.parts.map(({ name }: { name: string }) => name)
      const listed = named.map((name: string) => {
        const bytes = (fixed ? all : parts).get(name) ?? Buffer.alloc(0)
        return { name, sha256: createHash("sha256").update(bytes).digest("hex"), bytes: bytes.length }
      })
      all.set("manifest.json", Buffer.from(JSON.stringify({ ...stated, parts: listed, ...manifest })))
      return all
    }
    const refusalOf = async (
      all: Iterable<readonly [string, Buffer]>,
      options: { readonly mode?: number } = {},
      after = (bytes: Buffer) => bytes,
    ) => {
      const file = join(made.next(), "hostile.zip")
      await zipOf(file, all, options)
      writeFileSync(file, after(readFileSync(file)))
      const target = join(made.next(), "target")
      const refused = await restore(file, target)
      expect(refused.code).toBe(1)
      expect(existsSync(target)).toBe(false)
      const [problem] = JSON.parse(refused.stdout).problems
      expect(problem.message).toContain("nothing was stored")
      return problem.message as string
    }
    const lines = (name: string) =>
      String(parts.get(name))
        .trimEnd()
        .split("\n")
        .map((line) => JSON.parse(line))
    const text = (rows: readonly unknown[]) => rows.map((row) => `${JSON.stringify(row)}\n`).join("")
    /** Renames a part in the bytes of the zip, to names that no zip writer would take. */
    const renamed = (to: string) => (bytes: Buffer) => {
      const from = "a".repeat(to.length)
      const text = bytes.toString("latin1").replaceAll(from, to)
      return Buffer.from(text, "latin1")
    }
    const withPart = (name: string) => changed({ [name]: "x" })

    it.each([
      "../../../etc/x",
      "/absolute/path",
      "C:/windows/file",
      "back\\slash\\file",
      "a/../b/cc/dd/e",
      "tables/.hidden.x",
    ])("the name %s is refused", async (name) => {
      const message = await refusalOf(withPart("a".repeat(name.length)), {}, renamed(name))
      expect(message).toMatch(/is not one of a part|invalid relative path|absolute path|invalid characters/)
    })

    it("a link is refused", async () => {
      expect(await refusalOf(changed({}), { mode: 0o120777 })).toContain("is a link or a device")
    })

    it("a part that is there twice is refused", async () => {
      expect(await refusalOf([...changed({}), ["README.txt", Buffer.from("again")]])).toContain(
        "is there twice",
      )
      expect(await refusalOf([...changed({}), ["readme.TXT", Buffer.from("again")]])).toContain(
        "is there twice",
      )
    })

    it("a part that the manifest does not name is refused", async () => {
      expect(await refusalOf(changed({ "extra.txt": "x" }, { fixed: false }))).toContain(
        "extra.txt is not in the manifest",
      )
    })

    it("a missing part is refused", async () => {
      expect(await refusalOf(changed({ "outbox.ndjson": null }, { fixed: false }))).toContain(
        '"outbox.ndjson" is missing',
      )
      expect(await refusalOf(changed({ "entries.ndjson": null }))).toContain("entries.ndjson is missing")
    })

    it("a part with another content of the same size is refused", async () => {
      const readme = Buffer.from(parts.get("README.txt") ?? "")
      readme[3] = (readme[3] ?? 0) ^ 1
      expect(await refusalOf(changed({ "README.txt": readme }, { fixed: false }))).toContain(
        "README.txt is not what it was",
      )
    })

    it("a bomb is refused by what it says of itself", async () => {
      expect(await refusalOf(changed({ "bomb.txt": Buffer.alloc(20_000_000) }))).toContain(
        "bomb.txt would become 200 times as large",
      )
    })

    it("a bomb that says it is small is refused by what comes", async () => {
      const bytes = Buffer.alloc(900_000)
      // Sizes stand in the directory and before the data: both are made to say 10.
      const shrunk = (zip: Buffer) => {
        const [size, ten] = [Buffer.alloc(4), Buffer.alloc(4)]
        size.writeUInt32LE(900_000)
        ten.writeUInt32LE(10)
        const copy = Buffer.from(zip)
        for (let at = copy.indexOf(size); at !== -1; at = copy.indexOf(size, at)) ten.copy(copy, at)
        return copy
      }
      const stated = changed({ "bomb.txt": bytes })
      const manifest = JSON.parse(String(stated.get("manifest.json")))
      for (const part of manifest.parts) if (part.name === "bomb.txt") part.bytes = 10
      stated.set("manifest.json", Buffer.from(JSON.stringify(manifest)))
      expect(await refusalOf(stated, {}, shrunk)).toMatch(/bomb\.txt/)
    })

    it("an archive cut short anywhere is refused", async () => {
      for (const share of [0.1, 0.5, 0.9, 0.999])
        expect(
          await refusalOf(changed({}), {}, (bytes) => bytes.subarray(0, Math.floor(bytes.length * share))),
        ).toContain("nothing was stored")
    })

    it("another version is refused with what to do", async () => {
      expect(await refusalOf(changed({}, { manifest: { version: 2 } }))).toContain(
        'an archive of version "2"; this program reads version 1',
      )
    })

    it("an altered entry is named, the first of them", async () => {
      const entries = lines("entries.ndjson")
      entries[40].body = entries[40].body.replace("{", '{"x":1,')
      entries[60].body = "{}"
      expect(await refusalOf(changed({ "entries.ndjson": text(entries) }))).toContain(
        `entry 41 (${entries[40].id}): it was altered`,
      )
    })

    it("an entry that was left out is missed", async () => {
      const entries = lines("entries.ndjson").filter((_, index) => index !== 10)
      expect(await refusalOf(changed({ "entries.ndjson": text(entries) }))).toContain("entry 11 is missing")
    })

    it("entries cut off at the end are missed", async () => {
      const entries = lines("entries.ndjson").slice(0, -1)
      expect(await refusalOf(changed({ "entries.ndjson": text(entries) }))).toContain("the manifest says")
    })

    it("a file with another content is refused", async () => {
      const [name = ""] = [...parts.keys()].filter((part) => part.startsWith("files/"))
      expect(await refusalOf(changed({ [name]: "other" }))).toContain(
        "has another content than it is named by",
      )
      expect(await refusalOf(changed({ [name]: null }))).toContain("is missing")
      expect(await refusalOf(changed({ [`files/${"0".repeat(64)}`]: "stray" }))).toContain(
        "is not named in files.ndjson",
      )
    })

    it("an author who is nobody, and a link that still opens, are refused", async () => {
      expect(await refusalOf(changed({ "people.ndjson": "" }))).toContain(
        "its author is nobody of the practice",
      )
      const links = lines("family-links.ndjson").map((link) => ({ ...link, revoked_at: null }))
      expect(await refusalOf(changed({ "family-links.ndjson": text(links) }))).toContain("is written as open")
    })

    it("rows that the record does not take are refused after a start, and leave nothing", async () => {
      const [message] = lines("outbox.ndjson")
      expect(await refusalOf(changed({ "outbox.ndjson": text([message, message]) }))).toContain(
        "the record does not take it: a row of outbox",
      )
      expect(
        await refusalOf(
          changed({ "outbox.ndjson": text([{ ...message, "x); DROP TABLE entries; --": 1 }]) }),
        ),
      ).toContain("is not known here")
    })

    it("a damaged record's archive is read by people only", async () => {
      expect(await refusalOf(changed({}, { manifest: { damage: ["entry 3: x"] } }))).toContain(
        "It can be read, not restored",
      )
    })

    it("what is no archive is told from one", async () => {
      const file = join(made.next(), "other.zip")
      await zipOf(file, [["manifest.json", Buffer.from('{"format":"other"}')]])
      expect([
        await isArchive(file),
        await isArchive(out),
        await isArchive(EXAMPLE),
        await isArchive(made.next()),
      ]).toEqual([false, true, false, false])
    })
  })

  it("an altered entry and a broken file are told by verify, and written out all the same", async () => {
    const damaged = made.next()
    await practiceFolder(damaged)
    const database = openEmbedded(damaged)
    for (const trigger of ["entries_no_update", "files_no_update"])
      await sql.raw(`DROP TRIGGER ${trigger}`).execute(database.queries)
    await sql`UPDATE entries SET body = replace(body, 'a', 'b') WHERE position = 30`.execute(database.queries)
    await sql`UPDATE files SET bytes = ${Buffer.from("x")}`.execute(database.queries)
    await database.close()
    const verified = await onDisk(["verify", damaged, "--json"])
    expect(verified.code).toBe(1)
    expect(JSON.parse(verified.stdout)).toMatchObject({
      whole: false,
      brokenAt: { position: 30 },
      files: { count: 1, broken: 1 },
    })
    const file = join(made.next(), "damaged.zip")
    const written = await onDisk([
      "export",
      damaged,
      "--format",
      "archive",
      "--no-papers",
      "--out",
      file,
      "--json",
    ])
    expect(written.code).toBe(1)
    expect(JSON.parse(written.stdout).damage).toHaveLength(2)
    expect((await restore(file, join(made.next(), "new"))).stderr).toContain("was damaged already")
  })

  it("a folder held by a server is refused", async () => {
    const { lockFolder } = await import("../../src/record/index.js")
    const lock = lockFolder(folder)
    const refused = await onDisk([
      "export",
      folder,
      "--format",
      "archive",
      "--out",
      join(made.next(), "x.zip"),
    ])
    lock.release()
    expect(refused.code).toBe(1)
    expect(refused.stderr).toContain("is in use by another Lengthwise")
  })

  it("all tables go into a folder or a zip, and not into one table", async () => {
    const place = made.next()
    expect((await onDisk(["export", folder, "--format", "csv", "--out", `${place}/all/`])).code).toBe(0)
    expect((await onDisk(["export", folder, "--format", "csv", "--out", `${place}/all.zip`])).code).toBe(0)
    const files = readdirSync(`${place}/all`)
    const zipped = await partsOf(`${place}/all.zip`)
    expect([...zipped.keys()].sort()).toEqual(files.sort())
    for (const name of files)
      expect(readFileSync(`${place}/all/${name}`).equals(zipped.get(name) ?? Buffer.alloc(0))).toBe(true)
    expect(
      (await onDisk(["export", folder, "--format", "csv", "--out", `${place}/one.csv`])).stderr,
    ).toContain("since a practice has many tables")
  })
})

/** What the reader of tables has fields for; how accommodation was measured is not among them. */
const figuresOf = (eye: EyeExamination | undefined) =>
  eye && {
    length: eye.axialLength,
    refraction: eye.refraction,
    cornea: eye.corneaRadius,
    pupil: eye.pupil,
    accommodationD: eye.accommodation?.dioptres,
    acuity: eye.acuity,
    pressure: eye.intraocularPressure,
  }

describe("every table of the record", () => {
  it("has a decision: a practice that leaves misses nothing that nobody thought of", async () => {
    const folder = made.next()
    mkdirSync(folder, { recursive: true })
    const { migrate } = await import("../../src/record/index.js")
    const database = openEmbedded(folder)
    await migrate(database)
    const { rows } = await sql<{ name: string }>`
      SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'`.execute(
      database.queries,
    )
    await database.close()
    expect(rows.map(({ name }) => name).sort()).toEqual(Object.keys(ARCHIVE_TABLES).sort())
  })
})

describe("the course of one child", () => {
  it("is an archive with the course file, tables, FHIR and the paper, and gives the course back", async () => {
    const file = join(made.next(), "child.zip")
    const written = await onDisk(["export", EXAMPLE, "--format", "archive", "--out", file, "--json"])
    expect(written.code).toBe(0)
    expect(JSON.parse(written.stdout)).toMatchObject({ of: "course", head: null })
    const names = [...(await partsOf(file)).keys()]
    for (const name of [
      "README.txt",
      "course.json",
      "tables/visits.csv",
      "fhir.json",
      "record.pdf",
      "manifest.json",
    ])
      expect(names).toContain(name)
    const content = await archiveContent(file)
    if (!("text" in content)) throw new Error(JSON.stringify(content))
    const whole = readCourse(readFileSync(EXAMPLE, "utf8"))
    expect(readCourse(content.text)).toMatchObject({ course: "course" in whole ? whole.course : null })
    expect((await restore(file, join(made.next(), "new"))).stderr).toContain(
      "the course of one child, not a practice",
    )
  })

  it("is a table of visits, one row an examined eye, with plain headings", async () => {
    const { code, written, stdout } = await commandLine([
      "export",
      EXAMPLE,
      "--format",
      "csv",
      "--out",
      "visits.csv",
      "--json",
    ])
    expect(code).toBe(0)
    const rows = String(written["visits.csv"]).split("\r\n")
    expect(rows[0]).toMatch(/^Child key,Child number,Name,Date of birth,Sex,Date,Eye,Axial length \(mm\),/)
    expect(json({ stdout }).tables).toEqual([{ name: "visits", rows: rows.length - 2 }])
  })

  it("read back from its table has the same figures at every visit", async () => {
    const place = made.next()
    const [file, table] = [join(place, "course.json"), join(place, "visits.csv")]
    const whole = readCourse(readFileSync(EXAMPLE, "utf8"))
    if ("problems" in whole) throw new Error("the example is at fault")
    writeFileSync(file, readFileSync(EXAMPLE))
    await onDisk(["export", file, "--format", "csv", "--out", table])
    const read = await onDisk(["read", table, "--json"])
    const figures = ({ visits }: Pick<Course, "visits">) =>
      visits.map(({ date, from, right, left }) => ({
        date,
        from,
        right: figuresOf(right),
        left: figuresOf(left),
      }))
    expect(figures(JSON.parse(read.stdout))).toEqual(figures(whole.course))
  })

  it("is FHIR, as a Bundle or one resource a line", async () => {
    const { code, written } = await commandLine(["export", EXAMPLE, "--format", "fhir", "--out", "f.json"])
    expect(code).toBe(0)
    expect(JSON.parse(String(written["f.json"])).resourceType).toBe("Bundle")
  })

  it("with faults is refused, and nothing is written", async () => {
    const files = { "bad.json": { lengthwise: 1, child: { born: "x" } } }
    for (const format of ["fhir", "csv", "archive"]) {
      const { code, stderr, written } = await commandLine(
        ["export", "bad.json", "--format", format, "--out", "o.zip"],
        { files },
      )
      expect([code, Object.keys(written)]).toEqual([1, []])
      expect(stderr).toContain("child.born")
    }
  })

  it("is not written over itself, nor beside JSON on stdout, nor into a folder that is not there", async () => {
    const same = await commandLine(["export", EXAMPLE, "--format", "csv", "--out", EXAMPLE])
    expect(same.stderr).toContain("another file than what is exported")
    const both = await commandLine(["export", EXAMPLE, "--format", "csv", "--out", "-", "--json"])
    expect(both.code).toBe(1)
    const nowhere = await onDisk([
      "export",
      EXAMPLE,
      "--format",
      "archive",
      "--no-papers",
      "--out",
      "/nowhere/at/all.zip",
    ])
    expect(nowhere.code).toBe(1)
    expect(nowhere.stderr).toContain("its folder is not there")
  })
})
