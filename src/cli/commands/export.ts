import { resolve } from "node:path"
import { problem } from "../../interop/course/problem.js"
import { learnEveryLanguage } from "../../words/index.js"
import { courseInput } from "../course-input.js"
import type { ExportArguments, ExportFrom } from "../export/export-arguments.js"
import type { ExitCode, Io } from "../io.js"
import { written } from "../report-paper.js"
import { toldJson, toldProblems } from "../told.js"

/** Writes a course or a whole practice in an open format. */
export async function run(args: ExportArguments, io: Io): Promise<ExitCode> {
  learnEveryLanguage()
  const { what, format, out, json = false } = args
  const place = await io.place(what)
  const refused = (path: string, value: string, allowed: string) =>
    toldProblems([problem({ path, value, allowed })], { io, json })
  if (place.kind === "courses")
    return refused("<course>", what, "a course file, or a data folder with a record in it")
  if (out !== "-" && what !== "-" && resolve(what) === resolve(out))
    return refused("--out", out, "another file than what is exported")
  if (out === "-" && json) return refused("--out", out, "a file, since the JSON takes stdout")
  const from: ExportFrom = { ...args, place }
  switch (format) {
    case "fhir":
    case "ndjson":
      return exportFhirOf(from, format, io)
    case "csv":
      return (await import("../export/csv.js")).exportCsv(from, io)
    case "archive":
      return (await import("../export/archive.js")).exportArchive(from, io)
    case "research":
      return (await import("../export/research.js")).exportResearch(from, io)
  }
}

async function exportFhirOf(args: ExportFrom, format: "fhir" | "ndjson", io: Io): Promise<ExitCode> {
  const { what, out, place, json = false } = args
  if (place.kind === "record") {
    const allowed = "a course file; a running server gives a whole practice as FHIR at /fhir"
    return toldProblems([problem({ path: "<course>", value: what, allowed })], { io, json })
  }
  const input = await courseInput({ file: what }, io)
  if ("problems" in input) return toldProblems(input.problems, { io, json })
  const { exportFhir } = await import("../export/fhir.js")
  const text = exportFhir({ course: input.course, format, asOf: input.asOf })
  const hindered = await written(Buffer.from(text), { out, io })
  if (hindered) return toldProblems([hindered], { io, json })
  if (json) return toldJson({ format, out, bytes: Buffer.byteLength(text) }, io)
  if (out !== "-") io.out(`Written to ${out}.\n`)
  return 0
}

/** The table without names comes with a part of its own, which this build may not have. */
