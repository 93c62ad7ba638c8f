import type { Kysely, Transaction } from "kysely"
import type { Problem } from "../engine/problem.js"
import { say } from "../engine/say.js"
import { canonicalJson } from "./canonical-json.js"
import { CHAIN_START, type EntryRow, entryHash } from "./chain.js"
import { refreshChild } from "./children.js"
import { type Draft, type Entry, PAPER_KINDS } from "./entry.js"
import type { Tables } from "./tables.js"

export type Saved =
  | { readonly kind: "saved"; readonly entries: readonly Entry[] }
  /** What the draft is about does not exist. */
  | { readonly kind: "not-found"; readonly problems: readonly Problem[] }
  /** The draft contradicts what is already recorded. */
  | { readonly kind: "conflict"; readonly problems: readonly Problem[] }

type Refusal = { readonly kind: "not-found" | "conflict"; readonly problem: Problem }

/**
 * Records the drafts, in order, in one transaction: all of them or none. An id that already stands for the same
 * content is answered with the entry recorded first, so a request may be repeated without doubling anything.
 */
export async function appendEntries(
  queries: Kysely<Tables>,
  practice: string,
  drafts: readonly Draft[],
): Promise<Saved> {
  const refusals: Refusal[] = []
  try {
    const entries = await queries.transaction().execute(async (transaction) => {
      const batch = new Batch(transaction, practice)
      await batch.start()
      const recorded: Entry[] = []
      for (const draft of drafts) {
        const outcome = await batch.record(draft)
        if ("problem" in outcome) refusals.push(outcome)
        else recorded.push(outcome)
      }
      if (refusals.length > 0) throw new RollBack()
      await batch.finish()
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

/** Those of the entries that still hold: neither superseded nor a withdrawal. */
export function currentOf(entries: readonly Entry[]): readonly Entry[] {
  const superseded = new Set(entries.map((entry) => entry.supersedes))
  return entries.filter((entry) => entry.kind !== "withdrawal" && !superseded.has(entry.id))
}

class RollBack extends Error {}

/** The drafts of one transaction: keeps the end of the chain and the entries of the children it touches. */
class Batch {
  private position = 0
  private head = CHAIN_START
  private readonly children = new Map<string, Entry[]>()

  constructor(
    private readonly transaction: Transaction<Tables>,
    private readonly practice: string,
  ) {}

  async start(): Promise<void> {
    const last = await this.transaction
      .selectFrom("entries")
      .select(["position", "hash"])
      .where("practice", "=", this.practice)
      .orderBy("position", "desc")
      .limit(1)
      .executeTakeFirst()
    if (last) {
      this.position = last.position
      this.head = last.hash
    }
  }

  async record(draft: Draft): Promise<Entry | Refusal> {
    const known = await this.entriesOf(draft.child)
    const earlier = draft.id === undefined ? undefined : await this.entryWithId(draft.id)
    if (earlier) {
      if (sameContent(earlier, draft)) return earlier
      return conflict({
        path: "id",
        value: draft.id,
        allowed: say("an id not used before, or used for the same content"),
        message: say("the id {id} already stands for another entry", { id: String(draft.id) }),
      })
    }
    const isPaper = (PAPER_KINDS as readonly string[]).includes(draft.kind)
    if (isPaper !== (draft.child === this.practice) && draft.kind !== "withdrawal")
      throw new RangeError("papers stand under the practice, everything else under a child")
    const refusal = refusalOf(draft, { known, isPaper }) ?? (await this.numberTaken(draft))
    if (refusal) return refusal
    const entry = await this.insert(draft)
    known.push(entry)
    // The next draft may ask for the same number.
    if (entry.kind === "child") await refreshChild(this.transaction, this.practice, entry.child)
    return entry
  }

  async finish(): Promise<void> {
    for (const [child, entries] of this.children)
      if (entries.length > 0 && child !== this.practice)
        await refreshChild(this.transaction, this.practice, child)
  }

  private async entriesOf(child: string): Promise<Entry[]> {
    const loaded = this.children.get(child)
    if (loaded) return loaded
    const entries = [...(await entriesOf(this.transaction, this.practice, child))]
    this.children.set(child, entries)
    return entries
  }

  private async entryWithId(id: string): Promise<Entry | undefined> {
    const row = await this.transaction
      .selectFrom("entries")
      .selectAll()
      .where("practice", "=", this.practice)
      .where("id", "=", id)
      .executeTakeFirst()
    return row && entryOf(row)
  }

  private async numberTaken(draft: Draft): Promise<Refusal | null> {
    if (draft.kind !== "child" || draft.body.number === undefined) return null
    const other = await this.transaction
      .selectFrom("children")
      .select("name")
      .where("practice", "=", this.practice)
      .where("number", "=", draft.body.number)
      .where("child", "<>", draft.child)
      .executeTakeFirst()
    if (!other) return null
    return conflict({
      path: "number",
      value: draft.body.number,
      allowed: say("a number no other child of the practice has"),
      message: say("the number {number} belongs to {name}", {
        number: draft.body.number,
        name: other.name,
      }),
    })
  }

  private async insert(draft: Draft): Promise<Entry> {
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
    await this.transaction.insertInto("entries").values(row).execute()
    this.position = row.position
    this.head = row.hash
    return entryOf(row)
  }
}

/** What the child's own entries say against the draft. */
function refusalOf(
  draft: Draft,
  { known, isPaper }: { readonly known: readonly Entry[]; readonly isPaper: boolean },
): Refusal | null {
  const namesChild = draft.kind === "child" && draft.supersedes === undefined
  if (namesChild && draft.id !== draft.child)
    throw new RangeError("a child's id is the id of the entry that first names the child")
  if (!namesChild && !isPaper && known.length === 0)
    return {
      kind: "not-found",
      problem: {
        path: "child",
        value: draft.child,
        allowed: say("a child of this practice"),
        message: say("no such child"),
      },
    }
  return supersedingRefusal(draft, known) ?? doubleVisit(draft, known)
}

function supersedingRefusal(draft: Draft, known: readonly Entry[]): Refusal | null {
  if (draft.supersedes === undefined) {
    if (draft.kind === "withdrawal") throw new RangeError("a withdrawal supersedes an entry")
    return null
  }
  const target = known.find((entry) => entry.id === draft.supersedes)
  const fits = target && (draft.kind === "withdrawal" ? target.kind !== "child" : target.kind === draft.kind)
  if (!fits)
    return {
      kind: "not-found",
      problem: {
        path: "supersedes",
        value: draft.supersedes,
        allowed:
          draft.kind === "withdrawal"
            ? say("an entry of this child")
            : say("a {kind} of this child", { kind: draft.kind }),
        message:
          draft.kind === "withdrawal"
            ? say("no such entry to withdraw")
            : say("no such {kind} to correct", { kind: draft.kind }),
      },
    }
  if (!draft.reason?.trim())
    return conflict({
      path: "reason",
      value: draft.reason ?? null,
      allowed: say("why it is corrected, in words"),
      message: say("a correction needs a reason"),
    })
  const later = known.find((entry) => entry.supersedes === draft.supersedes)
  if (!later) return null
  return conflict({
    path: "supersedes",
    value: draft.supersedes,
    allowed: say("an entry that still holds"),
    message: say(later.kind === "withdrawal" ? "already withdrawn on {day}" : "already corrected on {day}", {
      day: later.recordedAt.slice(0, 10),
    }),
  })
}

function doubleVisit(draft: Draft, known: readonly Entry[]): Refusal | null {
  if (draft.kind !== "visit") return null
  const { date } = draft.body
  const same = currentOf(known).some(
    (entry) => entry.kind === "visit" && entry.body.date === date && entry.id !== draft.supersedes,
  )
  if (!same) return null
  return conflict({
    path: "date",
    value: date,
    allowed: say("one visit a day; correct the visit that is there"),
    message: say("a visit on {date} is already recorded", { date }),
  })
}

function sameContent(entry: Entry, draft: Draft): boolean {
  return (
    entry.kind === draft.kind &&
    entry.child === draft.child &&
    entry.supersedes === (draft.supersedes ?? null) &&
    canonicalJson(entry.body) === canonicalJson(draft.body)
  )
}

function conflict(problem: Problem): Refusal {
  return { kind: "conflict", problem }
}
