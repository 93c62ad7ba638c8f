import type { Problem } from "../engine/problem.js"
import { WHOLE_FILE } from "../interop/course/problem.js"
import type { ExitCode, Io } from "./io.js"

/** Tells every fault at once, to a person on stderr and, when JSON was asked for, as one document on stdout. */
export function toldProblems(
  problems: readonly Problem[],
  { io, json }: { readonly io: Io; readonly json: boolean },
): ExitCode {
  const count = problems.length === 1 ? "One fault in the input:" : `${problems.length} faults in the input:`
  io.error([count, ...problems.map((fault) => `  ${sentenceOf(fault)}`), ""].join("\n"))
  if (json) toldJson({ problems }, io)
  return 1
}

/** The message, after its path where the message does not name it. */
function sentenceOf({ path, message }: Problem): string {
  return path === WHOLE_FILE || message.includes(path) ? message : `${path}: ${message}`
}

/** Writes the one JSON document of an answer. */
export function toldJson(value: unknown, io: Io): ExitCode {
  io.out(`${JSON.stringify(value, null, 2)}\n`)
  return 0
}
