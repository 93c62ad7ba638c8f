import type { InboxItemAnswer } from "../../server/contract/inbox.js"
import { failureInWords, Refused } from "../client.js"
import { inWords } from "../format.js"

/** What every part of the page needs that decides something about the object. */
export interface Deciding {
  readonly item: InboxItemAnswer
  readonly onDone: (message: string) => void
}

/** A refusal with every problem: none of them stands at a field here. */
export const saidOf = (error: unknown): string =>
  error instanceof Refused
    ? inWords([error.title, ...error.problems.map(({ message }) => message)].join(". "))
    : failureInWords(error)
