import type { ExitCode, Io } from "../io.js"

export interface ServeArguments {
  readonly data: string
  readonly port: number
  readonly demo: boolean
}

/** Starts the server on a data folder and stays until it is stopped. Imported only here: it brings the database. */
export async function run({ data, port, demo }: ServeArguments, io: Io): Promise<ExitCode> {
  const { startServer } = await import("../../server/main.js")
  try {
    await startServer({ dataFolder: data, port, demo })
    return 0
  } catch (cause) {
    io.error(`The server did not start: ${cause instanceof Error ? cause.message : String(cause)}\n`)
    return 1
  }
}
