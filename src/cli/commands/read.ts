import { basename } from "node:path"
import type { DateOrder, TableMapping } from "../../engine/practice-rules.js"
import type { Problem } from "../../engine/problem.js"
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

/** One child as a course file, with what a course file has no place for beside it. */
function child({ identity, course, documents, notes }: Joined) {
  const { child: more, visits = [], ...lists } = course
  const { number, name, born, sex } = identity
  return {
    lengthwise: 1,
    child: { ...(number === undefined ? {} : { id: number }), born, sex, ...more },
    visits,
    ...lists,
    ...(name === undefined ? {} : { identity: { name } }),
    ...(documents.length === 0
      ? {}
      : { documents: documents.map((paper) => ({ ...paper, bytes: paper.bytes.length })) }),
    notes,
  }
}

function document(children: readonly Joined[], skipped: readonly Skipped[]) {
  const [first, ...others] = children.map(child)
  return { ...first, skipped, ...(others.length === 0 ? {} : { others }) }
}
