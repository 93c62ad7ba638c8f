import { mkdtempSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import type { FastifyInstance, LightMyRequestResponse } from "fastify"
import {
  addPractice,
  migrate,
  openEmbedded,
  type PracticeRecord,
  practiceRecord,
} from "../../src/record/index.js"
import { buildApp } from "../../src/server/app.js"
import type { ChildView } from "../../src/server/contract/child.js"
import type { Problem } from "../../src/server/contract/problem.js"
import type { MailJobOptions } from "../../src/server/mail/mail-job.js"
import { passwordHash } from "../../src/server/passwords.js"

export const TODAY = "2025-11-25"
export const PASSWORD = "correct horse battery staple"
const START_MS = Date.parse(`${TODAY}T09:00:00Z`)
const hashed = passwordHash(PASSWORD)

export interface TestApp {
  readonly app: FastifyInstance
  readonly record: PracticeRecord
  /** The data folder. */
  readonly folder: string
  /** Moves the clock on; the day stays. */
  readonly pass: (ms: number) => void
  readonly moveTo: (today: string) => void
  /** Asks as the person logged in, when `logIn` was called. */
  readonly ask: (
    method: "GET" | "POST" | "DELETE",
    url: string,
    options?: { readonly body?: unknown; readonly headers?: Readonly<Record<string, string>> },
  ) => Promise<LightMyRequestResponse>
  readonly logIn: () => Promise<void>
  readonly addChild: (changes?: object) => Promise<ChildView>
  readonly close: () => Promise<void>
}

/** The whole application on a record of its own, with a clock that stands still. */
export async function testApp({
  staticFolder,
  mail,
}: {
  readonly staticFolder?: string
  readonly mail?: MailJobOptions
} = {}): Promise<TestApp> {
  const folder = mkdtempSync(join(tmpdir(), "lengthwise-app-"))
  const database = openEmbedded(folder)
  await migrate(database)
  const practice = { id: "practice", name: "Quiet Harbour", latitude: 51.5, settings: {} }
  const createdAt = new Date(START_MS).toISOString()
  await addPractice(database.queries, { ...practice, createdAt })
  const record = practiceRecord(database, practice)
  for (const [name, logIn] of [
    ["Ada Lindqvist", "ada"],
    ["Ben Osei", "ben"],
  ] as const)
    await record.addPerson({
      id: crypto.randomUUID(),
      name,
      logIn,
      role: "clinician",
      passwordHash: await hashed,
      createdAt,
    })
  let nowMs = START_MS
  let today = TODAY
  let cookie = ""
  const app = await buildApp({
    record,
    clock: { nowMs: () => nowMs, today: () => today },
    staticFolder,
    mail,
  })

  const ask: TestApp["ask"] = (method, url, { body, headers } = {}) =>
    app.inject({
      method,
      url,
      headers: { ...(cookie ? { cookie } : {}), ...headers },
      ...(body === undefined ? {} : { payload: body as object }),
    })
  return {
    app,
    record,
    folder,
    ask,
    pass: (ms) => {
      nowMs += ms
    },
    moveTo: (day) => {
      today = day
    },
    async logIn() {
      const answer = await ask("POST", "/api/session", { body: { name: "ada", password: PASSWORD } })
      cookie = cookieOf(answer)
    },
    async addChild(changes = {}) {
      const body = { name: "Mira Solberg", born: "2017-03-14", sex: "female", ...changes }
      const answer = await ask("POST", "/api/children", { body })
      if (answer.statusCode !== 201) throw new Error(answer.body)
      return answer.json()
    },
    async close() {
      await app.close()
      await database.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

export function cookieOf(answer: LightMyRequestResponse): string {
  const [cookie] = answer.cookies
  if (!cookie) throw new Error(`no cookie: ${answer.body}`)
  return `${cookie.name}=${cookie.value}`
}

export function problemsOf(answer: LightMyRequestResponse): readonly Problem[] {
  return answer.json().problems
}

/** Where the faults are: `path: what is allowed`. */
export function faults(answer: LightMyRequestResponse): readonly string[] {
  return problemsOf(answer).map(({ path, allowed }) => `${path}: ${allowed}`)
}
