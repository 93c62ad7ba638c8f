import type { Problem } from "../../engine/problem.js"
import { say, withDecimalSign } from "../../engine/say.js"

/** The path of a fault of the file as a whole. */
export const WHOLE_FILE = "(file)"

const LONGEST_VALUE = 120

/**
 * A problem with its sentence made from its parts.
 *
 * @example
 * problem({ path: "child.sex", value: "f", allowed: "female or male" }).message
 * // => 'child.sex must be female or male, not "f".'
 */
export function problem({
  path,
  value,
  allowed,
  hint,
}: {
  readonly path: string
  readonly value: unknown
  readonly allowed: string
  readonly hint?: string | undefined
}): Problem {
  const shown = shownValue(value)
  const missing = value === undefined || value === null
  const sentence = missing
    ? say("{path} is missing: it must be {allowed}.", { path, allowed })
    : say("{path} must be {allowed}, not {value}.", { path, allowed, value: quoted(value, shown) })
  return { path, value: shown, allowed, message: hint ? `${sentence} ${hint}` : sentence }
}

/** The fields of a path joined as they are written in the file. */
export function pathText(path: readonly PropertyKey[]): string {
  return path.reduce<string>(
    (text, key) =>
      typeof key === "number" ? `${text}[${key}]` : text === "" ? String(key) : `${text}.${String(key)}`,
    "",
  )
}

// A value is shown to a person and written as JSON, so it must be short and shallow whatever the file held.
function shownValue(value: unknown): string | number | boolean | null {
  if (value === undefined || value === null) return null
  if (typeof value === "string") {
    return value.length > LONGEST_VALUE ? `${value.slice(0, LONGEST_VALUE)}...` : value
  }
  if (typeof value === "boolean") return value
  if (typeof value === "number") return Number.isFinite(value) ? value : String(value)
  return Array.isArray(value) ? say("a list of {count}", { count: value.length }) : say("an object")
}

/** A text in the marks it has in the file; a figure as the reader writes it. */
function quoted(value: unknown, shown: string | number | boolean | null): string {
  if (typeof value === "string") return JSON.stringify(shown)
  return typeof value === "number" ? withDecimalSign(String(shown)) : String(shown)
}
