import type { Kysely } from "kysely"
import type { Supply } from "../engine/course.js"
import type { Tables } from "./tables.js"

/** A bottle of a lot, and whose it is. */
export interface BottleOfLot {
  readonly child: string
  readonly entryId: string
  readonly supply: Supply
}

/**
 * Every bottle of a lot that the practice has handed out, for a recall. Letters count alike in either case and blanks
 * around them not at all, so that a slip in writing hides no child; compared here, since databases fold letters in
 * their own ways.
 */
export async function bottlesOfLot(
  queries: Kysely<Tables>,
  practice: string,
  lot: string,
): Promise<readonly BottleOfLot[]> {
  const rows = await queries
    .selectFrom("current_entries")
    .select(["child", "id", "body"])
    .where("practice", "=", practice)
    .where("kind", "=", "supply")
    .orderBy("position")
    .execute()
  const wanted = folded(lot)
  return rows.flatMap(({ child, id, body }) => {
    const supply = JSON.parse(body) as Supply
    return supply.lot !== undefined && folded(supply.lot) === wanted ? [{ child, entryId: id, supply }] : []
  })
}

const folded = (lot: string): string => lot.trim().normalize("NFKC").toLowerCase()
