import type { ExitCode, Io } from "../io.js"

/** Whether the record of a data folder is whole. */
export async function run(_args: object, _io: Io): Promise<ExitCode> {
  return 2
}
