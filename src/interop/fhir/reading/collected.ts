import { say } from "../../../engine/say.js"
import { type Loose, record, records } from "../../course/loose.js"
import { type Look, lookBy } from "../r4/look.js"
import { isObject } from "../remainder.js"

/** A resource of the file and where it stands. */
export interface Held {
  readonly path: string
  /** The path with what the resource calls itself, so that a person finds it. */
  readonly place: string
  readonly type: string
  readonly resource: Loose
  readonly address: string | undefined
  /** The resource that contains it. */
  readonly inside: Held | undefined
}

export interface NotTaken {
  readonly where: string
  readonly why: string
}

export interface Collected {
  readonly held: readonly Held[]
  readonly notTaken: readonly NotTaken[]
  /** Follows a reference as it is meant in that resource. */
  readonly follow: (reference: unknown, from: Held) => Held | undefined
  readonly lookFrom: (from: Held) => Look
}

/** A child's whole course is some hundred resources. */
const MOST_RESOURCES = 50_000
const DEEPEST_BUNDLE = 4

/** Every resource of a Bundle of any kind (and of Bundles in it), of a list of resources, or the single one. */
export function collected(value: unknown): Collected {
  const held: Held[] = []
  const notTaken: NotTaken[] = []
  const take = (resource: unknown, path: string, context: Context): void => {
    if (held.length + notTaken.length >= MOST_RESOURCES) return
    if (!isObject(resource) || typeof resource.resourceType !== "string") {
      notTaken.push({ where: path, why: say("It is no FHIR resource: it has no resourceType.") })
      return
    }
    if (resource.resourceType === "Bundle") {
      if (context.depth >= DEEPEST_BUNDLE) {
        notTaken.push({ where: path, why: say("Bundles lie too deep inside each other.") })
        return
      }
      for (const [index, entry] of records(resource.entry).entries()) {
        const place = `${path === "" ? "" : `${path}.`}entry[${index}]`
        // An entry may only say what happened, as in an answer to a transaction.
        if (entry.resource === undefined) continue
        if (record(entry.request).method === "DELETE") {
          notTaken.push({
            where: place,
            why: say("It asks to delete a resource; nothing is deleted by reading."),
          })
          continue
        }
        const address = typeof entry.fullUrl === "string" ? entry.fullUrl : undefined
        take(entry.resource, `${place}.resource`, { address, inside: undefined, depth: context.depth + 1 })
      }
      return
    }
    const { id, resourceType } = resource
    const named = typeof id === "string" ? ` (${resourceType}/${id.slice(0, 64)})` : ""
    const one: Held = {
      path: path === "" ? resourceType : path,
      place: path === "" ? resourceType : `${path}${named}`,
      type: resource.resourceType,
      resource,
      address: context.address,
      inside: context.inside,
    }
    held.push(one)
    if (context.inside !== undefined) return
    for (const [index, contained] of records(resource.contained).entries())
      take(contained, `${one.path}.contained[${index}]`, { ...context, address: undefined, inside: one })
  }
  const start: Context = { address: undefined, inside: undefined, depth: 0 }
  if (Array.isArray(value)) {
    for (const [index, resource] of value.entries()) take(resource, `[${index}]`, start)
  } else take(value, "", start)
  if (held.length + notTaken.length >= MOST_RESOURCES) {
    const why = say("It holds more than {most} resources; a child's whole course is some hundred.", {
      most: MOST_RESOURCES,
    })
    return {
      held: [],
      notTaken: [{ where: "", why }],
      follow: () => undefined,
      lookFrom: () => lookBy(() => undefined),
    }
  }
  const follow = followerAmong(held)
  const lookFrom = (from: Held) => lookBy((reference) => follow(reference, from)?.resource)
  return { held, notTaken, follow, lookFrom }
}

interface Context {
  readonly address: string | undefined
  readonly inside: Held | undefined
  readonly depth: number
}

const VERSION = /\/_history\/[^/]*$/
const LOCAL = /(?:^|\/)([A-Za-z]+\/[A-Za-z0-9\-.]{1,64})$/

function followerAmong(held: readonly Held[]): Collected["follow"] {
  const byAddress = new Map<string, Held>()
  /** Null where two resources share it, so that neither is taken for the other. */
  const byLocal = new Map<string, Held | null>()
  const contained = new Map<Held, Map<string, Held>>()
  for (const one of held) {
    const { id } = one.resource
    if (one.inside !== undefined) {
      const names = contained.get(one.inside) ?? new Map<string, Held>()
      if (typeof id === "string") names.set(id, one)
      contained.set(one.inside, names)
      continue
    }
    if (one.address !== undefined && !byAddress.has(one.address)) byAddress.set(one.address, one)
    if (typeof id !== "string") continue
    const local = `${one.type}/${id}`
    byLocal.set(local, byLocal.has(local) ? null : one)
  }
  return (reference, from) => {
    const said = record(reference).reference
    if (typeof said !== "string" || said === "") return undefined
    const outer = from.inside ?? from
    if (said.startsWith("#")) return contained.get(outer)?.get(said.slice(1))
    const address = said.replace(VERSION, "")
    const base = outer.address?.replace(LOCAL, "")
    const beside = base === undefined ? undefined : byAddress.get(`${base}/${address}`)
    return byAddress.get(address) ?? beside ?? byLocal.get(LOCAL.exec(address)?.[1] ?? "") ?? undefined
  }
}
