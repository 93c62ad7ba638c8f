import { EYES, type Visit } from "../../engine/course.js"
import { type Contradiction, same } from "./merged-visit.js"

/** What one object did to a visit: what it added, and what it put in the place of something else. */
export interface VisitChange {
  readonly added: readonly string[]
  readonly corrected: readonly Contradiction[]
  /** Ids of the sources it added. */
  readonly sources: readonly string[]
}

/** The visit with the other side's figures wherever they contradict: what a person chose over what is recorded. */
export function correctedVisit(visit: Visit, contradictions: readonly Contradiction[]): Visit {
  return contradictions.reduce((corrected, { path, offered }) => withAt(corrected, path, offered), visit)
}

export type WithoutChange =
  | { readonly kind: "visit"; readonly visit: Visit }
  /** Nothing is left but its date. */
  | { readonly kind: "empty" }
  /** Somebody has changed since what the object brought: paths. */
  | { readonly kind: "changed-since"; readonly paths: readonly string[] }

/**
 * The visit as it is now without what one object brought, as long as that still stands as it was brought: `asRecorded`
 * is the visit as it was recorded with the object.
 */
export function withoutChange({
  now,
  asRecorded,
  change,
}: {
  readonly now: Visit
  readonly asRecorded: Visit
  readonly change: VisitChange
}): WithoutChange {
  const touched = [...change.added, ...change.corrected.map(({ path }) => path)]
  const paths = touched.filter((path) => !same(at(now, path), at(asRecorded, path)))
  if (paths.length > 0) return { kind: "changed-since", paths }
  const without = change.added.reduce((visit, path) => withAt(visit, path, undefined), now)
  const restored = change.corrected.reduce(
    (visit, { path, recorded }) => withAt(visit, path, recorded),
    without,
  )
  const sources = (restored.sources ?? []).filter(({ id }) => !change.sources.includes(id))
  const { sources: _, ...rest } = restored
  const visit = { ...rest, ...(sources.length > 0 ? { sources } : {}) }
  return Object.keys(rest).every((field) => field === "date") ? { kind: "empty" } : { kind: "visit", visit }
}

type Fields = Readonly<Record<string, unknown>>

/** The figure at a path of a contradiction, such as `right.axialLength` or `symptoms`. */
export function at(visit: Visit, path: string): unknown {
  return path.split(".").reduce<unknown>((inside, field) => (inside as Fields | undefined)?.[field], visit)
}

function withAt(visit: Visit, path: string, value: unknown): Visit {
  const [first = "", second] = path.split(".")
  const fields = visit as unknown as Fields
  if (second === undefined) return setIn(fields, first, value) as unknown as Visit
  const inside = setIn((fields[first] ?? {}) as Fields, second, value)
  const isEmptyEye = EYES.some((eye) => eye === first) && Object.keys(inside).length === 0
  return setIn(fields, first, isEmptyEye ? undefined : inside) as unknown as Visit
}

function setIn(fields: Fields, field: string, value: unknown): Fields {
  const { [field]: _, ...rest } = fields
  return value === undefined ? rest : { ...rest, [field]: value }
}
