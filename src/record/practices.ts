import type { Kysely } from "kysely"
import type { PracticeSettings } from "../engine/assessment.js"
import type { Tables } from "./tables.js"

export interface Practice {
  readonly id: string
  readonly name: string
  /** Degrees north; null when not said. */
  readonly latitude: number | null
  /** Only what the practice has set itself. */
  readonly settings: Partial<PracticeSettings>
}

export async function addPractice(
  queries: Kysely<Tables>,
  practice: Practice & { readonly createdAt: string },
): Promise<void> {
  await queries
    .insertInto("practices")
    .values({
      id: practice.id,
      name: practice.name,
      latitude: practice.latitude,
      settings: JSON.stringify(practice.settings),
      created_at: practice.createdAt,
    })
    .execute()
}

export async function practicesIn(queries: Kysely<Tables>): Promise<readonly Practice[]> {
  const rows = await queries.selectFrom("practices").selectAll().orderBy("created_at").orderBy("id").execute()
  return rows.map(({ id, name, latitude, settings }) => ({
    id,
    name,
    latitude,
    settings: JSON.parse(settings),
  }))
}
