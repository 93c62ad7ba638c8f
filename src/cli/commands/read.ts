import { basename } from "node:path"
import type { DateOrder, TableMapping } from "../../engine/practice-rules.js"
import type { Problem } from "../../engine/problem.js"
import { LARGEST_FILE_BYTES } from "../../interop/course/limits.js"
import { LARGEST_OBJECT_BYTES } from "../../interop/dicom/bounds.js"
import type { Fragment, Skipped } from "../../interop/intake/fragment.js"
import { type Joined, joined } from "../../interop/intake/joined.js"
import { readFile } from "../../interop/read-file.js"
import type { ExitCode, Io } from "../io.js"
import { readText } from "../read-text.js"
import { toldJson, toldProblems } from "../told.js"

export interface ReadArguments {
  readonly files: readonly string[]
  readonly mapping?: string | undefined
  readonly dateOrder?: DateOrder | undefined
  readonly decimal?: "." | "," | undefined
  readonly json?: boolean | undefined
}

/** What files of instruments and other programs hold, without storing anything. */
export async function run(args: ReadArguments, io: Io): Promise<ExitCode> {
  const { json = false } = args
  const mapping = args.mapping === undefined ? undefined : await mappingOf(args.mapping, io)
  if (mapping && "problem" in mapping) return toldProblems([mapping.problem], { io, json })
  const found = await everything(args, { io, mapping })
  const children = joined(found.fragments)
  if (children.length === 0) return toldProblems(found.skipped.map(asProblem), { io, json })
  if (json) return toldJson(document(children, found.skipped), io)
  io.out(readText({ children, skipped: found.skipped }))
  return 0
}

async function everything(
  { files, dateOrder, decimal }: ReadArguments,
  { io, mapping }: { readonly io: Io; readonly mapping: TableMapping | undefined },
): Promise<{ readonly fragments: readonly Fragment[]; readonly skipped: readonly Skipped[] }> {
  const fragments: Fragment[] = []
  const skipped: Skipped[] = []
  const listed: string[] = []
  for (const path of files) {
    const found = await io.files(path)
    if ("problem" in found) skipped.push({ file: path, why: found.problem.message })
    // The table of contents of a DICOM medium lists the files beside it and holds no figure.
    else listed.push(...found.files.filter((file) => basename(file).toUpperCase() !== "DICOMDIR"))
  }
  const unique = [...new Set(listed)]
  const tell = progress(unique.length, io)
  const today = io.today()
  for (const [index, file] of unique.entries()) {
    const content = await io.readBytes(file, LARGEST_OBJECT_BYTES)
    if ("problem" in content) skipped.push({ file, why: content.problem.message })
    else {
      const { bytes } = content
      const read = await readFile({ file, bytes, today, mapping, dateOrder, decimalSign: decimal })
      fragments.push(...read.fragments)
      skipped.push(...read.skipped)
    }
    tell(index + 1)
  }
  if (listed.length === 0 && skipped.length === 0)
    skipped.push({ file: files.join(", "), why: "There is no file in it." })
  return { fragments, skipped }
}

/** Told from here on: fewer files are read before anybody asks. */
const MANY_FILES = 50

/** How far it is, on stderr, every so often. */
function progress(count: number, io: Io): (done: number) => void {
  if (count < MANY_FILES) return () => undefined
  const step = Math.max(MANY_FILES, Math.ceil(count / 20))
  return (done) => {
    if (done % step === 0 || done === count) io.error(`${done} of ${count} files read\n`)
  }
}

async function mappingOf(file: string, io: Io): Promise<TableMapping | { readonly problem: Problem }> {
  const source = await io.read(file)
  if ("problem" in source) return source
  const allowed = "a mapping as the page for imports writes it"
  const message = `${file} must be ${allowed}.`
  try {
    const value: unknown = JSON.parse(source.text)
    const isMapping =
      typeof value === "object" && value !== null && "columns" in value && Array.isArray(value.columns)
    if (isMapping) return value as unknown as TableMapping
  } catch {
    // Said below: for the reader it is no mapping either way.
  }
  return { problem: { path: "--mapping", value: file, allowed, message } }
}

const asProblem = ({ file, where, why }: Skipped): Problem => ({
  path: where ?? file,
  value: file,
  allowed: "a file with figures of a child",
  message: why.includes(file) ? why : `${file}: ${why}`,
})

/** What is listed of anything: a course file with a longer list is taken for junk by whoever reads it. */
const MOST_LISTED = 1000
/** Of the children beside the first, so that the document stays one that can be read as a course file. */
const MOST_OTHERS_BYTES = LARGEST_FILE_BYTES / 2

/** The first of a list, and after them in words how many more there are. */
function listed<T>(items: readonly T[], more: (count: number) => T): readonly T[] {
  if (items.length <= MOST_LISTED) return items
  return [...items.slice(0, MOST_LISTED), more(items.length - MOST_LISTED)]
}

/** One child as a course file, with what a course file has no place for beside it. */
function child({ identity, course, documents, notes }: Joined) {
  const { child: more, visits = [], ...lists } = course
  const { number, name, born, sex } = identity
  const papers = documents.map((paper) => ({ ...paper, bytes: paper.bytes.length }))
  const unlisted = papers.length - MOST_LISTED
  const said = unlisted > 0 ? [...notes, note("documents", `${unlisted} more papers are not listed`)] : notes
  return {
    lengthwise: 1,
    child: { ...(number === undefined ? {} : { id: number }), born, sex, ...more },
    visits,
    ...lists,
    ...(name === undefined ? {} : { identity: { name } }),
    ...(papers.length === 0 ? {} : { documents: papers.slice(0, MOST_LISTED) }),
    notes: listed(said, (count) => note("notes", `${count} more notes are not listed`)),
  }
}

const note = (path: string, why: string) => ({ kind: "not-listed", path, why })

function document(children: readonly Joined[], skipped: readonly Skipped[]) {
  const [first, ...rest] = children
  const others: object[] = []
  let bytes = 0
  for (const joinedChild of rest.slice(0, MOST_LISTED)) {
    const other = child(joinedChild)
    bytes += Buffer.byteLength(JSON.stringify(other, null, 2))
    if (bytes > MOST_OTHERS_BYTES) break
    others.push(other)
  }
  const unlisted = rest.length - others.length
  const file = "(all files)"
  const left = listed(skipped, (count) => ({ file, why: `${count} more are not listed.` }))
  const why = `${unlisted} more children are not listed: read fewer files at a time.`
  return {
    ...(first && child(first)),
    skipped: unlisted > 0 ? [...left, { file, why }] : left,
    ...(others.length === 0 ? {} : { others }),
  }
}
