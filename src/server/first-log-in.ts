import { existsSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import type { PracticeRecord } from "../record/index.js"
import { firstPassword, passwordFits, passwordHash } from "./passwords.js"

export interface FirstLogIn {
  readonly name: string
  /** Known at the first start only; later it stands in `file`. */
  readonly password?: string
  readonly file: string
}

const NAME = "clinician"

/**
 * Makes the first account with a random password, written to a file that only the owner of the data folder reads.
 * On a later start says where that file is, and removes it once the password has been changed.
 */
export async function firstLogIn({
  record,
  dataFolder,
  nowMs,
}: {
  readonly record: PracticeRecord
  readonly dataFolder: string
  readonly nowMs: number
}): Promise<FirstLogIn | undefined> {
  const file = join(dataFolder, "first-log-in.txt")
  const known = await record.personByLogIn(NAME)
  if (!known) {
    const password = firstPassword()
    await record.addPerson({
      id: crypto.randomUUID(),
      name: "Clinician",
      logIn: NAME,
      role: "clinician",
      passwordHash: await passwordHash(password),
      createdAt: new Date(nowMs).toISOString(),
    })
    writeFileSync(file, `name: ${NAME}\npassword: ${password}\n`, { mode: 0o600 })
    return { name: NAME, password, file }
  }
  if (!existsSync(file)) return undefined
  const written = /^password: (.+)$/m.exec(readFileSync(file, "utf8"))?.[1] ?? ""
  if (await passwordFits(written, known.passwordHash)) return { name: NAME, file }
  rmSync(file)
  return undefined
}
