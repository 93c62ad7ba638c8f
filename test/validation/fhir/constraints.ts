import fhirpath from "fhirpath"
import r4 from "fhirpath/fhir-context/r4"
import { DEFINITIONS, definition } from "./validators.js"

/** The constraints that R4's own profiles state in FHIRPath, evaluated by a library of the language. */

interface Constraint {
  readonly key: string
  readonly human: string
  readonly holds: (node: unknown, at: { readonly resource: unknown; readonly base: string }) => boolean
}
interface Element {
  readonly path: readonly string[]
  readonly types: readonly string[]
  readonly constraints: readonly Constraint[]
}

interface ElementDefinition {
  readonly path: string
  readonly type?: readonly { readonly code: string }[]
  readonly constraint?: readonly {
    readonly key: string
    readonly severity: string
    readonly human: string
    readonly expression?: string
  }[]
}

/** Types whose fields are stated where they stand. */
const NO_TYPE: ReadonlySet<string> = new Set(["BackboneElement", "Element"])

/** XHTML is checked by a function that FHIRPath itself has not; we write none. */
const NOT_EVALUATED = new Set(["txt-1", "txt-2"])

let types: ReadonlyMap<string, readonly Element[]> | undefined

function definitions(): ReadonlyMap<string, readonly Element[]> {
  if (types) return types
  const found = new Map<string, readonly Element[]>()
  for (const file of DEFINITIONS) {
    for (const { resource } of definition(file).entry) {
      if (resource.resourceType !== "StructureDefinition" || resource.derivation === "constraint") continue
      found.set(resource.type, resource.snapshot.element.map(elementOf))
    }
  }
  types = found
  return found
}

function elementOf({ path, type = [], constraint = [] }: ElementDefinition): Element {
  return {
    path: path.split(".").slice(1),
    types: type.map(({ code }) => code),
    constraints: constraint.flatMap(({ key, severity, human, expression }) =>
      severity !== "error" || expression === undefined || NOT_EVALUATED.has(key)
        ? []
        : [{ key, human, holds: evaluated(expression) }],
    ),
  }
}

type Run = (node: unknown, environment: object) => unknown
const compiled = new Map<string, Run>()

/** An expression knows the children of a node only when it knows the node's type, which is its base. */
function evaluated(expression: string): Constraint["holds"] {
  return (node, { resource, base }) => {
    const key = `${base}\n${expression}`
    const known = compiled.get(key)
    const run = known ?? (fhirpath.compile({ base, expression }, r4, { traceFn: () => {} }) as unknown as Run)
    compiled.set(key, run)
    const answer = run(node, { resource, rootResource: resource, context: node })
    return (answer as readonly unknown[])[0] !== false
  }
}

export function constraintFaults(resource: object): readonly string[] {
  const { resourceType } = resource as { resourceType: string }
  return faultsIn(resource, { type: resourceType, at: resourceType, resource })
}

interface Place {
  readonly type: string
  readonly at: string
  readonly resource: unknown
}

function faultsIn(node: unknown, { type, at, resource }: Place): readonly string[] {
  return (definitions().get(type) ?? [])
    .flatMap(({ path, types: allowed, constraints }) =>
      nodesAt(node, path, allowed).flatMap(({ value, type: actual }) => {
        const here = [at, ...path].join(".")
        const base = actual === undefined || NO_TYPE.has(actual) ? [type, ...path].join(".") : actual
        const own = constraints.flatMap(({ key, human, holds }) =>
          typeof value === "object" && !holds(value, { resource, base }) ? [`${here} ${key}: ${human}`] : [],
        )
        const isNested = path.length > 0 && actual !== undefined && !NO_TYPE.has(actual)
        // A choice element may have one value only; two are two elements of the same path.
        return isNested ? [...own, ...faultsIn(value, { type: actual, at: here, resource })] : own
      }),
    )
    .concat(choicesTwice(node, { type, at }))
}

function choicesTwice(node: unknown, { type, at }: Pick<Place, "type" | "at">): readonly string[] {
  return (definitions().get(type) ?? []).flatMap(({ path, types: allowed }) => {
    if (!path.at(-1)?.endsWith("[x]")) return []
    const parents = nodesAt(node, path.slice(0, -1), [])
    return parents.flatMap(({ value }) => {
      const name = path.at(-1)?.slice(0, -3)
      const given = allowed.filter((code) => Object.hasOwn(Object(value), `${name}${capital(code)}`))
      return given.length > 1 ? [`${[at, ...path].join(".")}: ${given.join(" and ")} at once`] : []
    })
  })
}

const capital = (code: string) => code.charAt(0).toUpperCase() + code.slice(1)

function nodesAt(
  node: unknown,
  path: readonly string[],
  types: readonly string[],
): readonly { readonly value: unknown; readonly type: string | undefined }[] {
  const [field, ...rest] = path
  if (field === undefined) return [{ value: node, type: types.length === 1 ? types[0] : undefined }]
  if (typeof node !== "object" || node === null) return []
  const fields = node as Readonly<Record<string, unknown>>
  const values = (name: string, allowed: readonly string[]) =>
    [fields[name] ?? []].flat().flatMap((value) => nodesAt(value, rest, allowed))
  if (!field.endsWith("[x]")) return values(field, types)
  return types.flatMap((code) => values(`${field.slice(0, -3)}${capital(code)}`, [code]))
}
