import type { Chance } from "./chance.js"

/** Whether bytes are text, so that it can be broken word by word. */
export function isText(bytes: Uint8Array): boolean {
  if (bytes.length === 0 || bytes.subarray(0, 2000).includes(0)) return false
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes)
    return true
  } catch {
    return false
  }
}

/** What words are replaced by: numbers, days, signs and names that readers stumble over. */
const WORDS = [
  ...[
    "",
    "0",
    "-0",
    "1e999",
    "-1e308",
    "NaN",
    "Infinity",
    "0x10",
    "1,5",
    "99999999999999999999",
    "24.1200008",
  ],
  ...[
    "null",
    "true",
    "{}",
    "[]",
    '""',
    "[[[[[[[[",
    "}}}}",
    '"',
    "'",
    "\\",
    "\\u0000",
    "\n",
    "\r",
    "\t",
    ";",
    ",",
  ],
  ...[
    "0000-00-00",
    "2026-02-30",
    "9999-12-31",
    "1900-01-01",
    "29.02.2023",
    "right",
    "left",
    "female",
    "atropine",
  ],
  ...["__proto__", "constructor", "toString", "\u202e", "\ufeff", "\u0000", "😀", "=1+1", "x".repeat(5000)],
]

/** A text with words exchanged, replaced or repeated. */
export function brokenText(bytes: Uint8Array, chance: Chance): Uint8Array {
  const words = new TextDecoder().decode(bytes).split(/([\p{L}\p{N}_.+-]+)/u)
  const at = chance.below(words.length)
  const other = chance.below(words.length)
  switch (chance.below(5)) {
    case 0:
      ;[words[at], words[other]] = [words[other] ?? "", words[at] ?? ""]
      break
    case 1:
      words[at] = chance.of(WORDS)
      break
    case 2:
      words[at] = words[other] ?? ""
      break
    case 3: {
      const end = Math.min(words.length, at + 1 + chance.below(40))
      const piece = words.slice(at, end).join("")
      words.splice(end, 0, piece.repeat(chance.of([1, 2, 30])))
      break
    }
    default:
      words.splice(at, 1 + chance.below(10))
  }
  return new TextEncoder().encode(words.join(""))
}
