import type { Concern } from "../assessment.js"
import { type ConcernsInput, raisedConcerns } from "./raised.js"

/** What the record raises about a child's safety, red flags first, as an assessment says it: kind and why. */
export function concerns(input: ConcernsInput): readonly Concern[] {
  return raisedConcerns(input).map(({ kind, why }) => ({ kind, why }))
}
