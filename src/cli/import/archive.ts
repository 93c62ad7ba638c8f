import type { Problem } from "../../engine/problem.js"
import { counted } from "../../engine/words.js"
import { ArchiveFault } from "../../interop/archive/archive-fault.js"
import { type OpenArchive, openArchive } from "../../interop/archive/zip-reader.js"
import { LARGEST_FILE_BYTES } from "../../interop/course/limits.js"
import { problem } from "../../interop/course/problem.js"
import { faultOf } from "../export/fault-of.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"

export { isArchive } from "../../interop/archive/zip-reader.js"

export interface ImportArchiveArguments {
  /** A zip with our manifest: see `isArchive`. */
  readonly file: string
  readonly data: string
  readonly json?: boolean | undefined
}

/** Restores the archive of a practice into a new or empty data folder: the same record, entry for entry. */
export async function importArchive(
  { file, data, json = false }: ImportArchiveArguments,
  io: Io,
): Promise<ExitCode> {
  try {
    const { restoreArchive } = await import("../../server/leave/restore-archive.js")
    const onProgress = (told: string) => io.error(`${told}\n`)
    const restored = await restoreArchive({ file, folder: data, onProgress })
    const { practice, entries, head, children, files, logIns, linksEnded } = restored
    if (json) return toldJson({ restored: true, data, ...restored }, io)
    io.out(
      [
        `${practice.name}: ${entries === 1 ? "1 entry" : `${entries} entries`}, ${children === 1 ? "1 child" : `${children} children`} and ${counted(files, "file")} restored into ${data}.`,
        `Last entry: ${head}`,
        ...(logIns.length > 0
          ? [
              `Passwords are not in an archive. New ones stand in ${logIns.join(" and ")}; change them at the first log-in.`,
            ]
          : ["Nobody of the archive could log in; the first start makes a log-in."]),
        ...(linksEnded > 0
          ? [`${linksEnded} family links that still opened are ended; hand out new ones.`]
          : []),
        "Stop the former installation, so that no message is sent from both.",
        "",
      ].join("\n"),
    )
    return 0
  } catch (cause) {
    return toldProblems([refusalOf(cause, file)], { io, json })
  }
}

/**
 * What an archive holds: a practice, to be restored by `importArchive`, or the text of one child's course file, to be
 * taken in as any course file is.
 */
export async function archiveContent(
  file: string,
): Promise<
  | { readonly of: "practice" }
  | { readonly of: "course"; readonly text: string }
  | { readonly problem: Problem }
> {
  let archive: OpenArchive | null = null
  try {
    archive = await openArchive(file)
    if (archive.manifest.of === "practice") return { of: "practice" }
    for (const { name } of archive.manifest.parts)
      for await (const _ of archive.pieces(name)) {
        // Read for its checksum alone: a part that was altered makes the whole archive doubtful.
      }
    const text = await archive.bytes("course.json", LARGEST_FILE_BYTES)
    return { of: "course", text: text.toString("utf8") }
  } catch (cause) {
    return { problem: refusalOf(cause, file) }
  } finally {
    archive?.close()
  }
}

function refusalOf(cause: unknown, file: string): Problem {
  if (!(cause instanceof ArchiveFault)) return faultOf(cause, { path: "<file>", value: file })
  const allowed = "an archive as Lengthwise wrote it"
  const message = `${file} was not taken, and nothing was stored: ${cause.message}.`
  return { ...problem({ path: "<file>", value: file, allowed }), message }
}
