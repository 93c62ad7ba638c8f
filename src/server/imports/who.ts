import { say } from "../../engine/say.js"
import type { Identity } from "../../interop/intake/fragment.js"
import { type Candidate, type KnownChild, sameChild } from "../../interop/intake/same-child.js"
import { ChildIndex } from "./child-index.js"
import type { ImportProblem, Problems } from "./problem.js"
import type { StagedGroup, Staging } from "./staging.js"

/** Rows that may be of a child that is known: for a person to decide. */
export interface NearMatch {
  readonly group: number
  readonly identity: Identity
  readonly line: number
  readonly rows: number
  readonly candidates: readonly (Candidate & { readonly isRecorded: boolean })[]
  /** Whether enough is known to record them as another child. */
  readonly mayBeNew: boolean
}

const MOST_NEAR = 500
const GROUPS_AT_ONCE = 500

export interface WhoFound {
  readonly near: readonly NearMatch[]
  readonly nearCount: number
}

/** Decides for each group of rows whose they are: a child of the practice, one the file brings, or a question. */
export function findWho({
  known,
  staging,
  problems,
}: {
  readonly known: readonly KnownChild[]
  readonly staging: Staging
  readonly problems: Problems
}): WhoFound {
  const index = new ChildIndex(known)
  const recorded = new Set(known.map(({ id }) => id))
  const near: NearMatch[] = []
  let nearCount = 0
  staging.begin()
  for (const group of everyGroup(staging)) {
    const found = sameChild(group.identity, index.candidates(group.identity))
    if (found.kind === "same")
      staging.setWho(group.id, recorded.has(found.child.id) ? "same" : "new", found.child.id)
    else if (found.kind === "near") {
      staging.setWho(group.id, "near", null)
      nearCount += 1
      if (near.length < MOST_NEAR)
        near.push({
          group: group.id,
          identity: group.identity,
          line: group.firstLine,
          rows: group.rows,
          candidates: found.candidates.map((candidate) => ({
            ...candidate,
            isRecorded: recorded.has(candidate.child.id),
          })),
          mayBeNew: newChildOf(group.identity) !== null,
        })
    } else {
      const fresh = newChildOf(group.identity)
      if (fresh) index.add(fresh)
      else problems.add(notEnough(group))
      staging.setWho(group.id, fresh ? "new" : "refused", fresh?.id ?? null)
    }
  }
  staging.commit()
  return { near, nearCount }
}

/** The child that rows would make; null when they do not say enough. */
export function newChildOf({ name, number, born, sex }: Identity): KnownChild | null {
  const called = name ?? number
  if (called === undefined || born === undefined || sex === undefined) return null
  return { id: crypto.randomUUID(), name: called, number: number ?? null, born, sex }
}

function notEnough({ identity: { name, number, born, sex }, firstLine, rows }: StagedGroup) {
  return {
    line: firstLine,
    heading: name ?? number ?? "",
    value: "",
    why: say(
      born === undefined && sex === undefined
        ? "no child of the practice is meant, and to record a new one date of birth and sex are missing; {rows, plural, one {# row was} other {# rows were}} not taken"
        : born === undefined
          ? "no child of the practice is meant, and to record a new one the date of birth is missing; {rows, plural, one {# row was} other {# rows were}} not taken"
          : "no child of the practice is meant, and to record a new one the sex is missing; {rows, plural, one {# row was} other {# rows were}} not taken",
      { rows },
    ),
  }
}

/** Rows that nobody decided about, or that somebody left out. */
export function leftOut({ identity: { name, number }, firstLine, rows, state }: StagedGroup): ImportProblem {
  return {
    line: firstLine,
    heading: name ?? number ?? "",
    value: "",
    why: say(
      state === "near"
        ? "nobody decided whose {rows, plural, one {this row is} other {these # rows are}}"
        : "{rows, plural, one {# row was} other {# rows were}} left out by a person",
      { rows },
    ),
  }
}

function* everyGroup(staging: Staging): Iterable<StagedGroup> {
  let last = 0
  for (;;) {
    const groups = staging.groupsAfter(last, GROUPS_AT_ONCE)
    yield* groups
    const end = groups.at(-1)
    if (!end) return
    last = end.id
  }
}
