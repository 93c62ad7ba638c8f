import type { Bundle, FhirResource, Observation } from "fhir/r4.js"
import type { ListedChild } from "../../record/index.js"
import type { Context } from "../context.js"
import { childOfId, childrenInOrder, resourcesOf } from "./child-resources.js"
import { FhirFault } from "./fhir-fault.js"
import { dayIsAsked, type Place, pageText, type Search } from "./search.js"
import type { ServedType } from "./served-types.js"

type Asked = Pick<Context, "record" | "clock" | "rules">

/** Children looked through for one page: a page may be short, and its link to the next one says that there is more. */
const MOST_CHILDREN = 40

/** One resource by its logical id. */
export async function resourceById(
  context: Asked,
  { type, id }: { readonly type: ServedType; readonly id: string },
): Promise<FhirResource> {
  const children = await childrenInOrder(context)
  const owner = childOfId(children, id)
  // What is no child's own, such as an instrument, stands among the resources of whoever was measured with it.
  for await (const { resources } of resourcesOf(context, owner ? [owner] : children)) {
    const found = resources.find((resource) => resource.resourceType === type && resource.id === id)
    if (found) return found
  }
  throw new FhirFault(404, "not-found", `there is no ${type}/${id.slice(0, 64)} in this practice`)
}

/** One page of a search. */
export async function searched(
  context: Asked,
  {
    type,
    search,
    address,
  }: { readonly type: ServedType; readonly search: Search; readonly address: Address },
): Promise<Bundle> {
  const children = (await childrenInOrder(context)).filter(isAsked(type, search))
  const fits = filterOf(type, search)
  return page(context, { children, search, address, take: (all) => all.filter(fits) })
}

/** Everything of one child, a page at a time. */
export async function everything(
  context: Asked,
  { id, search, address }: { readonly id: string; readonly search: Search; readonly address: Address },
): Promise<Bundle> {
  const children = (await childrenInOrder(context)).filter((child) => child.id === id)
  if (children.length === 0)
    throw new FhirFault(404, "not-found", `there is no Patient/${id.slice(0, 64)} in this practice`)
  return page(context, { children, search, address, take: (all) => all })
}

/** Where the answer is found: the server, and the path and query of this page without its place. */
export interface Address {
  readonly base: string
  readonly self: string
  readonly query: Readonly<Record<string, string>>
}

async function page(
  context: Asked,
  {
    children,
    search: { count, from },
    address,
    take,
  }: {
    readonly children: readonly ListedChild[]
    readonly search: Search
    readonly address: Address
    readonly take: (resources: readonly FhirResource[]) => readonly FhirResource[]
  },
): Promise<Bundle> {
  const left = from === null ? children : children.filter(({ id }) => id >= from.child)
  const looked = left.slice(0, MOST_CHILDREN)
  const found: FhirResource[] = []
  const seen = new Set<string>()
  let next: Place | null = left[MOST_CHILDREN] ? { child: left[MOST_CHILDREN].id, skip: 0 } : null
  for await (const { child, resources } of resourcesOf(context, looked)) {
    const skip = from?.child === child.id ? from.skip : 0
    const fitting = take(resources)
    for (const [index, resource] of fitting.entries()) {
      const key = `${resource.resourceType}/${resource.id}`
      if (index < skip || seen.has(key)) continue
      if (found.length === count) {
        next = { child: child.id, skip: index }
        return bundleOf(found, { address, next, from })
      }
      seen.add(key)
      found.push(resource)
    }
  }
  return bundleOf(found, { address, next, from })
}

function bundleOf(
  found: readonly FhirResource[],
  {
    address,
    next,
    from,
  }: { readonly address: Address; readonly next: Place | null; readonly from: Place | null },
): Bundle {
  const link = (relation: string, place: Place | null) => {
    const query = new URLSearchParams({
      ...address.query,
      ...(place ? { _page: pageText(place) } : {}),
    }).toString()
    return { relation, url: query === "" ? address.self : `${address.self}?${query}` }
  }
  return {
    resourceType: "Bundle",
    type: "searchset",
    // How many there are is known where all of them stand here.
    ...(from === null && next === null ? { total: found.length } : {}),
    link: [link("self", from), ...(next ? [link("next", next)] : [])],
    entry: found.map((resource) => ({
      fullUrl: `${address.base}/${resource.resourceType}/${resource.id}`,
      resource,
      search: { mode: "match" as const },
    })),
  }
}

const plainText = (text: string): string => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase()

/** Of whom a search can be about at all, before anything of them is read. */
function isAsked(type: ServedType, { values }: Search): (child: ListedChild) => boolean {
  const { patient, identifier, name, birthdate, gender, _id: ids } = values
  if (type !== "Patient") return ({ id }) => patient === undefined || patient.split(",").includes(id)
  const number = identifier?.split("|").at(-1)
  const words = name === undefined ? [] : plainText(name).split(/\s+/)
  if (birthdate !== undefined) dayIsAsked(undefined, birthdate)
  return (child) =>
    (ids === undefined || ids.split(",").includes(child.id)) &&
    (number === undefined || child.number === number || child.id === number) &&
    words.every((word) => plainText(child.name).includes(word)) &&
    (birthdate === undefined || dayIsAsked(child.born, birthdate)) &&
    (gender === undefined || child.sex === gender)
}

function filterOf(type: ServedType, { values }: Search): (resource: FhirResource) => boolean {
  const { _id: ids, code, date } = values
  if (date !== undefined) dayIsAsked(undefined, date)
  return (resource) =>
    resource.resourceType === type &&
    (ids === undefined || type === "Patient" || ids.split(",").includes(resource.id ?? "")) &&
    (code === undefined || hasCode(resource as Observation, code)) &&
    (date === undefined || dayIsAsked((resource as Observation).effectiveDateTime, date))
}

function hasCode({ code }: Pick<Observation, "code">, asked: string): boolean {
  const [first = "", second] = asked.split("|")
  return (code.coding ?? []).some((coding) =>
    second === undefined
      ? coding.code === first
      : coding.code === second && (first === "" || coding.system === first),
  )
}
