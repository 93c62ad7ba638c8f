import { resolve } from "node:path"
import {
  addPractice,
  lockFolder,
  migrate,
  type OpenDatabase,
  openEmbedded,
  type Person,
  type PracticeRecord,
  practiceRecord,
  practicesIn,
} from "../record/index.js"
import type { Clock } from "./clock.js"
import { FIRST_LOG_IN, type FirstLogIn, firstLogIn } from "./first-log-in.js"
import { inTurn } from "./in-turn.js"
import type { IntakeContext } from "./intake/taken.js"

/** A data folder in the hands of one process, without a server. */
export interface OpenFolder extends IntakeContext {
  /** The practice's first person, in whose name a command records. */
  readonly person: Person
  /** How to log in the first time; absent once that password has been changed. */
  readonly firstLogIn?: FirstLogIn | undefined
  readonly close: () => Promise<void>
}

/**
 * Opens a data folder as the server does, with the practice and its first log-in made where there is none yet.
 *
 * @throws RecordError while another process holds the folder.
 */
export async function openFolder(folder: string, clock: Clock): Promise<OpenFolder> {
  const dataFolder = resolve(folder)
  const lock = lockFolder(dataFolder)
  let database: OpenDatabase | null = null
  const close = async () => {
    await database?.close()
    lock.release()
  }
  try {
    database = openEmbedded(dataFolder)
    await migrate(database)
    const nowMs = clock.nowMs()
    const record = await practiceOf(database, { demo: false, nowMs })
    const logIn = await firstLogIn({ record, dataFolder, nowMs })
    const person = await record.personByLogIn(FIRST_LOG_IN)
    if (!person) throw new RangeError("the first log-in was not made")
    lock.note(`importing, process ${process.pid}`)
    return { record, clock, oneAtATime: inTurn(), person, firstLogIn: logIn, close }
  } catch (cause) {
    await close()
    throw cause
  }
}

/** The practice of a data folder, made where there is none yet. */
export async function practiceOf(
  database: OpenDatabase,
  { demo, nowMs }: { readonly demo: boolean; readonly nowMs: number },
): Promise<PracticeRecord> {
  const [known] = await practicesIn(database.queries)
  if (known) return practiceRecord(database, known)
  const practice = {
    id: crypto.randomUUID(),
    name: demo ? "Seven Lanterns Eye Practice" : "Practice",
    latitude: demo ? 51.5 : null,
    settings: {},
  }
  await addPractice(database.queries, { ...practice, createdAt: new Date(nowMs).toISOString() })
  return practiceRecord(database, practice)
}
