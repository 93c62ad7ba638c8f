import type { ConsentWording } from "../practice-rules.js"
import type { Problem } from "../problem.js"
import { say } from "../say.js"
import { FILLED_IN, unknownNames } from "./consent-text.js"
import { isShipped, WORDING_IDS } from "./default-wording.js"

/**
 * What is wrong with a new version of a practice's wording, beside the limits of its fields. `others` are all versions
 * there ever were: families have signed them, so what bears a version's name is never written twice in one language,
 * not even for a correction. In another language the same name is that version's translation.
 */
export function wordingProblems(
  wording: ConsentWording,
  { others }: { readonly others: readonly Pick<ConsentWording, "id" | "version" | "language">[] },
): readonly Problem[] {
  const problems: Problem[] = []
  const fault = (path: string, value: string, allowed: string) =>
    problems.push({
      path,
      value,
      allowed,
      message: say("{path} must be {allowed}; it is {value}", { path, allowed, value }),
    })
  if (!(WORDING_IDS as readonly string[]).includes(wording.id))
    fault("id", wording.id, say("one of {names}", { names: WORDING_IDS.join(", ") }))
  const isTaken = others.some(
    (other) =>
      other.id === wording.id &&
      plain(other.version) === plain(wording.version) &&
      plain(other.language) === plain(wording.language),
  )
  const isOfShipped = isShipped({ id: wording.id, version: plain(wording.version) })
  const isMisspelt = others.some(
    ({ id, version }) =>
      id === wording.id && version !== wording.version && plain(version) === plain(wording.version),
  )
  if (isTaken || isOfShipped || isMisspelt)
    fault(
      "version",
      wording.version,
      say("a version that has not been used before, or the very name of the one it translates"),
    )
  const unknown = unknownNames(wording)
  if (unknown.length > 0) {
    const known = Object.keys(FILLED_IN).map((name) => `{${name}}`)
    fault(
      "sections",
      unknown.map((name) => `{${name}}`).join(", "),
      say("text with no other names in braces than {names}", { names: known.join(", ") }),
    )
  }
  return problems
}

const plain = (text: string): string => text.trim().toLowerCase()
