import { msg, say } from "../../engine/say.js"
import type { ImportedRow } from "../../server/contract/imports.js"

/** What an import did, in one line. */
export function countsInWords({
  childrenNew,
  childrenKnown,
  visitsNew,
  visitsAddedTo,
}: Pick<ImportedRow["counts"], "childrenNew" | "childrenKnown" | "visitsNew" | "visitsAddedTo">): string {
  const parts = [
    [childrenNew, msg("{count, plural, one {# new child} other {# new children}}")],
    [childrenKnown, msg("{count, plural, one {# child known already} other {# children known already}}")],
    [visitsNew, msg("{count, plural, one {# new visit} other {# new visits}}")],
    [visitsAddedTo, msg("{count, plural, one {# visit filled in} other {# visits filled in}}")],
  ] as const
  return parts.flatMap(([count, words]) => (count > 0 ? [say(words, { count })] : [])).join(" · ")
}

export const STATE_WORDS: Readonly<Record<ImportedRow["state"], string>> = {
  running: msg("Under way"),
  done: msg("Recorded"),
  cancelled: msg("Cancelled, taken back"),
  undone: msg("Taken back"),
  interrupted: msg("Interrupted, taken back"),
}
