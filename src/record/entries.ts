import type { Kysely, Transaction } from "kysely"
import type { Problem } from "../engine/problem.js"
import { inGroups, insertRows } from "./bulk-insert.js"
import { canonicalJson } from "./canonical-json.js"
import { CHAIN_START, type EntryRow, entryHash } from "./chain.js"
import { childRow, setChildRows } from "./children.js"
import { idTaken, numberTaken, type Refusal, refusalOf, sameContent } from "./draft-rules.js"
import { currentOf, type Draft, type Entry, PAPER_KINDS } from "./entry.js"
import type { Tables } from "./tables.js"

export type Saved =
  | { readonly kind: "saved"; readonly entries: readonly Entry[] }
  /** What the draft is about does not exist. */
  | { readonly kind: "not-found"; readonly problems: readonly Problem[] }
  /** The draft contradicts what is already recorded. */
  | { readonly kind: "conflict"; readonly problems: readonly Problem[] }

/** Positions in the chain, both included. */
export interface Span {
  readonly first: number
  readonly last: number
}

/**
 * Records the drafts, in order, in one transaction: all of them or none. An id that already stands for the same
 * content is answered with the entry recorded first, so a request may be repeated without doubling anything.
 *
 * However many drafts there are, the record is asked about all of them at once and their rows are written together.
 * `also` runs in the same transaction, with where the new entries stand in the chain; null when nothing was new.
 */
export async function appendEntries(
  queries: Kysely<Tables>,
  practice: string,
  drafts: readonly Draft[],
  also?: (transaction: Transaction<Tables>, span: Span | null) => Promise<void>,
): Promise<Saved> {
  const refusals: Refusal[] = []
  try {
    const entries = await queries.transaction().execute(async (transaction) => {
      const batch = new Batch(transaction, practice)
      await batch.start(drafts)
      const recorded: Entry[] = []
      for (const draft of drafts) {
        const outcome = batch.record(draft)
        if ("problem" in outcome) refusals.push(outcome)
        else recorded.push(outcome)
      }
      if (refusals.length > 0) throw new RollBack()
      const span = await batch.finish()
      await also?.(transaction, span)
      return recorded
    })
    return { kind: "saved", entries }
  } catch (error) {
    if (!(error instanceof RollBack)) throw error
    const kind = refusals.some((refusal) => refusal.kind === "not-found") ? "not-found" : "conflict"
    return { kind, problems: refusals.map((refusal) => refusal.problem) }
  }
}

/** Everything ever recorded about the child, oldest first, superseded entries included. */
export async function entriesOf(
  queries: Kysely<Tables>,
  practice: string,
  child: string,
): Promise<readonly Entry[]> {
  const rows = await queries
    .selectFrom("entries")
    .selectAll()
    .where("practice", "=", practice)
    .where("child", "=", child)
    .orderBy("position")
    .execute()
  return rows.map(entryOf)
}

export function entryOf(row: EntryRow): Entry {
  return {
    practice: row.practice,
    position: row.position,
    id: row.id,
    child: row.child,
    kind: row.kind,
    body: JSON.parse(row.body),
    author: row.author,
    recordedAt: row.recorded_at,
    supersedes: row.supersedes,
    reason: row.reason,
    previousHash: row.previous_hash,
    hash: row.hash,
  } as Entry
}

class RollBack extends Error {}

/** The drafts of one transaction: keeps the end of the chain and what is known of the children it touches. */
class Batch {
  private position = 0
  private head = CHAIN_START
  private readonly children = new Map<string, Entry[]>()
  private readonly byId = new Map<string, Entry>()
  /** Whose a number is, and the number each child has. */
  private readonly holders = new Map<string, { readonly child: string; readonly name: string }>()
  private readonly numbers = new Map<string, string>()
  private readonly rows: EntryRow[] = []

  constructor(
    private readonly transaction: Transaction<Tables>,
    private readonly practice: string,
  ) {}

  /** Reads all that the drafts will be asked about. */
  async start(drafts: readonly Draft[]): Promise<void> {
    const last = await this.entries()
      .select(["position", "hash"])
      .orderBy("position", "desc")
      .limit(1)
      .executeTakeFirst()
    if (last) {
      this.position = last.position
      this.head = last.hash
    }
    const children = inGroups(drafts.map(({ child }) => child))
    for (const child of children.flat()) this.children.set(child, [])
    for (const some of children) {
      const rows = await this.entries().selectAll().where("child", "in", some).execute()
      // Sorted here: asked for the order, the database would walk the whole record by position.
      for (const row of rows.toSorted((a, b) => a.position - b.position))
        this.children.get(row.child)?.push(entryOf(row))
      await this.learnNumbers("child", some)
    }
    for (const some of inGroups(drafts.flatMap(({ id }) => id ?? []))) {
      const rows = await this.entries().selectAll().where("id", "in", some).execute()
      for (const row of rows) this.byId.set(row.id, entryOf(row))
    }
    const numbers = drafts.flatMap((draft) => (draft.kind === "child" ? (draft.body.number ?? []) : []))
    for (const some of inGroups(numbers)) await this.learnNumbers("number", some)
  }

  record(draft: Draft): Entry | Refusal {
    const known = this.children.get(draft.child) ?? []
    const earlier = draft.id === undefined ? undefined : this.byId.get(draft.id)
    if (earlier) return sameContent(earlier, draft) ? earlier : idTaken(earlier.id)
    const ofPractice = draft.child === this.practice
    const isPaper = (PAPER_KINDS as readonly string[]).includes(draft.kind)
    if (isPaper !== ofPractice && draft.kind !== "withdrawal")
      throw new RangeError("papers stand under the practice, everything else under a child")
    const refusal = refusalOf(draft, { known, isPaper: ofPractice }) ?? this.numberRefusal(draft)
    if (refusal) return refusal
    const entry = this.add(draft)
    known.push(entry)
    this.byId.set(entry.id, entry)
    // The next draft may ask for the same number.
    const superseded = known.find(({ id }) => id === entry.supersedes)
    if (entry.kind === "child" || superseded?.kind === "child") this.holdNumber(entry)
    return entry
  }

  /** Writes what was recorded, and answers where it stands in the chain. */
  async finish(): Promise<Span | null> {
    await insertRows(this.transaction, "entries", this.rows)
    const rows = new Map<string, Tables["children"] | null>()
    for (const [child, entries] of this.children) {
      const last = entries.at(-1)
      if (!last || child === this.practice) continue
      const row = { practice: this.practice, child, current: currentOf(entries), lastHash: last.hash }
      rows.set(child, childRow(row))
    }
    await setChildRows(this.transaction, this.practice, rows)
    const first = this.rows[0]
    return first ? { first: first.position, last: this.position } : null
  }

  private entries() {
    return this.transaction.selectFrom("entries").where("practice", "=", this.practice)
  }

  private async learnNumbers(by: "child" | "number", names: readonly string[]): Promise<void> {
    const rows = await this.transaction
      .selectFrom("children")
      .select(["child", "name", "number"])
      .where("practice", "=", this.practice)
      .where("number", "is not", null)
      .where(by, "in", names)
      .execute()
    for (const { child, name, number } of rows) {
      if (number === null) continue
      this.holders.set(number, { child, name })
      this.numbers.set(child, number)
    }
  }

  private numberRefusal(draft: Draft): Refusal | null {
    if (draft.kind !== "child" || draft.body.number === undefined) return null
    const { number } = draft.body
    const holder = this.holders.get(number)
    return holder && holder.child !== draft.child ? numberTaken({ number, name: holder.name }) : null
  }

  private holdNumber(entry: Entry): void {
    const before = this.numbers.get(entry.child)
    if (before !== undefined) this.holders.delete(before)
    this.numbers.delete(entry.child)
    if (entry.kind !== "child" || entry.body.number === undefined) return
    this.holders.set(entry.body.number, { child: entry.child, name: entry.body.name })
    this.numbers.set(entry.child, entry.body.number)
  }

  private add(draft: Draft): Entry {
    const unhashed = {
      practice: this.practice,
      position: this.position + 1,
      id: draft.id ?? crypto.randomUUID(),
      child: draft.child,
      kind: draft.kind,
      body: canonicalJson(draft.body),
      author: draft.author,
      recorded_at: draft.recordedAt,
      supersedes: draft.supersedes ?? null,
      reason: draft.reason ?? null,
      previous_hash: this.head,
    }
    const row = { ...unhashed, hash: entryHash(unhashed) }
    this.rows.push(row)
    this.position = row.position
    this.head = row.hash
    return entryOf(row)
  }
}
