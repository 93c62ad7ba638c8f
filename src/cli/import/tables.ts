import { createReadStream } from "node:fs"
import type { DateOrder, TableMapping } from "../../engine/practice-rules.js"
import { WHOLE_FILE } from "../../interop/course/problem.js"
import { guessedMapping } from "../../interop/table/guess-mapping.js"
import { questions } from "../../interop/table/questions.js"
import type { DecimalSign, Question, QuestionKind } from "../../interop/table/table-types.js"
import { paperSchemas } from "../../server/contract/rules.js"
import type { Check, Finished } from "../../server/imports/table-import.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"

export interface ImportTableArguments {
  readonly file: string
  readonly data: string
  /** File of a saved mapping, JSON. */
  readonly mapping?: string | undefined
  readonly dateOrder?: string | undefined
  readonly decimal?: string | undefined
  readonly json?: boolean | undefined
}

const LARGEST_TABLE_BYTES = 200_000_000
const UNREADABLE: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file",
  EISDIR: "it is a folder",
  EACCES: "reading it is not permitted",
}
const OPTIONS: Partial<Record<QuestionKind, string>> = {
  "date-order": "--date-order",
  "decimal-sign": "--decimal",
}

/** Takes a table into a data folder as one import, which the page can take back. */
export async function run(asked: ImportTableArguments, io: Io): Promise<ExitCode> {
  const { data, json = false } = asked
  const [{ openFolder }, { machineClock }, { recoverImports }, { sweep }] = await Promise.all([
    import("../../server/open-folder.js"),
    import("../../server/clock.js"),
    import("../../server/imports/recover.js"),
    import("../../server/imports/scratch.js"),
  ])
  const refused = (message: string) =>
    toldProblems([{ path: WHOLE_FILE, value: asked.file, allowed: "", message }], { io, json })
  const clock = { ...machineClock, today: io.today }
  let folder: Awaited<ReturnType<typeof openFolder>>
  try {
    folder = await openFolder(data, clock)
  } catch (cause) {
    return refused(messageOf(cause))
  }
  try {
    const { record, oneAtATime, person, firstLogIn } = folder
    if (firstLogIn?.password)
      io.error(`A practice was made in ${data}; its first log-in stands in ${firstLogIn.file}\n`)
    const place = { record, oneAtATime, today: io.today, nowMs: clock.nowMs }
    await recoverImports(place)
    await sweep(record.scratchFolder, { nowMs: clock.nowMs(), olderThanMs: 0 })
    return await imported(asked, { io, json, place, author: person.id, refused })
  } catch (cause) {
    return refused(messageOf(cause))
  } finally {
    await folder.close()
  }
}

type Place = Parameters<typeof import("../../server/imports/table-import.js").TableImport.of>[1]

async function imported(
  asked: ImportTableArguments,
  {
    io,
    json,
    place,
    author,
    refused,
  }: {
    readonly io: Io
    readonly json: boolean
    readonly place: Place
    readonly author: string
    readonly refused: (message: string) => ExitCode
  },
): Promise<ExitCode> {
  const [{ TableImport }, { received, TooLarge }] = await Promise.all([
    import("../../server/imports/table-import.js"),
    import("../../server/imports/scratch.js"),
  ])
  const id = crypto.randomUUID()
  const name = asked.file.split(/[\\/]/).at(-1) ?? asked.file
  const kept = { folder: place.record.scratchFolder, id, most: LARGEST_TABLE_BYTES }
  const file = await received(createReadStream(asked.file), kept).catch((cause: unknown) => {
    if (cause instanceof TooLarge)
      throw new Error(`${asked.file} has more than ${LARGEST_TABLE_BYTES / 1e6} MB.`)
    const code = (cause as { readonly code?: string }).code ?? ""
    throw new Error(`${asked.file} cannot be read: ${UNREADABLE[code] ?? messageOf(cause)}.`)
  })
  const table = await TableImport.of({ id, name, file }, place)
  try {
    const { sniffed } = table
    if (sniffed.fault !== null) return refused(sniffed.fault)
    const saved = asked.mapping === undefined ? null : await savedMapping(asked.mapping, io)
    if (saved && "problems" in saved) return toldProblems(saved.problems, { io, json })
    const guess = guessedMapping(sniffed)
    const base = saved ?? { ...guess, id: guess.id || id, title: guess.title || name }
    const mapping: TableMapping = {
      ...base,
      ...(asked.dateOrder ? { dateOrder: asked.dateOrder as DateOrder } : {}),
      ...(asked.decimal ? { decimalSign: asked.decimal as DecimalSign } : {}),
    }
    const settled: QuestionKind[] = [
      ...(saved || asked.dateOrder ? (["date-order"] as const) : []),
      ...(saved || asked.decimal ? (["decimal-sign"] as const) : []),
    ]
    const open = questions(sniffed, mapping, { settled })
    if (open.length > 0) return toldProblems(open.map(asProblem), { io, json })
    const check = await table.check(mapping, { isStopped: () => false, onProgress: progressOf(io, "read") })
    if (!check) return refused("The check was stopped.")
    if (check.fault !== null) return refused(check.fault)
    const job = { isStopped: () => false, onProgress: progressOf(io, "recorded") }
    const finished = await table.run(author, job)
    const leftOut = sniffed.headings.filter(
      (heading) => !mapping.columns.some((column) => column.heading === heading),
    )
    return told({ file: asked.file, check: table.outcome() ?? check, finished, leftOut }, { io, json })
  } finally {
    await table.dispose()
  }
}

function asProblem({ kind, headings, choices, why }: Question) {
  const option = OPTIONS[kind] ?? "--mapping"
  return {
    path: option,
    value: headings.join(", "),
    allowed: choices.join(", "),
    message: `${why} Say it with ${option}${choices.length > 0 && option !== "--mapping" ? ` ${choices.join(" | ")}` : ""}.`,
  }
}

async function savedMapping(file: string, io: Io) {
  const read = await io.read(file)
  if ("problem" in read) return { problems: [read.problem] }
  try {
    const found = paperSchemas.mapping.safeParse(JSON.parse(read.text))
    if (found.success) return found.data as TableMapping
    return {
      problems: found.error.issues.map(({ path, message }) => ({
        path: `${file}: ${path.join(".")}`,
        value: null,
        allowed: message,
        message: `${path.join(".") || "the mapping"} must be ${message}.`,
      })),
    }
  } catch {
    return { problems: [{ path: file, value: null, allowed: "JSON", message: `${file} is not JSON.` }] }
  }
}

/** A line for each tenth of the way, not for each step of it. */
function progressOf(io: Io, what: string) {
  let last = -1
  return ({ done, total }: { readonly done: number; readonly total: number }) => {
    const tenth = total > 0 ? Math.floor((10 * done) / total) : 0
    if (tenth <= last) return
    last = tenth
    if (tenth > 0) io.error(`${what}: ${Math.min(100, tenth * 10)} %\n`)
  }
}

function told(
  {
    file,
    check,
    finished,
    leftOut,
  }: {
    readonly file: string
    readonly check: Check
    readonly finished: Finished
    /** Headings of columns that nothing was read from. */
    readonly leftOut: readonly string[]
  },
  { io, json }: { readonly io: Io; readonly json: boolean },
): ExitCode {
  const { id, counts } = finished
  const skipped = [
    ...check.problems.listed.map(({ line, heading, value, why }) => ({
      file,
      where: [line === null ? "" : `line ${line}`, heading].filter(Boolean).join(", "),
      why: value === "" ? why : `${why} (${value})`,
    })),
    ...check.near.map(({ line, identity, candidates }) => ({
      file,
      where: `line ${line}, ${identity.name ?? identity.number ?? ""}`,
      why: `may be ${candidates.map(({ child, why }) => `${child.name} (${why})`).join(" or ")}: decide on the page`,
    })),
  ]
  if (json)
    return toldJson(
      {
        import: id,
        children: { new: counts.childrenNew, known: counts.childrenKnown },
        visits: { new: counts.visitsNew, addedTo: counts.visitsAddedTo },
        rows: counts.rows,
        columnsLeftOut: leftOut,
        skippedCount: check.problems.count + check.nearCount,
        skipped,
      },
      io,
    )
  const unlisted = check.problems.count + check.nearCount - skipped.length
  io.out(
    [
      `${some(counts.rows, "row")}: ${some(counts.childrenNew, "new child", "new children")}, ${counts.childrenKnown} known; ${some(counts.visitsNew, "new visit")}, ${counts.visitsAddedTo} added to.`,
      ...(leftOut.length > 0 ? [`Columns left out: ${leftOut.join(", ")}`] : []),
      id === null ? "Nothing was new; nothing was recorded." : "The page Import takes it back in one step.",
      ...(skipped.length > 0 ? ["Not taken:"] : []),
      ...skipped.map(({ where, why }) => `  ${where}: ${why}`),
      ...(unlisted > 0 ? [`  and ${unlisted} more`] : []),
      "",
    ].join("\n"),
  )
  return 0
}

const some = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`

const messageOf = (cause: unknown): string => (cause instanceof Error ? cause.message : String(cause))
