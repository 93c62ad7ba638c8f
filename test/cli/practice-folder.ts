import { createWriteStream, mkdtempSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { pipeline } from "node:stream/promises"
import { openPromise } from "yauzl"
import { ZipFile } from "yazl"
import { importArchive } from "../../src/cli/import/archive.js"
import type { Io } from "../../src/cli/io.js"
import { processIo } from "../../src/cli/process-io.js"
import { runCommandLine } from "../../src/cli/program.js"
import { demoCourses } from "../../src/engine/simulate/demo.js"
import { evidence } from "../../src/evidence/index.js"
import { addPractice, migrate, openEmbedded, practiceRecord } from "../../src/record/index.js"
import { loadDemo } from "../../src/server/demo.js"
import { passwordHash } from "../../src/server/passwords.js"

export const TODAY = "2026-11-25"
const NOW_MS = Date.parse(`${TODAY}T18:00:00Z`)
const instant = (ms: number) => new Date(ms).toISOString()

/** A folder of its own, gone at the end of the file's tests. */
export function folders() {
  const made: string[] = []
  return {
    next: (): string => {
      const folder = mkdtempSync(join(tmpdir(), "lengthwise-archive-"))
      made.push(folder)
      return folder
    },
    clear: () => {
      for (const folder of made) rmSync(folder, { recursive: true, force: true })
    },
  }
}

/** Runs the command line on the real disk on a day of its own. */
export async function onDisk(argv: readonly string[]) {
  const told = { stdout: "", stderr: "" }
  const code = await runCommandLine(argv, ioInto(told))
  return { code, ...told }
}

export async function restore(file: string, data: string) {
  const told = { stdout: "", stderr: "" }
  const code = await importArchive({ file, data, json: true }, ioInto(told))
  return { code, ...told }
}

const ioInto = (told: { stdout: string; stderr: string }): Io => ({
  ...processIo,
  out: (answer) => {
    told.stdout += typeof answer === "string" ? answer : Buffer.from(answer).toString("latin1")
  },
  error: (text) => {
    told.stderr += text
  },
  today: () => TODAY,
})

/** The demo practice with corrections, withdrawals, files, messages and links: a bit of everything there is. */
export async function practiceFolder(folder: string): Promise<void> {
  const database = openEmbedded(folder)
  await migrate(database)
  const practice = { id: "practice-1", name: "Quiet Harbour", latitude: 51.5, settings: { certainty: 0.85 } }
  await addPractice(database.queries, { ...practice, createdAt: instant(NOW_MS) })
  const record = practiceRecord(database, practice)
  const person = { name: "Ada", logIn: "clinician", role: "clinician" } as const
  const author = "person-1"
  await record.addPerson({
    id: author,
    ...person,
    passwordHash: await passwordHash("correct horse"),
    createdAt: instant(NOW_MS),
  })
  await loadDemo({
    record,
    children: () => demoCourses({ today: TODAY, seed: 7, evidence }).slice(0, 6),
    nowMs: NOW_MS,
  })
  const [first, second] = await record.everyChild()
  if (!first || !second) throw new Error("the demo has no children")
  const common = { author, recordedAt: instant(NOW_MS) }
  const visit = (await record.entriesOf(first.id)).find(({ kind }) => kind === "visit")
  const supply = (await record.entriesOf(second.id)).find(({ kind }) => kind === "supply")
  if (visit?.kind !== "visit") throw new Error("no visit")
  const bytes = Buffer.from(Array.from({ length: 5000 }, (_, index) => (index * 7) % 256))
  const file = await record.addFile({ mediaType: "image/png", bytes, ...common })
  const saved = await record.append([
    {
      ...common,
      kind: "visit",
      child: first.id,
      body: { ...visit.body, from: 'corrected, "so"\nand so' },
      supersedes: visit.id,
      reason: "=slip",
    },
    ...(supply
      ? [
          {
            ...common,
            kind: "withdrawal",
            child: second.id,
            body: {},
            supersedes: supply.id,
            reason: "another child's",
          } as const,
        ]
      : []),
    {
      ...common,
      kind: "consent",
      child: first.id,
      body: {
        date: TODAY,
        covers: { kind: "atropine", concentrationPercent: 0.05 },
        signature: { kind: "drawn", file },
      },
    },
  ])
  if (saved.kind !== "saved") throw new Error(JSON.stringify(saved))
  const message = {
    kind: "visit-ahead",
    channel: "email",
    recipient: "p@example.org",
    name: "Ines",
    language: "en",
    subject: "S",
    text: "T",
    due: TODAY,
    plannedFor: TODAY,
  } as const
  for (const key of ["a", "b"])
    await record.outbox.add(
      { ...message, key, child: first.id, messageId: `<${key}@x.example>` },
      instant(NOW_MS),
    )
  const [one] = (await record.outbox.list({ page: 1, pageSize: 1 })).messages
  if (!one) throw new Error("no message")
  await record.outbox.change({ id: one.id, from: ["waiting"], state: "sending", at: instant(NOW_MS) })
  await record.outbox.change({
    id: one.id,
    from: ["sending"],
    state: "sent",
    at: instant(NOW_MS),
    reply: "250 taken",
  })
  await record.addFamilyLink({
    child: first.id,
    language: "en",
    createdBy: author,
    nowMs: NOW_MS,
    expiresMs: Date.parse("2199-01-01"),
  })
  await record.addFamilyLink({
    child: first.id,
    language: "es",
    createdBy: author,
    nowMs: NOW_MS,
    expiresMs: Date.parse("2020-01-01"),
  })
  await database.close()
}

/** The parts of a zip by name, in their order. */
export async function partsOf(file: string): Promise<ReadonlyMap<string, Buffer>> {
  const zip = await openPromise(file, { autoClose: false })
  const parts = new Map<string, Buffer>()
  for await (const entry of zip.eachEntry()) {
    const pieces: Buffer[] = []
    for await (const piece of await zip.openReadStreamPromise(entry)) pieces.push(piece as Buffer)
    parts.set(entry.fileName, Buffer.concat(pieces))
  }
  zip.close()
  return parts
}

/** Writes a zip of these parts as they are, whatever they say. */
export async function zipOf(
  file: string,
  parts: Iterable<readonly [name: string, content: Buffer]>,
  { mode = 0o100600 }: { readonly mode?: number } = {},
): Promise<void> {
  const zip = new ZipFile()
  for (const [name, content] of parts) zip.addBuffer(content, name, { mode })
  zip.end()
  await pipeline(zip.outputStream, createWriteStream(file))
}
