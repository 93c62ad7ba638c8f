import { sql } from "kysely"
import {
  addPractice,
  type Draft,
  type OpenDatabase,
  type PracticeRecord,
  practiceRecord,
} from "../../src/record/index.js"

export const AUTHOR = "11111111-1111-4111-8111-111111111111"
export const CHILD = "22222222-2222-4222-8222-222222222222"
export const AT = "2025-01-10T10:00:00.000Z"
export const common = { child: CHILD, author: AUTHOR, recordedAt: AT }

export const child = (changes: Partial<Draft> = {}): Draft =>
  ({
    ...common,
    kind: "child",
    id: CHILD,
    body: { name: "Mira Solberg", number: "A-7", born: "2017-03-14", sex: "female" },
    ...changes,
  }) as Draft
export const visit = (date: string, changes: Partial<Draft> = {}): Draft =>
  ({ ...common, kind: "visit", body: { date, right: { axialLength: { mm: 24.12 } } }, ...changes }) as Draft
export const otherChild = (id: string, name: string, number?: string): Draft =>
  child({
    id,
    child: id,
    body: { name, born: "2016-05-01", sex: "male", ...(number ? { number } : {}) },
  } as Partial<Draft>)

export const nobody = (practice: string) =>
  ({
    id: AUTHOR,
    name: "Nobody",
    logIn: `nobody-${practice}`,
    role: "clinician",
    passwordHash: null,
    createdAt: AT,
  }) as const

export async function newPractice(database: OpenDatabase, id: string): Promise<PracticeRecord> {
  const practice = { id, name: id, latitude: 51.5, settings: {} }
  await addPractice(database.queries, { ...practice, createdAt: AT })
  const record = practiceRecord(database, practice)
  await record.addPerson(nobody(id))
  return record
}

/** What someone with the file in hand and time to spare could do. */
export async function withoutProtection(database: OpenDatabase, statement: string): Promise<void> {
  for (const trigger of ["no_update", "no_delete", "no_replace"])
    await sql.raw(`DROP TRIGGER entries_${trigger}`).execute(database.queries)
  await sql.raw(statement).execute(database.queries)
}
