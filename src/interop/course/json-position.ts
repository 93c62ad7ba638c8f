import { say } from "../../engine/say.js"

/** Where a text stops being JSON, or null when it is JSON. Lines and columns count from 1. */
export interface JsonFault {
  readonly line: number
  readonly column: number
  readonly found: string
}

const WORD = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?(?![\w.])|(?:true|false|null)(?!\w)/y
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y

type Expect = "value" | "value-or-end" | "key" | "key-or-end" | "colon" | "comma-or-end"

/**
 * Finds the first place at which a text is no longer JSON. The engine's own parser names a position in some of its
 * messages only, and words them differently from version to version.
 *
 * @example
 * firstJsonFault('{ "a": 1,\n "b" 2 }') // => { line: 2, column: 6, found: "2" }
 */
export function firstJsonFault(text: string): JsonFault | null {
  const open: ("{" | "[")[] = []
  let expect: Expect = "value"
  let at = 0
  for (;;) {
    while (" \t\r\n".includes(text.charAt(at)) && at < text.length) at += 1
    const done = open.length === 0 && expect === "comma-or-end"
    if (at >= text.length) return done ? null : faultAt(text, at)
    const token = tokenAt(text, at)
    if (token === null || done) return faultAt(text, at)
    const next = after({ token, expect, open })
    if (next === null) return faultAt(text, at)
    expect = next
    at += token.length
  }
}

function tokenAt(text: string, at: number): string | null {
  const first = text.charAt(at)
  if ("{}[],:".includes(first)) return first
  if (first === '"') return stringAt(text, at)
  WORD.lastIndex = at
  return WORD.exec(text)?.[0] ?? null
}

// A loop and not one expression: a text of megabytes would exhaust the stack of the expression's matcher.
function stringAt(text: string, start: number): string | null {
  let at = start + 1
  while (at < text.length) {
    const code = text.charCodeAt(at)
    if (code === 0x22) return text.slice(start, at + 1)
    if (code < 0x20) return null
    if (code === 0x5c) {
      ESCAPE.lastIndex = at
      const escaped = ESCAPE.exec(text)
      if (escaped === null) return null
      at += escaped[0].length
    } else at += 1
  }
  return null
}

function after({
  token,
  expect,
  open,
}: {
  readonly token: string
  readonly expect: Expect
  readonly open: ("{" | "[")[]
}): Expect | null {
  const inside = open.at(-1)
  switch (expect) {
    case "colon":
      return token === ":" ? "value" : null
    case "key":
    case "key-or-end":
      if (token.startsWith('"')) return "colon"
      return token === "}" && expect === "key-or-end" ? closed(open) : null
    case "comma-or-end":
      if (token === ",") return inside === "{" ? "key" : "value"
      return (token === "}" && inside === "{") || (token === "]" && inside === "[") ? closed(open) : null
    case "value":
    case "value-or-end":
      if (token === "{" || token === "[") {
        open.push(token)
        return token === "{" ? "key-or-end" : "value-or-end"
      }
      if (token === "]" && expect === "value-or-end") return closed(open)
      return /^[}\],:]$/.test(token) ? null : "comma-or-end"
  }
}

function closed(open: ("{" | "[")[]): Expect {
  open.pop()
  return "comma-or-end"
}

function faultAt(text: string, at: number): JsonFault {
  const before = text.slice(0, at).split("\n")
  const found = at >= text.length ? say("the end of the file") : (/^\S{1,20}/.exec(text.slice(at))?.[0] ?? "")
  return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1, found }
}
