import type { Taken } from "../../server/intake/taken.js"
import { archiveContent, importArchive, isArchive } from "../import/archive.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson } from "../told.js"

export interface ImportArguments {
  readonly files: readonly string[]
  readonly data: string
  readonly mapping?: string | undefined
  readonly dateOrder?: string | undefined
  readonly decimal?: string | undefined
  readonly json?: boolean | undefined
}

const LARGEST_BYTES = 50_000_000
const RECORDS = /\.(json|ndjson|zip)$/i
/** Of how many files between two lines of progress. */
const PROGRESS_STEP = 100

/**
 * Takes files into a data folder that no server is using: the archive of a practice is restored, a table is read by its
 * mapping, and everything else goes the way of what an instrument sends.
 */
export async function run(asked: ImportArguments, io: Io): Promise<ExitCode> {
  const files: string[] = []
  for (const path of asked.files) {
    const found = await io.files(path)
    // What is not there is left to the reading of it to complain of.
    files.push(...("problem" in found ? [path] : found.files))
  }
  const kinds = await Promise.all(files.map(kindOf))
  const special = files.find((_, index) => kinds[index] === "practice" || kinds[index] === "table")
  if (special !== undefined && files.length > 1) {
    const what = kinds[files.indexOf(special)] === "table" ? "a table" : "the archive of a practice"
    io.error(`${special} is ${what}: import it alone, one command for each.\n`)
    return 1
  }
  const { data, json, mapping, dateOrder, decimal } = asked
  if (special !== undefined && kinds[0] === "practice")
    return importArchive({ file: special, data, json }, io)
  if (special !== undefined) {
    const { run: importTable } = await import("../import/tables.js")
    return importTable({ file: special, data, mapping, dateOrder, decimal, json }, io)
  }
  // Records first: they name the children that measurements are then put under.
  const records = files.filter((file) => RECORDS.test(file))
  return takeAll([...records, ...files.filter((file) => !RECORDS.test(file))], asked, io)
}

type Kind = "practice" | "course-archive" | "table" | "other"

async function kindOf(file: string): Promise<Kind> {
  if (/\.(csv|tsv|tab|xlsx)$/i.test(file)) return "table"
  if (!(await isArchive(file))) return "other"
  const content = await archiveContent(file)
  return "of" in content && content.of === "course" ? "course-archive" : "practice"
}

async function takeAll(
  files: readonly string[],
  { data, json = false }: ImportArguments,
  io: Io,
): Promise<ExitCode> {
  // Loaded here: a restore and a table bring what they need themselves.
  const [{ openFolder }, { takeFile }, { machineClock }] = await Promise.all([
    import("../../server/open-folder.js"),
    import("../../server/intake/take-file.js"),
    import("../../server/clock.js"),
  ])
  const clock = { ...machineClock, today: io.today }
  let folder: Awaited<ReturnType<typeof openFolder>>
  try {
    folder = await openFolder(data, clock)
  } catch (cause) {
    io.error(`Nothing was imported: ${messageOf(cause)}\n`)
    if (json)
      toldJson({ taken: [], recorded: 0, known: 0, waiting: 0, skipped: [], fault: messageOf(cause) }, io)
    return 1
  }
  try {
    if (folder.firstLogIn?.password)
      io.error(`A practice was made in ${data}; its first log-in stands in ${folder.firstLogIn.file}\n`)
    const taken: Taken[] = []
    for (const [index, file] of files.entries()) {
      if (index > 0 && index % PROGRESS_STEP === 0) io.error(`${index} of ${files.length} files\n`)
      const bytes = await bytesOf(file, io)
      if ("why" in bytes) {
        taken.push({ file, outcome: "skipped", why: bytes.why })
        continue
      }
      const from = { kind: "person", person: folder.person } as const
      try {
        taken.push(...(await takeFile(folder, { file, bytes: bytes.bytes, from, makesChildren: true })))
      } catch (cause) {
        // One file that is refused is no reason to leave the others.
        taken.push({ file, outcome: "skipped", why: messageOf(cause) })
      }
    }
    return told(taken, { io, json })
  } finally {
    await folder.close()
  }
}

async function bytesOf(
  file: string,
  io: Io,
): Promise<{ readonly bytes: Uint8Array } | { readonly why: string }> {
  if (await isArchive(file)) {
    const content = await archiveContent(file)
    if ("problem" in content) return { why: content.problem.message }
    if (content.of === "course") return { bytes: new TextEncoder().encode(content.text) }
  }
  const read = await io.readBytes(file, LARGEST_BYTES)
  return "problem" in read ? { why: read.problem.message } : read
}

const WORDS: Readonly<Record<Taken["outcome"], string>> = {
  recorded: "recorded",
  known: "known already",
  waiting: "waits in the Inbox",
  skipped: "skipped",
}

function told(taken: readonly Taken[], { io, json }: { readonly io: Io; readonly json: boolean }): ExitCode {
  const count = (outcome: Taken["outcome"]) => taken.filter((one) => one.outcome === outcome).length
  const [recorded, known, waiting] = [count("recorded"), count("known"), count("waiting")]
  const skipped = taken.filter(({ outcome }) => outcome === "skipped")
  if (json)
    toldJson(
      {
        taken: taken.filter(({ outcome }) => outcome !== "skipped"),
        recorded,
        known,
        waiting,
        skipped: skipped.map(({ file, why }) => ({ file, why })),
      },
      io,
    )
  else
    io.out(
      [
        ...taken.map(({ file, outcome, why }) => `${file}: ${WORDS[outcome]}${why ? ` (${why})` : ""}`),
        `${recorded} recorded, ${known} known already, ${waiting} waiting in the Inbox, ${skipped.length} skipped`,
        "",
      ].join("\n"),
    )
  return recorded + known + waiting > 0 ? 0 : 1
}

function messageOf(cause: unknown): string {
  const problems = (cause as { readonly problems?: readonly { readonly message: string }[] }).problems
  if (problems && problems.length > 0) return problems.map(({ message }) => message).join("; ")
  return cause instanceof Error ? cause.message : String(cause)
}
