import type { Visit } from "../../engine/course.js"
import { contradictionWords } from "./contradiction-words.js"
import type { CourseFragment, Fragment, Identity } from "./fragment.js"
import { mergedVisit } from "./merged-visit.js"

/** What several files say of one child, as one. */
export interface Joined extends Fragment {
  /** Every identity that was given for the child. */
  readonly identities: readonly Identity[]
}

/**
 * Fragments by child, in the order in which each child first appears. Two fragments are of one child when they give the
 * same number, name, birth date and sex as far as both say: the files of one visit agree, and anything less is not ours
 * to guess. Visits of one day become one; where two files contradict each other the first stays and a note says so.
 */
export function joined(fragments: readonly Fragment[]): readonly Joined[] {
  const children: Joined[] = []
  const places = new Places()
  for (const fragment of fragments) {
    const place = places
      .of(fragment.identity)
      .find((at) => agree(children[at]?.identity ?? {}, fragment.identity))
    const known = place === undefined ? undefined : children[place]
    const child = known ? both(known, fragment) : { ...fragment, identities: [fragment.identity] }
    const at = place ?? children.length
    children[at] = child
    places.add(at, child.identity)
  }
  return children
}

/** Where children stand that share a number or a name: a table has thousands, and each row would look at all of them. */
class Places {
  readonly #places = new Map<string, Set<number>>()

  add(place: number, identity: Identity): void {
    for (const key of keysOf(identity)) {
      const known = this.#places.get(key)
      if (known) known.add(place)
      else this.#places.set(key, new Set([place]))
    }
  }

  /** In the order in which the children first appeared. */
  of(identity: Identity): readonly number[] {
    return [...new Set(keysOf(identity).flatMap((key) => [...(this.#places.get(key) ?? [])]))].toSorted(
      (a, b) => a - b,
    )
  }
}

const keysOf = ({ number, name }: Identity): readonly string[] => [
  ...(number === undefined ? [] : [`number ${number}`]),
  ...(name === undefined ? [] : [`name ${name}`]),
]

const FIELDS = ["number", "name", "born", "sex"] as const

function agree(a: Identity, b: Identity): boolean {
  const shared = FIELDS.filter((field) => a[field] !== undefined && b[field] !== undefined)
  const isNamed = shared.some((field) => field === "number" || field === "name")
  return isNamed && shared.every((field) => a[field] === b[field])
}

function both(known: Joined, next: Fragment): Joined {
  const notes = [...known.notes, ...next.notes]
  const visits: Visit[] = [...(known.course.visits ?? [])]
  for (const visit of next.course.visits ?? []) {
    const place = visits.findIndex(({ date }) => date === visit.date)
    const same = visits[place]
    if (!same) {
      visits.push(visit)
      continue
    }
    const merged = mergedVisit(same, visit)
    visits[place] = merged.visit
    for (const { path, recorded, offered } of merged.contradictions)
      notes.push({
        kind: "files-contradict",
        path: `visits[${visit.date}].${path}`,
        why: contradictionWords({ path, recorded, offered }),
      })
  }
  visits.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
  return {
    ...known,
    identity: { ...next.identity, ...known.identity },
    identities: [...known.identities, next.identity],
    course: { ...lists(known.course, next.course), ...(visits.length > 0 ? { visits } : {}) },
    documents: [...known.documents, ...next.documents],
    notes,
  }
}

/** Everything but the visits, one list after the other. */
function lists(a: CourseFragment, b: CourseFragment): CourseFragment {
  const merged: Record<string, unknown> = { ...b, ...a }
  for (const [field, items] of Object.entries(a)) {
    const more = (b as Readonly<Record<string, unknown>>)[field]
    if (Array.isArray(items) && Array.isArray(more)) merged[field] = [...items, ...more]
  }
  return { ...merged, ...(a.child || b.child ? { child: { ...b.child, ...a.child } } : {}) }
}
