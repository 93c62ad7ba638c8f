import type { Problem } from "../engine/problem.js"
import { say } from "../engine/say.js"
import { canonicalJson } from "./canonical-json.js"
import { currentOf, type Draft, type Entry } from "./entry.js"

/** Why a draft is not recorded. */
export type Refusal = { readonly kind: "not-found" | "conflict"; readonly problem: Problem }

/** What the child's own entries say against the draft. */
export function refusalOf(
  draft: Draft,
  { known, isPaper }: { readonly known: readonly Entry[]; readonly isPaper: boolean },
): Refusal | null {
  const namesChild = draft.kind === "child" && draft.supersedes === undefined
  if (namesChild && draft.id !== draft.child)
    throw new RangeError("a child's id is the id of the entry that first names the child")
  // A child that was withdrawn is there no more; what it had is still in the chain.
  if (!isPaper && !namesChild && !holdsChild(known))
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

/** Whether the entries name a child that was not withdrawn. */
function holdsChild(entries: readonly Entry[]): boolean {
  const superseded = new Set(entries.map(({ supersedes }) => supersedes))
  return entries.some(({ kind, id }) => kind === "child" && !superseded.has(id))
}

export function sameContent(entry: Entry, draft: Draft): boolean {
  return (
    entry.kind === draft.kind &&
    entry.child === draft.child &&
    entry.supersedes === (draft.supersedes ?? null) &&
    canonicalJson(entry.body) === canonicalJson(draft.body)
  )
}

/** The id stands for something else already. */
export function idTaken(id: string): Refusal {
  return conflict({
    path: "id",
    value: id,
    allowed: say("an id not used before, or used for the same content"),
    message: say("the id {id} already stands for another entry", { id }),
  })
}

export function numberTaken({ number, name }: { readonly number: string; readonly name: string }): Refusal {
  return conflict({
    path: "number",
    value: number,
    allowed: say("a number no other child of the practice has"),
    message: say("the number {number} belongs to {name}", { number, name }),
  })
}

function supersedingRefusal(draft: Draft, known: readonly Entry[]): Refusal | null {
  if (draft.supersedes === undefined) {
    if (draft.kind === "withdrawal") throw new RangeError("a withdrawal supersedes an entry")
    return null
  }
  const target = known.find((entry) => entry.id === draft.supersedes)
  const fits = target && (draft.kind === "withdrawal" || target.kind === draft.kind)
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
  if (later)
    return conflict({
      path: "supersedes",
      value: draft.supersedes,
      allowed: say("an entry that still holds"),
      message: say(
        later.kind === "withdrawal" ? "already withdrawn on {day}" : "already corrected on {day}",
        { day: later.recordedAt.slice(0, 10) },
      ),
    })
  return draft.kind === "withdrawal" && target.kind === "child" ? childStillHolds(draft, known) : null
}

/** A child goes only when nothing else of it holds: nothing may be left that belongs to nobody. */
function childStillHolds(draft: Draft, known: readonly Entry[]): Refusal | null {
  const rest = currentOf(known).filter(({ id }) => id !== draft.supersedes)
  if (rest.length === 0) return null
  return conflict({
    path: "supersedes",
    value: draft.supersedes ?? null,
    allowed: say("a child of whom nothing else holds"),
    message: say(
      "{count, plural, one {# entry of this child still holds} other {# entries of this child still hold}}",
      { count: rest.length },
    ),
  })
}

function doubleVisit(draft: Draft, known: readonly Entry[]): Refusal | null {
  if (draft.kind !== "visit") return null
  const { date } = draft.body
  const sameDay = known.some(
    (entry) => entry.kind === "visit" && entry.body.date === date && entry.id !== draft.supersedes,
  )
  const same =
    sameDay &&
    currentOf(known).some(
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

function conflict(problem: Problem): Refusal {
  return { kind: "conflict", problem }
}
