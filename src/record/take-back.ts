import type { Kysely } from "kysely"
import { inGroups } from "./bulk-insert.js"
import { canonicalJson } from "./canonical-json.js"
import { appendEntries, entryOf } from "./entries.js"
import { currentOf, type Draft, type Entry } from "./entry.js"
import { RecordError } from "./record-error.js"
import type { Tables } from "./tables.js"

/** What taking an import back does to some of its children. */
export interface TakeBackEffect {
  readonly children: number
  /** Children the import made, that go again. */
  readonly childrenGone: number
  readonly entriesWithdrawn: number
  /** Visits the import had added figures to, that are again as they were. */
  readonly visitsRestored: number
  /** Left as they are: a person recorded more of them since. */
  readonly left: readonly { readonly child: string; readonly name: string }[]
  /** Where to go on; null when this was the last part. */
  readonly next: number | null
}

/** A part of an import: the children recorded in one transaction, the first one after a position of the chain. */
export interface PartOfImport {
  readonly id: string
  readonly after: number
}

type Which = PartOfImport

/** In how many parts an import was recorded. */
export async function partsOfImport(queries: Kysely<Tables>, practice: string, id: string): Promise<number> {
  const { total } = await spansOf(queries, practice, id)
    .select(({ fn }) => fn.countAll<number | string>().as("total"))
    .executeTakeFirstOrThrow()
  return Number(total)
}

export async function takeBackEffect(
  queries: Kysely<Tables>,
  practice: string,
  which: Which,
): Promise<TakeBackEffect> {
  return (await planned(queries, practice, which)).effect
}

/** Records what takes the import back for some of its children: nothing is deleted, withdrawals and restored visits are added. */
export async function takeBackSome(
  queries: Kysely<Tables>,
  practice: string,
  how: Which & { readonly author: string; readonly at: string; readonly reason: string },
  also: NonNullable<Parameters<typeof appendEntries>[3]>,
): Promise<TakeBackEffect> {
  const { effect, steps } = await planned(queries, practice, how)
  const { author, at: recordedAt, reason } = how
  const drafts = steps.map((step) => ({ ...step, author, recordedAt, reason }) as Draft)
  if (drafts.length > 0) {
    const saved = await appendEntries(queries, practice, drafts, also)
    if (saved.kind !== "saved")
      throw new RecordError(`an import can't be taken back: ${saved.problems[0]?.message}`)
  }
  return effect
}

type Step = Pick<Draft, "child" | "kind" | "body" | "supersedes">

async function planned(
  queries: Kysely<Tables>,
  practice: string,
  { id, after }: Which,
): Promise<{ readonly effect: TakeBackEffect; readonly steps: readonly Step[] }> {
  const [span, further] = await spansOf(queries, practice, id)
    .select(["first_position", "last_position"])
    .where("first_position", ">", after)
    .orderBy("first_position")
    .limit(2)
    .execute()
  if (!span) return { effect: NOTHING, steps: [] }
  const children = await queries
    .selectFrom("entries")
    .select("child")
    .distinct()
    .where("practice", "=", practice)
    .where("position", ">=", span.first_position)
    .where("position", "<=", span.last_position)
    .execute()
  const names = children.map(({ child }) => child)
  const byChild = new Map<string, Entry[]>(names.map((child) => [child, []]))
  for (const some of inGroups(names)) {
    const rows = await queries
      .selectFrom("entries")
      .selectAll()
      .where("practice", "=", practice)
      .where("child", "in", some)
      .execute()
    for (const row of rows.toSorted((a, b) => a.position - b.position))
      byChild.get(row.child)?.push(entryOf(row))
  }
  const madeBy = await makersOf(queries, practice)
  const each = [...byChild].map(([child, entries]) => ({ child, ...planOf({ id, child, entries, madeBy }) }))
  const steps = each.flatMap((plan) => plan.steps)
  const effect = {
    children: names.length,
    childrenGone: each.filter((plan) => plan.goes).length,
    entriesWithdrawn: steps.filter(({ kind }) => kind === "withdrawal").length,
    visitsRestored: steps.filter(({ kind }) => kind !== "withdrawal").length,
    left: each.flatMap(({ child, left }) => (left === null ? [] : [{ child, name: left }])),
    next: further ? span.first_position : null,
  }
  return { effect, steps }
}

const NOTHING: TakeBackEffect = {
  children: 0,
  childrenGone: 0,
  entriesWithdrawn: 0,
  visitsRestored: 0,
  left: [],
  next: null,
}

type Made = { readonly import: string; readonly takesBack: boolean } | null
type Makers = (position: number) => Made

function planOf({
  id,
  child,
  entries,
  madeBy,
}: {
  readonly id: string
  readonly child: string
  readonly entries: readonly Entry[]
  readonly madeBy: Makers
}): { readonly steps: readonly Step[]; readonly goes: boolean; readonly left: string | null } {
  const isOwn = ({ position }: Entry) => {
    const made = madeBy(position)
    return made?.import === id && !made.takesBack
  }
  const own = entries.filter(isOwn)
  const first = own[0]?.position ?? Number.POSITIVE_INFINITY
  const leave = { steps: [], goes: false, left: nameOf(entries) }
  if (entries.some(({ position }) => position > first && madeBy(position) === null)) return leave
  const heads = own.map((entry) => ({ entry, head: headOf(entry, entries) }))
  // What was taken back before the program ended in the middle of it is done.
  const standing = heads.filter(({ head }) => {
    const made = madeBy(head.position)
    return head.kind !== "withdrawal" && !(made?.import === id && made.takesBack)
  })
  // Another import put figures on top of this one's; that one is to be taken back first.
  if (standing.some(({ entry, head }) => !isSame(entry, head))) return leave
  const steps = standing
    .filter(({ entry }) => entry.kind !== "child")
    .map(({ entry, head }): Step => {
      const before = entries.find((earlier) => earlier.id === entry.supersedes)
      return before
        ? ({ child, kind: before.kind, body: before.body, supersedes: head.id } as Step)
        : { child, kind: "withdrawal", body: {}, supersedes: head.id }
    })
  const named = standing.find(({ entry }) => entry.kind === "child")
  if (!named) return { steps, goes: false, left: null }
  const going = new Set([...steps.map(({ supersedes }) => supersedes), named.head.id])
  if (currentOf(entries).some((entry) => !going.has(entry.id))) return leave
  const last: Step = { child, kind: "withdrawal", body: {}, supersedes: named.head.id }
  return { steps: [...steps, last], goes: true, left: null }
}

/** The entry that stands in an entry's place now. */
function headOf(entry: Entry, entries: readonly Entry[]): Entry {
  const later = entries.find(({ supersedes }) => supersedes === entry.id)
  return later ? headOf(later, entries) : entry
}

const isSame = (entry: Entry, head: Entry): boolean =>
  entry === head || canonicalJson(entry.body) === canonicalJson(head.body)

function nameOf(entries: readonly Entry[]): string {
  const named = entries.findLast(({ kind }) => kind === "child")
  return named?.kind === "child" ? named.body.name : ""
}

function spansOf(queries: Kysely<Tables>, practice: string, id: string) {
  return queries
    .selectFrom("import_spans")
    .where("practice", "=", practice)
    .where("import", "=", id)
    .where("takes_back", "=", 0)
}

/** Which import an entry belongs to, by its position; null for what a person recorded. */
async function makersOf(queries: Kysely<Tables>, practice: string): Promise<Makers> {
  const spans = await queries
    .selectFrom("import_spans")
    .select(["import", "first_position", "last_position", "takes_back"])
    .where("practice", "=", practice)
    .orderBy("first_position")
    .execute()
  return (position) => {
    let [low, high] = [0, spans.length]
    while (low < high) {
      const middle = (low + high) >> 1
      if ((spans[middle]?.last_position ?? 0) < position) low = middle + 1
      else high = middle
    }
    const span = spans[low]
    return span && span.first_position <= position
      ? { import: span.import, takesBack: span.takes_back === 1 }
      : null
  }
}
