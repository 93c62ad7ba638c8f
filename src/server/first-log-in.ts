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

/** Who is there from the first start on. */
export const FIRST_LOG_IN = "clinician"

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
  const known = await record.personByLogIn(FIRST_LOG_IN)
  if (!known) {
    const password = firstPassword()
    await record.addPerson({
      id: crypto.randomUUID(),
      name: "Clinician",
      logIn: FIRST_LOG_IN,
      role: "clinician",
      passwordHash: await passwordHash(password),
      createdAt: new Date(nowMs).toISOString(),
    })
    writeFileSync(file, `name: ${FIRST_LOG_IN}\npassword: ${password}\n`, { mode: 0o600 })
    return { name: FIRST_LOG_IN, password, file }
  }
  if (!existsSync(file)) return undefined
  const written = /^password: (.+)$/m.exec(readFileSync(file, "utf8"))?.[1] ?? ""
  if (await passwordFits(written, known.passwordHash)) return { name: FIRST_LOG_IN, file }
  rmSync(file)
  return undefined
}
