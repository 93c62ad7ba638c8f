import type { Kysely } from "kysely"
import type { FamilyContact } from "../engine/messages/family-contact.js"
import type { Tables } from "./tables.js"

/** Whom to speak with about each child, by the child's id; children without a contact in force are not there. */
export async function familyContacts(
  queries: Kysely<Tables>,
  practice: string,
): Promise<ReadonlyMap<string, FamilyContact>> {
  const rows = await queries
    .selectFrom("current_entries")
    .select(["child", "body"])
    .where("practice", "=", practice)
    .where("kind", "=", "family")
    .execute()
  return new Map(rows.map(({ child, body }) => [child, JSON.parse(body)]))
}
