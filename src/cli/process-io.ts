import { createReadStream, readFileSync, statSync } from "node:fs"
import { readdir, realpath, rename, rm, stat, writeFile } from "node:fs/promises"
import { join } from "node:path"
import type { CalendarDate } from "../engine/course.js"
import type { Problem } from "../engine/problem.js"
import { LARGEST_FILE_BYTES } from "../interop/course/limits.js"
import { WHOLE_FILE } from "../interop/course/problem.js"
import { tooLarge } from "../interop/course/too-large.js"
import { RECORD_FILE } from "../record/record-file.js"
import type { Io } from "./io.js"

/** The terminal, the files and the clock of this process. */
export const processIo: Io = {
  out: (answer) => process.stdout.write(answer),
  error: (text) => process.stderr.write(text),
  read,
  readBytes,
  write,
  place,
  files,
  today: localDay,
}

/** What is no folder, or cannot be looked at, is left to `read` to complain of. */
async function place(path: string): ReturnType<Io["place"]> {
  const found = path === "-" ? null : await stat(path).catch(() => null)
  if (!found?.isDirectory()) return { kind: "file" }
  const names = await readdir(path)
  if (names.includes(RECORD_FILE)) return { kind: "record" }
  const files = names.filter((name) => name.endsWith(".json")).sort()
  return { kind: "courses", files: files.map((name) => join(path, name)) }
}

/** What cannot be looked at inside a folder is passed on as a file, so that reading it says why it cannot be. */
async function files(path: string): ReturnType<Io["files"]> {
  const found = await stat(path).catch((cause: unknown) => ({ cause }))
  if ("cause" in found) return { problem: unreadable(path, found.cause) }
  if (!found.isDirectory()) return { files: [path] }
  const all: string[] = []
  await gather(path, { all, seen: new Set() })
  return { files: all.sort() }
}

/** A link may lead back to a folder around it: each folder is gone into once, by its real path. */
async function gather(
  folder: string,
  { all, seen }: { readonly all: string[]; readonly seen: Set<string> },
): Promise<void> {
  const real = await realpath(folder).catch(() => folder)
  if (seen.has(real)) return
  seen.add(real)
  const inside = await readdir(folder, { withFileTypes: true }).catch(() => null)
  if (inside === null) all.push(folder)
  for (const entry of inside ?? []) {
    if (entry.name.startsWith(".")) continue
    const path = join(folder, entry.name)
    // Only what a link leads to has to be looked up.
    const found = entry.isSymbolicLink() ? await stat(path).catch(() => null) : entry
    if (found?.isDirectory()) await gather(path, { all, seen })
    // A pipe or a device would never end.
    else if (found === null || found.isFile()) all.push(path)
  }
}

async function read(file: string): ReturnType<Io["read"]> {
  try {
    if (file !== "-") {
      const { size } = await stat(file)
      if (size > LARGEST_FILE_BYTES) return { problem: tooLarge(size) }
    }
    return await textOf(file === "-" ? process.stdin : createReadStream(file))
  } catch (cause) {
    return { problem: unreadable(file, cause) }
  }
}

// Counted while it arrives: the size of a pipe is not known before its end, which may never come.
async function textOf(stream: AsyncIterable<Uint8Array>): ReturnType<Io["read"]> {
  const parts: Uint8Array[] = []
  let bytes = 0
  for await (const part of stream) {
    bytes += part.length
    if (bytes > LARGEST_FILE_BYTES) return { problem: tooLarge(bytes) }
    parts.push(part)
  }
  return { text: Buffer.concat(parts).toString("utf8") }
}

/** In one go: nothing else waits for this process, and a small file costs a tenth of what it does in turns. */
async function readBytes(file: string, most: number): ReturnType<Io["readBytes"]> {
  try {
    const { size } = statSync(file)
    if (size <= most) return { bytes: readFileSync(file) }
    const allowed = `a file of at most ${most / 1_000_000} MB`
    const message = `${file} has ${(size / 1_000_000).toFixed(1)} MB; it may have ${most / 1_000_000} MB.`
    return { problem: { path: WHOLE_FILE, value: file, allowed, message } }
  } catch (cause) {
    return { problem: unreadable(file, cause) }
  }
}

const reasonOf = (cause: unknown, reasons: Readonly<Record<string, string>>): string => {
  const code = (cause as { readonly code?: unknown } | null)?.code
  return reasons[String(code)] ?? (cause instanceof Error ? cause.message : String(cause))
}

function unreadable(file: string, cause: unknown): Problem {
  const reason = reasonOf(cause, {
    ENOENT: "there is no such file",
    EISDIR: "it is a folder",
    EACCES: "reading it is not permitted",
  })
  const message = `${file} cannot be read: ${reason}.`
  return { path: WHOLE_FILE, value: file, allowed: "a file that can be read", message }
}

async function write(file: string, content: string | Uint8Array): ReturnType<Io["write"]> {
  // Beside it and then in its place: whoever reads it meanwhile finds the old one or the new one, never a part.
  const beside = `${file}.${process.pid}.part`
  try {
    const found = await stat(file).catch(() => null)
    // A device or a pipe is written to: a file in the place of /dev/null would be felt by the whole machine.
    if (found && !found.isFile()) {
      await writeFile(file, content)
      return null
    }
    await writeFile(beside, content)
    await rename(beside, file)
    return null
  } catch (cause) {
    await rm(beside, { force: true })
    const reason = reasonOf(cause, {
      ENOENT: "its folder is not there",
      EISDIR: "it is a folder",
      EACCES: "writing it is not permitted",
      ENOSPC: "there is no room left",
    })
    const message = `${file} cannot be written: ${reason}.`
    return { path: "--out", value: file, allowed: "a file that can be written", message }
  }
}

/** Today where this computer stands; the day of a visit is a local day, not one of Greenwich. */
function localDay(): CalendarDate {
  const now = new Date()
  const two = (part: number) => String(part).padStart(2, "0")
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}
