import { dateWords } from "../../chart/words.js"
import type { ChildView } from "../../server/contract/child.js"
import { inWords } from "../format.js"
import { entryWords } from "./entry-words.js"
import { entryKindInWords } from "./kind-words.js"

type Entry = ChildView["entries"][number]

/** The entries of a kind that hold every word looked for, the latest day first. */
export function listedEntries(
  entries: readonly Entry[],
  { search, kind }: { readonly search: string; readonly kind: string },
): readonly Entry[] {
  const words = search
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== "")
  return entries
    .filter((entry) => kind === "" || entry.kind === kind)
    .filter((entry) => words.length === 0 || holds(entry, words))
    .toSorted(
      (a, b) => (b.date ?? "").localeCompare(a.date ?? "") || b.recordedAt.localeCompare(a.recordedAt),
    )
}

function holds(entry: Entry, words: readonly string[]): boolean {
  const text = [
    entryKindInWords(entry.kind),
    inWords(entryWords(entry)),
    entry.date === null ? "" : `${entry.date} ${dateWords(entry.date)}`,
    entry.author,
    entry.reason ?? "",
  ]
    .join(" ")
    .toLowerCase()
  return words.every((word) => text.includes(word))
}
