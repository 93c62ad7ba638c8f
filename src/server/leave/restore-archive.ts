import { existsSync, mkdirSync, readdirSync, renameSync, rmdirSync, rmSync, writeFileSync } from "node:fs"
import { join, resolve } from "node:path"
import { ArchiveFault } from "../../interop/archive/archive-fault.js"
import { filePart, type PersonLine } from "../../interop/archive/format.js"
import { type OpenArchive, openArchive } from "../../interop/archive/zip-reader.js"
import {
  everythingOf,
  lockFolder,
  migrate,
  openEmbedded,
  type PersonRow,
  practiceRecord,
  practicesIn,
  putBack,
  RowRefused,
} from "../../record/index.js"
import { RECORD_FILE } from "../../record/record-file.js"
import { firstPassword, passwordHash } from "../passwords.js"
import { type CheckedArchive, checkArchive, entriesOf, filesOf, rowsOf } from "./check-archive.js"
import { personRow, practiceRow } from "./record-lines.js"

export interface Restored {
  readonly practice: { readonly id: string; readonly name: string }
  readonly entries: number
  readonly head: string
  readonly children: number
  readonly files: number
  /** Where new passwords stand, a file each; nobody who can log in is without one. */
  readonly logIns: readonly string[]
  /** Links of families that opened when the archive was made, and no longer do. */
  readonly linksEnded: number
}

/** The record is made in here and moved out of it when it is whole. What a killed restore left is swept away. */
const MAKING = "restoring"
/** What may lie in a folder that counts as empty. */
const OURS = [
  MAKING,
  "lock.sqlite",
  "lock.sqlite-journal",
  "in-use.txt",
  RECORD_FILE,
  `${RECORD_FILE}-wal`,
  `${RECORD_FILE}-shm`,
  "first-log-in.txt",
  "new-log-ins.txt",
  "scratch",
]

/**
 * Makes a data folder with the record of an archive, entry for entry. Everything is checked before the folder is touched;
 * then all is stored in one transaction beside and moved into place, so that there is the whole record or none.
 */
export async function restoreArchive({
  file,
  folder: given,
  onProgress = () => {},
}: {
  readonly file: string
  readonly folder: string
  readonly onProgress?: (told: string) => void
}): Promise<Restored> {
  const folder = resolve(given)
  const archive = await openArchive(file)
  try {
    let told = 0
    const checked = await checkArchive(archive, ({ bytes, of }) => {
      const percent = Math.floor((100 * bytes) / Math.max(of, 1))
      if (percent >= told + 10) onProgress(`checked ${percent} %`)
      told = Math.max(told, percent - (percent % 10))
    })
    return await intoFolder(folder, () => restored({ archive, checked, folder, onProgress }))
  } catch (cause) {
    if (cause instanceof RowRefused)
      throw new ArchiveFault(`the record does not take it: ${cause.message}`, { cause })
    throw cause
  } finally {
    archive.close()
  }
}

/** Holds the folder meanwhile; after a failure it is as it was. */
async function intoFolder<T>(folder: string, restore: () => Promise<T>): Promise<T> {
  const wasThere = existsSync(folder)
  const before = new Set(wasThere ? readdirSync(folder) : [])
  const strange = [...before].find((name) => !OURS.includes(name))
  if (strange !== undefined)
    throw new ArchiveFault(`the folder ${folder} is not empty (${strange}); name a new or an empty folder`)
  const lock = lockFolder(folder)
  try {
    if (before.has(RECORD_FILE)) await refuseIfUsed(folder)
    rmSync(join(folder, MAKING), { recursive: true, force: true })
    const result = await restore()
    lock.release()
    return result
  } catch (cause) {
    lock.release()
    for (const name of readdirSync(folder))
      if (!before.has(name) || name === MAKING) rmSync(join(folder, name), { recursive: true, force: true })
    if (!wasThere) rmdirSync(folder)
    throw cause
  }
}

/** A folder in which a server was started and nothing recorded may still be filled; any other is left alone. */
async function refuseIfUsed(folder: string): Promise<void> {
  const database = openEmbedded(folder)
  try {
    await migrate(database)
    for (const { id, name } of await practicesIn(database.queries)) {
      const everything = everythingOf(database, id)
      const entries = await everything.count("entries")
      const files = await everything.count("files")
      if (entries + files > 0)
        throw new ArchiveFault(
          `the folder ${folder} already holds ${entries} entries of ${name}; two records cannot be one. Name a new or an empty folder`,
        )
    }
  } finally {
    await database.close()
  }
}

async function restored({
  archive,
  checked,
  folder,
  onProgress,
}: {
  readonly archive: OpenArchive
  readonly checked: CheckedArchive
  readonly folder: string
  readonly onProgress: (told: string) => void
}): Promise<Restored> {
  const making = join(folder, MAKING)
  const { practice, people, head, entries } = checked
  onProgress(`storing ${entries} entries`)
  const newPeople = await withNewPasswords(people, practice.id)
  let files = 0
  const database = openEmbedded(making)
  try {
    await migrate(database)
    const children = await putBack(database, {
      practice: practiceRow(practice),
      people: newPeople.map(({ row }) => row),
      entries: () => entriesOf(archive, practice.id),
      files: async function* () {
        for await (const { sha256, bytes: size, mediaType, author, recordedAt } of filesOf(archive)) {
          files += 1
          const bytes = await archive.bytes(filePart(sha256), size)
          yield {
            practice: practice.id,
            sha256,
            media_type: mediaType,
            bytes,
            author,
            recorded_at: recordedAt,
          }
        }
      },
      rows: (table) => rowsOf(archive, table),
    })
    // Asked of what was stored, not of what was read.
    const chain = await practiceRecord(database, { ...practice }).verifyChain()
    if (!chain.whole || chain.head !== head) throw new ArchiveFault("what was stored is not what was read")
    const linksEnded = await linksEndedAt(archive)
    await database.close()
    const logIns = writeLogIns(newPeople, folder)
    renameSync(join(making, RECORD_FILE), join(folder, RECORD_FILE))
    rmSync(making, { recursive: true, force: true })
    return {
      practice: { id: practice.id, name: practice.name },
      ...{ entries, head, children, files, logIns, linksEnded },
    }
  } finally {
    await database.close()
  }
}

async function linksEndedAt(archive: OpenArchive): Promise<number> {
  let ended = 0
  for await (const { revoked_at } of rowsOf(archive, "family_links"))
    if (revoked_at === archive.manifest.madeAt) ended += 1
  return ended
}

interface NewPerson {
  readonly row: PersonRow
  readonly password: string | null
}

/** Whoever could log in gets a new password, made as that of the first log-in is. */
function withNewPasswords(people: readonly PersonLine[], practice: string): Promise<readonly NewPerson[]> {
  return Promise.all(
    people.map(async (line) => {
      const password = line.canLogIn ? firstPassword() : null
      const hash = password === null ? null : await passwordHash(password)
      return { password, row: personRow(line, { practice, passwordHash: hash }) }
    }),
  )
}

/** The first account's password where the server keeps it at a first start; those of others beside it. */
function writeLogIns(people: readonly NewPerson[], folder: string): readonly string[] {
  const withPassword = people.filter(({ password }) => password !== null)
  const written = (name: string, these: readonly NewPerson[]): readonly string[] => {
    if (these.length === 0) return []
    const file = join(folder, name)
    const text = these.map(({ row, password }) => `name: ${row.log_in}\npassword: ${password}\n`).join("\n")
    rmSync(file, { force: true })
    writeFileSync(file, text, { mode: 0o600 })
    return [file]
  }
  mkdirSync(folder, { recursive: true, mode: 0o700 })
  const isFirst = ({ row }: NewPerson) => row.log_in === "clinician"
  return [
    ...written("first-log-in.txt", withPassword.filter(isFirst)),
    ...written(
      "new-log-ins.txt",
      withPassword.filter((person) => !isFirst(person)),
    ),
  ]
}
