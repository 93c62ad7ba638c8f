import type { ConsentWording } from "../practice-rules.js"
import type { Problem } from "../problem.js"
import { FILLED_IN, unknownNames } from "./consent-text.js"
import { defaultWordings } from "./default-wording.js"

/**
 * What is wrong with a new version of a practice's wording, beside the limits of its fields. `others` are all versions
 * there ever were: families have signed them, so a version's name is never used again, not even for a correction.
 */
export function wordingProblems(
  wording: ConsentWording,
  { others }: { readonly others: readonly Pick<ConsentWording, "id" | "version">[] },
): readonly Problem[] {
  const problems: Problem[] = []
  const fault = (path: string, value: unknown, allowed: string) =>
    problems.push({ path, value, allowed, message: `${path} must be ${allowed}; it is ${String(value)}` })
  const ids = defaultWordings.map(({ id }) => id)
  if (!ids.includes(wording.id)) fault("id", wording.id, `one of ${ids.join(", ")}`)
  const isTaken = [...defaultWordings, ...others].some(
    ({ id, version }) =>
      id === wording.id && version.trim().toLowerCase() === wording.version.trim().toLowerCase(),
  )
  if (isTaken) fault("version", wording.version, "a version that has not been used before")
  const unknown = unknownNames(wording)
  if (unknown.length > 0) {
    const known = Object.keys(FILLED_IN).map((name) => `{${name}}`)
    fault(
      "sections",
      unknown.map((name) => `{${name}}`).join(", "),
      `text with no other names in braces than ${known.join(", ")}`,
    )
  }
  return problems
}
