import type { Kysely } from "kysely"
import type { Tables } from "./tables.js"

type Role = "clinician"

export interface Person {
  readonly id: string
  readonly name: string
  readonly logIn: string
  readonly role: Role
}

export interface NewPerson extends Person {
  /** Null for a person who is named beside entries but can't log in. */
  readonly passwordHash: string | null
  readonly createdAt: string
}

export async function addPerson(queries: Kysely<Tables>, practice: string, person: NewPerson): Promise<void> {
  await queries
    .insertInto("people")
    .values({
      practice,
      id: person.id,
      name: person.name,
      log_in: logInKey(person.logIn),
      role: person.role,
      password_hash: person.passwordHash,
      created_at: person.createdAt,
    })
    .execute()
}

/** The person of a log-in name with the stored hash, null when there is none. */
export async function personByLogIn(
  queries: Kysely<Tables>,
  practice: string,
  logIn: string,
): Promise<(Person & { readonly passwordHash: string | null }) | null> {
  const row = await queries
    .selectFrom("people")
    .selectAll()
    .where("practice", "=", practice)
    .where("log_in", "=", logInKey(logIn))
    .executeTakeFirst()
  return row ? { ...personOf(row), passwordHash: row.password_hash } : null
}

export async function peopleOf(queries: Kysely<Tables>, practice: string): Promise<readonly Person[]> {
  const rows = await queries.selectFrom("people").selectAll().where("practice", "=", practice).execute()
  return rows.map(personOf)
}

export async function setPasswordHash(
  queries: Kysely<Tables>,
  practice: string,
  { person, passwordHash }: { readonly person: string; readonly passwordHash: string },
): Promise<void> {
  await queries
    .updateTable("people")
    .set({ password_hash: passwordHash })
    .where("practice", "=", practice)
    .where("id", "=", person)
    .execute()
}

export function personOf(row: Pick<Tables["people"], "id" | "name" | "log_in" | "role">): Person {
  return { id: row.id, name: row.name, logIn: row.log_in, role: row.role as Role }
}

/** Log-in names are compared without regard to capitals, width and outer spaces. */
export function logInKey(logIn: string): string {
  return logIn.normalize("NFKC").trim().toLowerCase()
}
