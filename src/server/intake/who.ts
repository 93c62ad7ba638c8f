import { say } from "../../engine/say.js"
import type { Identity } from "../../interop/intake/fragment.js"
import {
  type Candidate,
  type KnownChild,
  type SameChild,
  sameChild,
} from "../../interop/intake/same-child.js"
import type { PracticeRecord } from "../../record/index.js"
import { identityKey } from "./inbox-content.js"

/** The children as they stand, read again only when something was recorded. */
const known = new WeakMap<
  PracticeRecord,
  { readonly head: string; readonly children: readonly KnownChild[] }
>()

async function childrenOf(record: PracticeRecord): Promise<readonly KnownChild[]> {
  const head = await record.head()
  const read = known.get(record)
  if (read?.head === head) return read.children
  const children = await record.everyChild()
  known.set(record, { head, children })
  return children
}

/**
 * Which child an object is about. What a person decided before for exactly this identity holds, unless everything the
 * file says now agrees with another child: then a person is asked again.
 */
export async function whoIs(record: PracticeRecord, identity: Identity): Promise<SameChild> {
  const children = await childrenOf(record)
  const found = sameChild(identity, children)
  const key = identityKey(identity)
  const earlier = key === null ? [] : await record.inbox.matchedByPerson(key)
  const matched = children.filter(({ id }) => earlier.includes(id))
  const [only] = matched
  if (!only) return found
  if (matched.length === 1 && (found.kind !== "same" || found.child.id === only.id))
    return { kind: "same", child: only }
  const byPerson = matched.map((child) => ({
    child,
    why: say("a file that names exactly this child was put here before"),
  }))
  return { kind: "near", candidates: [...byPerson, ...candidatesOf(found)] }
}

/** Whom a page may suggest, with what speaks for it. */
export function candidatesOf(found: SameChild): readonly Candidate[] {
  if (found.kind === "same") return [{ child: found.child, why: say("everything the file says agrees") }]
  return found.kind === "near" ? found.candidates : []
}
