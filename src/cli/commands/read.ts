import type { ExitCode, Io } from "../io.js"

/** What files of instruments and other programs hold, without storing anything. */
export async function run(_args: object, _io: Io): Promise<ExitCode> {
  return 2
}
