import type { CalendarDate } from "../../engine/course.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson } from "../told.js"

export interface ServeArguments {
  readonly data: string
  readonly port: number
  readonly demo: boolean
  readonly today?: CalendarDate | undefined
  readonly address?: string | undefined
  readonly smtp?: string | undefined
  readonly dicomPort?: number | undefined
  readonly dicomHost?: string | undefined
  readonly dicomCert?: string | undefined
  readonly dicomKey?: string | undefined
  readonly json?: boolean | undefined
}

/** Starts the server on a data folder and stays until it is stopped. Imported only here: it brings the database. */
export async function run(
  {
    data,
    port,
    demo,
    today,
    address: families,
    smtp,
    dicomPort,
    dicomHost,
    dicomCert,
    dicomKey,
    json = false,
  }: ServeArguments,
  io: Io,
): Promise<ExitCode> {
  const { startServer } = await import("../../server/main.js")
  try {
    const say = (line: string) => (json ? io.error : io.out)(`${line}\n`)
    const { address } = await startServer({
      dataFolder: data,
      port,
      demo,
      today,
      address: families,
      smtp,
      dicom: { port: dicomPort, host: dicomHost, certificate: dicomCert, key: dicomKey },
      say,
    })
    return json ? toldJson({ address }, io) : 0
  } catch (cause) {
    io.error(`The server did not start: ${cause instanceof Error ? cause.message : String(cause)}\n`)
    return 1
  }
}
