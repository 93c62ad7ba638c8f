import { say } from "../../engine/say.js"

/** A Bundle of a child with every figure of ten years is one or two megabytes. */
export const LARGEST_TEXT = 60_000_000
/** R4 nests a dozen levels; ours with extensions in extensions some more. */
const DEEPEST = 100

/**
 * The value of a JSON text, or of one with a value a line. Refused by its size before it is parsed, and by its depth
 * before anything walks through it.
 */
export function jsonOfText(text: string): { readonly value: unknown } | { readonly why: string } {
  if (text.length > LARGEST_TEXT) {
    return { why: say("The file is larger than {most} MB.", { most: LARGEST_TEXT / 1_000_000 }) }
  }
  // A byte order mark is written by some programs and is not part of JSON.
  const body = text.replace(/^\uFEFF/, "")
  if (body.trim() === "") return { why: say("The file is empty.") }
  const value = parsed(body) ?? lines(body)
  if (value === undefined) return { why: say("The file is not JSON, nor JSON line by line.") }
  if (isTooDeep(value.json)) {
    return {
      why: say("The file is nested more than {most} levels deep, which no FHIR resource is.", {
        most: DEEPEST,
      }),
    }
  }
  return { value: value.json }
}

function parsed(text: string): { readonly json: unknown } | undefined {
  try {
    return { json: JSON.parse(text) }
  } catch {
    return undefined
  }
}

function lines(text: string): { readonly json: readonly unknown[] } | undefined {
  const values: unknown[] = []
  for (const line of text.split("\n")) {
    if (line.trim() === "") continue
    const value = parsed(line)
    if (value === undefined) return undefined
    values.push(value.json)
  }
  return { json: values }
}

/** Level by level instead of by recursion, which depth could exhaust. */
function isTooDeep(value: unknown): boolean {
  let level: unknown[] = [value]
  for (let depth = 0; level.length > 0; depth++) {
    if (depth > DEEPEST) return true
    const next: unknown[] = []
    for (const item of level) {
      if (typeof item !== "object" || item === null) continue
      for (const inside of Object.values(item)) if (typeof inside === "object") next.push(inside)
    }
    level = next
  }
  return false
}
