import { mkdir } from "node:fs/promises"
import { join } from "node:path"
import type { Course } from "../../engine/course.js"
import { counted } from "../../engine/words.js"
import { COURSE_TABLES, type CourseTable, courseTable } from "../../interop/archive/course-tables.js"
import { archiveWriter, type PartContent } from "../../interop/archive/zip-writer.js"
import { problem } from "../../interop/course/problem.js"
import { courseInput } from "../course-input.js"
import type { ExitCode, Io } from "../io.js"
import { written } from "../report-paper.js"
import { toldJson, toldProblems } from "../told.js"
import type { ExportFrom } from "./export-arguments.js"
import { faultOf } from "./fault-of.js"

/** The visits of a course as a table; all tables of it, or of a whole practice, into a folder or a zip. */
export async function exportCsv(args: ExportFrom, io: Io): Promise<ExitCode> {
  const { what, out, place, json = false } = args
  const isMany = out.endsWith("/") || out.endsWith(".zip")
  if (place.kind === "record") {
    if (isMany) return ofRecord(args, io)
    const allowed = "a folder (a name ending in /) or a .zip, since a practice has many tables"
    return toldProblems([problem({ path: "--out", value: out, allowed })], { io, json })
  }
  const input = await courseInput({ file: what }, io)
  if ("problems" in input) return toldProblems(input.problems, { io, json })
  return isMany ? ofCourse(input.course, args, io) : visitsOf(input.course, args, io)
}

async function visitsOf(course: Course, { out, json = false }: ExportFrom, io: Io): Promise<ExitCode> {
  const [visits] = COURSE_TABLES.filter(({ name }) => name === "visits")
  if (!visits) throw new RangeError("there is no table of visits")
  const text = courseTable(visits, course)
  const hindered = await written(Buffer.from(text), { out, io })
  if (hindered) return toldProblems([hindered], { io, json })
  const rows = text.split("\r\n").length - 2
  if (json) return toldJson({ format: "csv", out, tables: [{ name: "visits", rows }] }, io)
  if (out !== "-") io.out(`${counted(rows, "row")} of visits written to ${out}, one an examined eye.\n`)
  return 0
}

const ofCourse = (course: Course, args: ExportFrom, io: Io): Promise<ExitCode> =>
  allTables(args, io, (table) => courseTable(table, course))

async function ofRecord(args: ExportFrom, io: Io): Promise<ExitCode> {
  const { inSnapshot, lockFolder, migrate, openEmbedded, practiceRecord, practicesIn } = await import(
    "../../record/index.js"
  )
  const { courseBatches, tableText } = await import("../../server/leave/course-batches.js")
  try {
    const lock = lockFolder(args.what)
    try {
      const database = openEmbedded(args.what)
      await migrate(database).finally(() => database.close())
      return await inSnapshot(args.what, async (snapshot) => {
        const [practice] = await practicesIn(snapshot.queries)
        if (!practice) throw new Error("this data folder holds no practice yet")
        const record = practiceRecord(snapshot, practice)
        const courses = courseBatches({ record, children: await record.everyChild() })
        return allTables(args, io, (table) => tableText(table, courses()))
      })
    } finally {
      lock.release()
    }
  } catch (cause) {
    return toldProblems([faultOf(cause, { path: "<course>", value: args.what })], {
      io,
      json: args.json ?? false,
    })
  }
}

async function allTables(
  { out, json = false }: ExportFrom,
  io: Io,
  contentOf: (table: CourseTable) => PartContent,
): Promise<ExitCode> {
  try {
    if (out.endsWith(".zip")) await intoZip(out, contentOf)
    else await intoFolder(out, contentOf)
  } catch (cause) {
    return toldProblems([faultOf(cause, { path: "--out", value: out })], { io, json })
  }
  const tables = COURSE_TABLES.map(({ name }) => `${name}.csv`)
  if (json) return toldJson({ format: "csv", out, tables }, io)
  io.out(`${counted(tables.length, "table")} written to ${out}.\n`)
  return 0
}

async function intoZip(out: string, contentOf: (table: CourseTable) => PartContent): Promise<void> {
  const { wholeFile } = await import("../../server/leave/archive-file.js")
  const { machineClock } = await import("../../server/clock.js")
  await wholeFile(out, async (destination) => {
    const writer = archiveWriter(destination, { madeAt: new Date(machineClock.nowMs()) })
    for (const table of COURSE_TABLES) await writer.add(`${table.name}.csv`, contentOf(table))
    await writer.end()
  })
}

async function intoFolder(folder: string, contentOf: (table: CourseTable) => PartContent): Promise<void> {
  const { wholeFile } = await import("../../server/leave/archive-file.js")
  const { pipeline } = await import("node:stream/promises")
  await mkdir(folder, { recursive: true, mode: 0o700 })
  for (const table of COURSE_TABLES) {
    const content = contentOf(table)
    const pieces = typeof content === "string" || content instanceof Uint8Array ? [content] : content
    await wholeFile(join(folder, `${table.name}.csv`), (destination) => pipeline(pieces, destination))
  }
}
