import { problem } from "../../interop/course/problem.js"
import type { PracticeRecord } from "../../record/index.js"
import { faultOf } from "../export/fault-of.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"

export interface VerifyArguments {
  /** A data folder. */
  readonly data: string
  /** Also makes the derived tables anew; then no server may use the folder. */
  readonly rebuild?: boolean | undefined
  readonly json?: boolean | undefined
}

interface Answer {
  readonly whole: boolean
  readonly entries: number
  readonly head: string
  readonly files: { readonly count: number; readonly broken: number }
  readonly children: number
  /** The first entry that does not hold. */
  readonly brokenAt: { readonly position: number; readonly id: string; readonly why: string } | null
  readonly brokenFiles: readonly { readonly sha256: string; readonly why: string }[]
  readonly rebuilt: boolean
}

/** Whether the record of a data folder is whole: every entry and its link to the one before, every stored file. */
export async function run(
  { data, rebuild = false, json = false }: VerifyArguments,
  io: Io,
): Promise<ExitCode> {
  if ((await io.place(data)).kind !== "record") {
    const allowed = "a data folder with a record in it"
    return toldProblems([problem({ path: "<folder>", value: data, allowed })], { io, json })
  }
  try {
    const answer = rebuild ? await rebuilt(data) : await looked(data)
    if (json) toldJson(answer, io)
    else io.out(inWords(answer, data))
    return answer.whole ? 0 : 1
  } catch (cause) {
    return toldProblems([faultOf(cause, { path: "<folder>", value: data })], { io, json })
  }
}

/** Read beside a running server: nothing is written, and nothing is locked. */
async function looked(folder: string): Promise<Answer> {
  const { inSnapshot, practiceRecord, practicesIn } = await import("../../record/index.js")
  return inSnapshot(folder, async (snapshot) => {
    const [practice] = await practicesIn(snapshot.queries)
    return practice ? answerOf(practiceRecord(snapshot, practice), { rebuilt: false }) : NOTHING
  })
}

async function rebuilt(folder: string): Promise<Answer> {
  const { lockFolder, migrate, openEmbedded, practiceRecord, practicesIn } = await import(
    "../../record/index.js"
  )
  const lock = lockFolder(folder)
  const database = openEmbedded(folder)
  try {
    await migrate(database)
    const [practice] = await practicesIn(database.queries)
    if (!practice) return NOTHING
    const record = practiceRecord(database, practice)
    // Tables derived from broken entries would hide what is broken.
    const chain = await record.verifyChain()
    if (chain.whole) await record.rebuild()
    return await answerOf(record, { rebuilt: chain.whole })
  } finally {
    await database.close()
    lock.release()
  }
}

const NOTHING: Answer = {
  whole: true,
  entries: 0,
  head: "0".repeat(64),
  files: { count: 0, broken: 0 },
  children: 0,
  brokenAt: null,
  brokenFiles: [],
  rebuilt: false,
}

async function answerOf(record: PracticeRecord, { rebuilt }: { readonly rebuilt: boolean }): Promise<Answer> {
  const chain = await record.verifyChain()
  const { total: children } = await record.children({ page: 1, pageSize: 1 })
  let count = 0
  const brokenFiles: Answer["brokenFiles"][number][] = []
  for await (const { sha256 } of record.everything.files()) {
    count += 1
    try {
      await record.file(sha256)
    } catch (cause) {
      brokenFiles.push({ sha256, why: cause instanceof Error ? cause.message : String(cause) })
    }
  }
  return {
    whole: chain.whole && brokenFiles.length === 0,
    entries: chain.whole ? chain.entries : await record.everything.count("entries"),
    head: await record.head(),
    files: { count, broken: brokenFiles.length },
    children,
    brokenAt: chain.whole ? null : { position: chain.position, id: chain.id, why: chain.why },
    brokenFiles,
    rebuilt,
  }
}

function inWords(answer: Answer, folder: string): string {
  const { whole, entries, head, files, children, brokenAt, brokenFiles } = answer
  return [
    whole ? `The record in ${folder} is whole.` : `The record in ${folder} is NOT whole.`,
    ...(brokenAt ? [`Entry ${brokenAt.position} (${brokenAt.id}): ${brokenAt.why}.`] : []),
    ...brokenFiles.map(({ why }) => `${why}.`),
    `Entries: ${entries}. Children: ${children}. Stored files: ${files.count}.`,
    `Last entry: ${head}`,
    ...(answer.rebuilt ? ["The derived tables were made anew."] : []),
    ...(whole ? [] : ["Restore the last good backup or archive beside it, and keep this folder as it is."]),
    "",
  ].join("\n")
}
