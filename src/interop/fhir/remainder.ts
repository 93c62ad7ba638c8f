import type { Extension } from "fhir/r4.js"
import { type Loose, record, records } from "../course/loose.js"
import { isPlainText } from "./plain-text.js"

/**
 * What a resource has no element for. Each writer's resource is read back at once; whatever that reading lacks stands
 * beside it in an extension of ours. So nothing is lost by construction, a field of tomorrow's course file included,
 * and no value stands in two places.
 */
export const REMAINDER = "urn:lengthwise:fhir:remainder"

/** Deeper than any field of the course file lies. */
const DEEPEST = 12

interface Difference {
  readonly set: readonly (readonly [path: string, value: unknown])[]
  readonly unset: readonly string[]
}

/** The resource with what reading it back does not give. `native` is that reading. */
export function withRemainder<R extends object>(
  resource: R,
  { whole, native }: { readonly whole: unknown; readonly native: unknown },
): R {
  const { set, unset } = difference(whole, native, "")
  if (set.length + unset.length === 0) return resource
  const parts = [
    ...set.map(
      ([path, value]): Extension => ({
        url: "set",
        extension: [
          ...(path === "" ? [] : [{ url: "path", valueString: path }]),
          jsonExtension("value", value),
        ],
      }),
    ),
    ...unset.map((path): Extension => ({ url: "unset", valueString: path })),
  ]
  return { ...resource, extension: [...extensionsOf(resource), { url: REMAINDER, extension: parts }] }
}

export const extensionsOf = (resource: object): readonly Extension[] =>
  (resource as { readonly extension?: readonly Extension[] }).extension ?? []

/** The native reading of a resource, made whole again by the remainder beside it. */
export function withoutLoss(resource: Loose, native: unknown): unknown {
  const beside = records(resource.extension).find(({ url }) => url === REMAINDER)
  if (beside === undefined) return native
  return records(beside.extension).reduce<unknown>((value, part) => {
    if (part.url === "unset") return changed(value, pathOf(part.valueString), undefined)
    if (part.url !== "set") return value
    const inside = records(part.extension)
    const path = pathOf(inside.find(({ url }) => url === "path")?.valueString)
    const set = inside.find(({ url }) => url === "value")
    return set === undefined ? value : changed(value, path, jsonOf(set, 0))
  }, native)
}

const pathOf = (path: unknown): readonly string[] => (typeof path === "string" ? path.split(".") : [])

function difference(whole: unknown, native: unknown, path: string): Difference {
  if (isSame(whole, native)) return { set: [], unset: [] }
  // An empty object has no fields to set, so it is set itself.
  if (!isObject(whole) || !isObject(native) || Object.keys(whole).length === 0)
    return { set: [[path, whole]], unset: [] }
  const at = (field: string) => (path === "" ? field : `${path}.${field}`)
  const inside = Object.keys(whole).map((field) => difference(whole[field], native[field], at(field)))
  return {
    set: inside.flatMap(({ set }) => set),
    unset: [
      ...inside.flatMap(({ unset }) => unset),
      ...Object.keys(native)
        .filter((field) => !Object.hasOwn(whole, field))
        .map(at),
    ],
  }
}

function changed(value: unknown, [field, ...rest]: readonly string[], set: unknown): unknown {
  if (field === undefined) return set
  const fields = record(value)
  const inside = changed(Object.hasOwn(fields, field) ? fields[field] : undefined, rest, set)
  const others = Object.entries(fields).filter(([name]) => name !== field)
  // From entries, so that no name can reach a prototype.
  return Object.fromEntries(inside === undefined ? others : [...others, [field, inside]])
}

export const isObject = (value: unknown): value is Loose =>
  typeof value === "object" && value !== null && !Array.isArray(value)

export function isSame(a: unknown, b: unknown): boolean {
  if (Array.isArray(a)) {
    return Array.isArray(b) && a.length === b.length && a.every((item, index) => isSame(item, b[index]))
  }
  if (!isObject(a)) return a === b
  if (!isObject(b)) return false
  const fields = Object.keys(a)
  return (
    fields.length === Object.keys(b).length &&
    fields.every((field) => Object.hasOwn(b, field) && isSame(a[field], b[field]))
  )
}

/** Any JSON value as an extension: a list has parts named "item", an object parts named as its fields. */
function jsonExtension(url: string, value: unknown): Extension {
  if (typeof value === "number") return { url, valueDecimal: value }
  if (typeof value === "boolean") return { url, valueBoolean: value }
  if (Array.isArray(value)) {
    if (value.length === 0) return { url, valueCode: "empty-list" }
    return { url, extension: value.map((item) => jsonExtension("item", item)) }
  }
  if (isObject(value)) {
    const fields = Object.entries(value)
    if (fields.length === 0) return { url, valueCode: "empty-object" }
    return { url, extension: fields.map(([field, item]) => jsonExtension(field, item)) }
  }
  const text = String(value)
  if (isPlainText(text)) return { url, valueString: text }
  // As JSON, since UTF-8 alone has no form for half a surrogate pair.
  return { url, valueBase64Binary: Buffer.from(JSON.stringify(text), "utf8").toString("base64") }
}

function jsonOf(extension: Loose, depth: number): unknown {
  if (depth > DEEPEST) return undefined
  if (extension.valueDecimal !== undefined) return extension.valueDecimal
  if (extension.valueBoolean !== undefined) return extension.valueBoolean
  if (extension.valueString !== undefined) return extension.valueString
  if (extension.valueCode === "empty-list") return []
  if (extension.valueCode === "empty-object") return {}
  if (typeof extension.valueBase64Binary === "string") return textOf(extension.valueBase64Binary)
  const parts = records(extension.extension)
  if (parts.every(({ url }) => url === "item")) return parts.map((part) => jsonOf(part, depth + 1))
  return Object.fromEntries(parts.map((part) => [String(part.url), jsonOf(part, depth + 1)]))
}

function textOf(base64: string): unknown {
  try {
    return JSON.parse(Buffer.from(base64, "base64").toString("utf8"))
  } catch {
    return undefined
  }
}
