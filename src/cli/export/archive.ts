import { counted } from "../../engine/words.js"
import type { Manifest } from "../../interop/archive/format.js"
import { problem } from "../../interop/course/problem.js"
import type { Progress } from "../../server/leave/archive-options.js"
import { courseInput } from "../course-input.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"
import type { ExportFrom } from "./export-arguments.js"
import { faultOf } from "./fault-of.js"

/** Everything of a practice, or the course of one child, as one zip (docs/archive.md). */
export async function exportArchive(args: ExportFrom, io: Io): Promise<ExitCode> {
  const { what, out, place, json = false } = args
  if (out === "-" || out.endsWith("/")) {
    const allowed = "a file such as practice.zip; an archive is put in its place once it is whole"
    return toldProblems([problem({ path: "--out", value: out, allowed })], { io, json })
  }
  try {
    const made = place.kind === "record" ? await ofRecord(args, io) : await ofCourse(args, io)
    return "problems" in made ? toldProblems(made.problems, { io, json }) : told(made, args, io)
  } catch (cause) {
    return toldProblems([faultOf(cause, { path: "<course>", value: what })], { io, json })
  }
}

interface Made {
  readonly manifest: Manifest
  readonly bytes: number
}

async function ofCourse({ what, out, papers = true, language = "en", paper = "a4" }: ExportFrom, io: Io) {
  const input = await courseInput({ file: what }, io)
  if ("problems" in input) return input
  const { writeCourseArchive } = await import("../../server/leave/course-archive.js")
  const { wholeFile } = await import("../../server/leave/archive-file.js")
  const { machineClock } = await import("../../server/clock.js")
  const { exportFhir } = await import("./fhir.js")
  const { course } = input
  const { result, bytes } = await wholeFile(out, (destination) =>
    writeCourseArchive({
      course,
      fhir: exportFhir({ course, format: "fhir" }),
      papers: papers ? { language, paper } : null,
      today: io.today(),
      madeAtMs: machineClock.nowMs(),
      destination,
    }),
  )
  return { manifest: result, bytes }
}

async function ofRecord(
  { what, out, papers = true, language = "en", paper = "a4" }: ExportFrom,
  io: Io,
): Promise<Made> {
  const { inSnapshot, lockFolder, migrate, openEmbedded } = await import("../../record/index.js")
  const { writePracticeArchive } = await import("../../server/leave/practice-archive.js")
  const { wholeFile } = await import("../../server/leave/archive-file.js")
  const { machineClock } = await import("../../server/clock.js")
  const { paperSetter } = await import("../../server/paper-setter.js")
  const lock = lockFolder(what)
  const setter = paperSetter()
  const stop = new AbortController()
  const interrupted = () => stop.abort(new Error("stopped; nothing was written"))
  process.once("SIGINT", interrupted)
  try {
    const database = openEmbedded(what)
    await migrate(database).finally(() => database.close())
    const { result, bytes } = await wholeFile(out, (destination) =>
      inSnapshot(what, (snapshot) =>
        writePracticeArchive({
          database: snapshot,
          destination,
          madeAtMs: machineClock.nowMs(),
          today: io.today(),
          papers: papers ? { setter, language, paper } : null,
          signal: stop.signal,
          onProgress: progressTo(io),
        }),
      ),
    )
    return { manifest: result, bytes }
  } finally {
    process.off("SIGINT", interrupted)
    setter.close()
    lock.release()
  }
}

/** A line at the beginning of each kind of part, at every tenth of it and at its end. */
function progressTo(io: Io): (progress: Progress) => void {
  let last = ""
  return ({ phase, done, total }) => {
    const line = `${phase}: ${Math.floor((10 * done) / Math.max(total, 1)) * 10} %`
    if (line === last) return
    last = line
    io.error(`${line} (${done} of ${total})\n`)
  }
}

function told({ manifest, bytes }: Made, { out, json = false }: ExportFrom, io: Io): ExitCode {
  const { parts, ...about } = manifest
  const { damage, papersNotMade, head, counts } = about
  for (const { child, why } of papersNotMade) io.error(`No paper of ${child}: ${why}\n`)
  for (const what of damage) io.error(`Damaged, and written as it is: ${what}\n`)
  if (json) toldJson({ ...about, out, bytes, parts: parts.length }, io)
  else {
    io.out(`${counted(parts.length, "part")}, ${(bytes / 1_000_000).toFixed(1)} MB, written to ${out}.\n`)
    if (head !== null) {
      const entries = counts.entries === 1 ? "1 entry" : `${counts.entries} entries`
      const children = counts.children === 1 ? "1 child" : `${counts.children} children`
      io.out(`${entries}, ${children}. Last entry: ${head}\n`)
      io.out("It is not encrypted and holds no passwords.\n")
    }
  }
  return damage.length > 0 ? 1 : 0
}
