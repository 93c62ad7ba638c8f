import type { ExitCode, Io } from "../io.js"

/** Takes a table into a data folder by a saved mapping. */
export async function run(
  _asked: {
    readonly file: string
    readonly data: string
    readonly mapping?: string | undefined
    readonly dateOrder?: string | undefined
    readonly decimal?: string | undefined
    readonly json?: boolean | undefined
  },
  io: Io,
): Promise<ExitCode> {
  io.error("Tables are imported on the page: Inbox, then Import a table.\n")
  return 1
}
