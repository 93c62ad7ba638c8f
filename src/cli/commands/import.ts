import type { ExitCode, Io } from "../io.js"

/** Takes files of instruments and other programs into a data folder. */
export async function run(_args: object, _io: Io): Promise<ExitCode> {
  return 2
}
