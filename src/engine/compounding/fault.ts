import type { Problem } from "../problem.js"
import { say } from "../say.js"

/** A figure of an order that may not be: which, what may stand there, and what does. */
export function fault({ path, value, allowed }: Omit<Problem, "message">): Problem {
  const message = say("{path} must be {allowed}; it is {value}", { path, allowed, value: String(value) })
  return { path, value, allowed, message }
}
