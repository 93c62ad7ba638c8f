import type { Kysely } from "kysely"
import type { Course } from "../engine/course.js"
import { entryOf } from "./entries.js"
import { currentOf, dayOf, type Entry, type EntryKind } from "./entry.js"
import type { Tables } from "./tables.js"

/**
 * The child's course as the entries that still hold describe it, everything in order of its date.
 * Throws when the entries name no child: ask `findChild` first.
 */
export function courseFrom(
  entries: readonly Entry[],
  practice: { readonly latitude: number | null },
): Course {
  const current = currentOf(entries)
  const of = <Kind extends EntryKind>(kind: Kind) =>
    current
      .filter((entry): entry is Extract<Entry, { kind: Kind }> => entry.kind === kind)
      .sort(byDay)
      .map((entry) => entry.body as Extract<Entry, { kind: Kind }>["body"])
  const named = current.find((entry) => entry.kind === "child")
  if (named?.kind !== "child") throw new RangeError("the entries name no child")
  const { born, sex, ancestry, myopicParents, protocol } = named.body
  return {
    lengthwise: 1,
    child: {
      id: named.child,
      born,
      sex,
      ...(ancestry === undefined ? {} : { ancestry }),
      ...(myopicParents === undefined ? {} : { myopicParents }),
      ...(protocol === undefined ? {} : { protocol }),
    },
    ...(practice.latitude === null ? {} : { practice: { latitude: practice.latitude } }),
    visits: of("visit"),
    treatments: of("treatment"),
    supplies: of("supply"),
    // How a consent was signed stays in the record; the course says that it was given.
    consents: of("consent").map(({ signature: _, ...consent }) => consent),
    ...lists({
      missedNights: of("missed-nights"),
      decisions: of("decision"),
      concerns: of("concern"),
      orders: of("order"),
      explanations: of("explanation"),
      payments: of("payment"),
    }),
  }
}

/** Lists that hold anything: a child without orders has no such field. */
function lists<T extends Readonly<Record<string, readonly unknown[]>>>(all: T): Partial<T> {
  return Object.fromEntries(Object.entries(all).filter(([, items]) => items.length > 0)) as Partial<T>
}

/** The entries that still hold of several children at once, by child. */
export async function currentEntriesOfMany(
  queries: Kysely<Tables>,
  practice: string,
  children: readonly string[],
): Promise<ReadonlyMap<string, readonly Entry[]>> {
  const found = new Map<string, Entry[]>(children.map((child) => [child, []]))
  if (children.length === 0) return found
  const rows = await queries
    .selectFrom("current_entries")
    .selectAll()
    .where("practice", "=", practice)
    .where("child", "in", children)
    .execute()
  // Sorted here: asked for the order, the database would walk the whole record by position to find a few children.
  for (const row of rows.toSorted((a, b) => a.position - b.position)) found.get(row.child)?.push(entryOf(row))
  return found
}

function byDay(a: Entry, b: Entry): number {
  const [dayA, dayB] = [dayOf(a) ?? "", dayOf(b) ?? ""]
  return dayA < dayB ? -1 : dayA > dayB ? 1 : a.position - b.position
}
