import { METHOD_VERSION } from "../../engine/method.js"
import { COURSE_TABLES } from "../../interop/archive/course-tables.js"
import { filePart, type Manifest, README, RECORD_PARTS } from "../../interop/archive/format.js"
import { ndjson } from "../../interop/archive/lines.js"
import { readmeText } from "../../interop/archive/readme.js"
import { type ArchiveWriter, archiveWriter } from "../../interop/archive/zip-writer.js"
import {
  ARCHIVE_TABLES,
  type PlainRow,
  type PracticeRecord,
  practiceRecord,
  practicesIn,
} from "../../record/index.js"
import type { Phase, PracticeArchiveOptions } from "./archive-options.js"
import { courseBatches, tableText } from "./course-batches.js"
import { courseText } from "./course-text.js"
import { entryLine, fileLine, personLine, practiceLine } from "./record-lines.js"
import { recordPapers } from "./record-papers.js"

/** A folder that holds no practice yet has nothing to be taken out. */
export class NothingToTakeOut extends Error {
  override readonly name = "NothingToTakeOut"
}

/** Writes everything a practice has recorded as one archive (docs/archive.md), part after part. */
export async function writePracticeArchive(options: PracticeArchiveOptions): Promise<Manifest> {
  const { database, destination, madeAtMs, signal, papers } = options
  const [practice] = await practicesIn(database.queries)
  if (!practice) throw new NothingToTakeOut("this data folder holds no practice yet")
  const record = practiceRecord(database, practice)
  const madeAt = new Date(madeAtMs)
  const writer = archiveWriter(destination, { madeAt, signal })
  const children = await record.everyChild()
  const kept = { options, writer, record, madeAt: madeAt.toISOString() }

  await writer.add(README, readmeText({ of: "practice", practice }))
  const damage = await addRecord(kept)
  const files = await addFiles(kept)
  await writer.add("rules.json", json(await record.rules()))
  const told = (phase: Phase, total: number) => (done: number) => options.onProgress?.({ phase, done, total })
  const courses = courseBatches({ record, children, signal })
  for await (const { child, course } of courses(told("courses", children.length)))
    await writer.add(`children/${child.id}/course.json`, courseText(course))
  const whole = COURSE_TABLES.length * children.length
  for (const [index, table] of COURSE_TABLES.entries())
    await writer.add(
      `tables/${table.name}.csv`,
      tableText(
        table,
        courses((done) => told("tables", whole)(index * children.length + done)),
      ),
    )
  const papersNotMade = papers ? await recordPapers({ ...options, papers, record, children, writer }) : []

  return writer.finish({
    of: "practice",
    madeAt: madeAt.toISOString(),
    madeBy: `Lengthwise, method ${METHOD_VERSION}`,
    practice: { id: practice.id, name: practice.name },
    head: await record.head(),
    counts: { ...(await counts(kept)), children: children.length },
    papers: papers && { language: papers.language, paper: papers.paper },
    papersNotMade,
    damage: [...damage, ...files],
  })
}

interface Kept {
  readonly options: PracticeArchiveOptions
  readonly writer: ArchiveWriter
  readonly record: PracticeRecord
  readonly madeAt: string
}

/** Everything that is restored row by row. What is damaged is written as it is, and said. */
async function addRecord({ options, writer, record, madeAt }: Kept): Promise<readonly string[]> {
  const { onProgress } = options
  const { everything } = record
  const total = await everything.count("entries")
  const chain = await record.verifyChain()
  await writer.add(RECORD_PARTS.practice, json(practiceLine(await everything.practice())))
  await writer.add(RECORD_PARTS.people, ndjson((await everything.people()).map(personLine)))
  const entries = async function* () {
    let done = 0
    for await (const row of everything.entries()) {
      done += 1
      if (done % 500 === 0 || done === total) onProgress?.({ phase: "record", done, total })
      yield entryLine(row)
    }
  }
  await writer.add(RECORD_PARTS.entries, ndjson(entries()))
  for (const [table, decision] of Object.entries(ARCHIVE_TABLES))
    if (decision.kept === "rows")
      await writer.add(decision.part, ndjson(plainRows(table, everything.rows(table), madeAt)))
  return chain.whole ? [] : [`entry ${chain.position} (${chain.id}): ${chain.why}`]
}

/**
 * Rows of a table as they stand, but for one thing: a family link that still opens ends with the archive. The key that
 * signs links stays behind, so it could not open after a restore, and whoever restores must not take it for open.
 */
async function* plainRows(
  table: string,
  rows: AsyncIterable<PlainRow>,
  madeAt: string,
): AsyncGenerator<PlainRow> {
  for await (const row of rows) {
    const opens = table === "family_links" && row.revoked_at === null && String(row.expires_at) > madeAt
    yield opens ? { ...row, revoked_at: madeAt } : row
  }
}

async function addFiles({ options, writer, record }: Kept): Promise<readonly string[]> {
  const { onProgress } = options
  const { everything } = record
  const total = await everything.count("files")
  const damage: string[] = []
  const lines = async function* () {
    for await (const row of everything.files()) yield fileLine(row)
  }
  await writer.add(RECORD_PARTS.files, ndjson(lines()))
  let done = 0
  for await (const { sha256 } of everything.files()) {
    done += 1
    try {
      const file = await record.file(sha256)
      if (file) await writer.add(filePart(sha256), file.bytes)
    } catch (cause) {
      if (!(cause instanceof Error) || cause.name !== "RecordError") throw cause
      damage.push(cause.message)
    }
    onProgress?.({ phase: "files", done, total })
  }
  return damage
}

async function counts({ record: { everything } }: Kept): Promise<Readonly<Record<string, number>>> {
  const found: Record<string, number> = {}
  for (const [table, { kept }] of Object.entries(ARCHIVE_TABLES))
    if (kept !== "no" && table !== "practices") found[table] = await everything.count(table)
  return found
}

const json = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`
