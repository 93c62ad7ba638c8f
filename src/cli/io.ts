import type { CalendarDate } from "../engine/course.js"
import type { Problem } from "../engine/problem.js"

/** 0 done, 1 the input is at fault, 2 the command was not understood. */
export type ExitCode = 0 | 1 | 2

/** All that a command may touch. Commands are functions of their arguments and of this, so tests need no process. */
export interface Io {
  /** The answer, and with `--json` one JSON document and nothing else; bytes where the answer is a file. */
  readonly out: (answer: string | Uint8Array) => void
  /** Everything else a person should read. */
  readonly error: (text: string) => void
  /** The text of a file, or of stdin for "-"; larger files than a course file can be are not read. */
  readonly read: (file: string) => Promise<{ readonly text: string } | { readonly problem: Problem }>
  /** The bytes of a file that is no larger than so many; one that is larger is not read. */
  readonly readBytes: (
    file: string,
    most: number,
  ) => Promise<{ readonly bytes: Uint8Array } | { readonly problem: Problem }>
  /** Puts a file there, or over one of that name, whole or not at all; what hinders it, or null. */
  readonly write: (file: string, content: string | Uint8Array) => Promise<Problem | null>
  /** What stands at a path: one file, course files in a folder (by name, sorted), or a data folder. */
  readonly place: (path: string) => Promise<Place>
  /** The file at a path, or every file in the folder there and in those below it, sorted; hidden ones are left out. */
  readonly files: (
    path: string,
  ) => Promise<{ readonly files: readonly string[] } | { readonly problem: Problem }>
  /** The one place where the command line reads the clock. */
  readonly today: () => CalendarDate
}

export type Place =
  | { readonly kind: "file" }
  | { readonly kind: "courses"; readonly files: readonly string[] }
  | { readonly kind: "record" }
