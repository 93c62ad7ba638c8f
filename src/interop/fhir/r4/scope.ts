import type { Device, Extension, FhirResource, Reference } from "fhir/r4.js"
import type { CalendarDate } from "../../../engine/course.js"
import { type Loose, record, records } from "../../course/loose.js"
import { type NewId, sharedId } from "../logical-id.js"
import { isPlainText } from "../plain-text.js"
import { extensionsOf, withoutLoss, withRemainder } from "../remainder.js"
import { referenceTo } from "./codes.js"
import { type Look, lookAmong } from "./look.js"

/** What the writers of one child share. */
export interface Scope {
  readonly patient: Reference
  readonly organization: Reference | undefined
  readonly asOf: CalendarDate | undefined
  readonly newId: NewId
  /** Instruments named so far. */
  readonly devices: Map<string, Device>
}

/** A reference to the instrument of that name; none where FHIR has no text for the name. */
export function deviceOf(name: string, { devices }: Scope): Reference | undefined {
  if (!isPlainText(name)) return undefined
  const id = devices.get(name)?.id ?? sharedId("device", name)
  if (!devices.has(name)) {
    devices.set(name, {
      resourceType: "Device",
      id,
      deviceName: [{ name, type: "user-friendly-name" }],
    })
  }
  return referenceTo("Device", id, name)
}

/** Which list of the course a resource stands for, and where in it, since the order of a list is kept. */
const ITEM = "urn:lengthwise:fhir:item"

export const itemMark = (list: string, place: number): Extension => ({
  url: ITEM,
  extension: [
    { url: "list", valueCode: list },
    { url: "place", valueInteger: place },
  ],
})

export function markOf(resource: Loose): { readonly list: string; readonly place: number } | undefined {
  const parts = records(records(resource.extension).find(({ url }) => url === ITEM)?.extension)
  const list = parts.find(({ url }) => url === "list")?.valueCode
  const place = parts.find(({ url }) => url === "place")?.valueInteger
  return typeof list === "string" && typeof place === "number" ? { list, place } : undefined
}

/** How one list of the course is written and read. */
export interface ItemCodec<Item> {
  /** The resource of an item, and others that it refers to. */
  readonly write: (item: Item, scope: Scope) => Written
  /** What a resource says by its own elements. */
  readonly read: (resource: Loose, look: Look) => unknown
}
interface Written {
  readonly resource: FhirResource
  readonly beside?: readonly FhirResource[]
}

export const codec = <Item>(parts: ItemCodec<Item>): ItemCodec<Item> => parts

/** The items of a list as resources: what an element cannot say stands beside it. */
export function listResources<Item>(
  items: readonly Item[],
  { list, codec: { write, read }, scope }: { list: string; codec: ItemCodec<Item>; scope: Scope },
): readonly FhirResource[] {
  return items.flatMap((item, place) => {
    const { resource, beside = [] } = write(item, scope)
    const marked = { ...resource, extension: [itemMark(list, place), ...extensionsOf(resource)] }
    const native = read(record(marked), lookAmong(beside))
    return [...beside, withRemainder(marked, { whole: item, native })]
  })
}

export const itemRead = (resource: Loose, { read }: ItemCodec<never>, look: Look): unknown =>
  withoutLoss(resource, read(resource, look))
