import { courseJsonSchema } from "../course/course-json-schema.js"
import { STUDY_COLUMNS, type StudyColumn } from "./study-columns.js"

/** What a column of the table means. */
export interface DictionaryEntry {
  readonly column: string
  readonly title: string
  readonly description: string
  /** UCUM; empty for what has no unit. */
  readonly unit: string
  /** The words or the range that may stand there; empty where anything may. */
  readonly allowed: string
  /** Its place in the course file; empty for what is worked out. */
  readonly field: string
}

interface Schema {
  readonly title?: string
  readonly description?: string
  readonly unit?: string
  readonly properties?: Readonly<Record<string, Schema>>
  readonly items?: Schema
  readonly anyOf?: readonly Schema[]
  readonly enum?: readonly unknown[]
  readonly const?: unknown
  readonly type?: string | readonly string[]
  readonly minimum?: number
  readonly maximum?: number
  readonly exclusiveMinimum?: number
}

/** Every column of the table for research, told by the schema of the course file wherever the field is its own. */
export function dataDictionary(): readonly DictionaryEntry[] {
  const schema = courseJsonSchema() as Schema
  return STUDY_COLUMNS.map((column) => entryOf(column, schema))
}

function entryOf(column: StudyColumn, schema: Schema): DictionaryEntry {
  if ("about" in column) {
    const { title, description, unit = "" } = column.about
    return { column: column.name, title, description, unit, allowed: "", field: "" }
  }
  const found = at(schema, column.field)
  return {
    column: column.name,
    title: found.title ?? column.name,
    description: found.description ?? "",
    unit: found.unit ?? "",
    allowed: allowedIn(found),
    field: column.field,
  }
}

/** The part of the schema at a path such as `visits[].right.axialLength.mm`; throws where the schema has no such field. */
function at(schema: Schema, path: string): Schema {
  const steps = path.replaceAll("[]", ".[]").split(".")
  return steps.reduce<Schema>((inside, step) => {
    const next = withParts(inside)
      .map((part) => (step === "[]" ? part.items : part.properties?.[step]))
      .find((part) => part !== undefined)
    if (!next) throw new RangeError(`the course file has no field ${path}`)
    return next
  }, schema)
}

const withParts = (schema: Schema): readonly Schema[] => [schema, ...(schema.anyOf ?? []).flatMap(withParts)]

function allowedIn(schema: Schema): string {
  const parts = withParts(schema)
  const words = parts.flatMap((part) => part.enum ?? (part.const === undefined ? [] : [part.const]))
  if (words.length > 0) return words.map(String).join(" | ")
  if (parts.some(({ type }) => [type].flat().includes("boolean"))) return "yes | no"
  const range = parts.find((part) => part.maximum !== undefined)
  if (!range) return ""
  return range.exclusiveMinimum === undefined
    ? `${range.minimum} to ${range.maximum}`
    : `above ${range.exclusiveMinimum} to ${range.maximum}`
}
