import type { Problem } from "../../engine/problem.js"
import { say, withDecimalSign } from "../../engine/say.js"
import { LARGEST_FILE_BYTES } from "./limits.js"
import { WHOLE_FILE } from "./problem.js"

/** The fault of a file that is refused by its size alone, before a byte of it is parsed. */
export function tooLarge(bytes: number): Problem {
  const value = `${withDecimalSign((bytes / 1_000_000).toFixed(1))} MB`
  const allowed = say("at most {most} MB", { most: LARGEST_FILE_BYTES / 1_000_000 })
  return {
    path: WHOLE_FILE,
    value,
    allowed,
    message: say("The file must be {allowed}; it is {value}.", { allowed, value }),
  }
}
