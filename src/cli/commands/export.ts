import type { ExitCode, Io } from "../io.js"

/** Writes a course or a whole practice in an open format. */
export async function run(_args: object, _io: Io): Promise<ExitCode> {
  return 2
}
