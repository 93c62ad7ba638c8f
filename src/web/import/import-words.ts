import { msg, say } from "../../engine/say.js"
import type { ImportedRow } from "../../server/contract/imports.js"

/** What an import did, in one line. */
export function countsInWords({
  childrenNew,
  childrenKnown,
  visitsNew,
  visitsAddedTo,
}: Pick<ImportedRow["counts"], "childrenNew" | "childrenKnown" | "visitsNew" | "visitsAddedTo">): string {
  return [
    say("{count, plural, one {# new child} other {# new children}}", { count: childrenNew }),
    say("{count, plural, one {# child known already} other {# children known already}}", {
      count: childrenKnown,
    }),
    say("{count, plural, one {# new visit} other {# new visits}}", { count: visitsNew }),
    say("{count, plural, one {# visit filled in} other {# visits filled in}}", { count: visitsAddedTo }),
  ].join(" · ")
}

export const STATE_WORDS: Readonly<Record<ImportedRow["state"], string>> = {
  running: msg("Under way"),
  done: msg("Recorded"),
  cancelled: msg("Cancelled, taken back"),
  undone: msg("Taken back"),
  interrupted: msg("Interrupted, taken back"),
}
