import { say } from "../engine/say.js"
import type { Problem } from "../server/contract/problem.js"
import { failureInWords, Refused } from "./client.js"
import { inWords } from "./format.js"

/** What went wrong with a form: what belongs to a field, and what is said above all of them. */
export interface Faults {
  readonly at: (path: string) => string | undefined
  readonly general: string | null
}

/** At a field only the rule is said: which field and what stands there is in view. */
export function ruleInWords({ allowed, message }: Problem): string {
  return inWords(allowed === "" ? message : say("must be {allowed}", { allowed }))
}

/**
 * Sorts the problems of a refusal to the fields a form has; what has no field is never swallowed.
 * A problem inside a field (`covers.kind` for `covers`) counts as the field's.
 */
export function faultsOf(error: unknown, fields: readonly string[]): Faults {
  if (error === null || error === undefined) return { at: () => undefined, general: null }
  if (!(error instanceof Refused)) return { at: () => undefined, general: failureInWords(error) }
  const fieldOf = (problem: Problem) =>
    fields.find((field) => problem.path === field || problem.path.startsWith(`${field}.`))
  const homeless = error.problems.filter((problem) => fieldOf(problem) === undefined)
  return {
    at: (path) =>
      error.problems
        .filter((problem) => fieldOf(problem) === path)
        .map(ruleInWords)
        .join("; ") || undefined,
    general:
      homeless.length > 0
        ? homeless.map((problem) => inWords(problem.message)).join("; ")
        : error.problems.length > 0
          ? null
          : error.title,
  }
}
