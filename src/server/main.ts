import { existsSync } from "node:fs"
import { join, resolve } from "node:path"
import { fileURLToPath } from "node:url"
import type { CalendarDate } from "../engine/course.js"
import { demoCourses } from "../engine/simulate/demo.js"
import { evidence } from "../evidence/index.js"
import { lockFolder, migrate, openEmbedded } from "../record/index.js"
import { buildApp } from "./app.js"
import { type Clock, clockMovedTo, machineClock } from "./clock.js"
import { isDemo, loadDemo } from "./demo.js"
import { receiverGreeting, receiverKeys, startReceiver } from "./dicom/start-receiver.js"
import { type FirstLogIn, firstLogIn } from "./first-log-in.js"
import { type SmtpAddress, SmtpAddressFault, smtpAddress } from "./mail/smtp-address.js"
import { practiceOf } from "./open-folder.js"
import { ServerStartError } from "./server-start-error.js"

export interface ServerOptions {
  /** Made when absent. */
  readonly dataFolder: string
  /** 0 takes any free port. */
  readonly port: number
  /** Loads invented children into a practice that has none. */
  readonly demo?: boolean
  /** Only this machine unless said otherwise. */
  readonly host?: string
  readonly staticFolder?: string
  readonly clock?: Clock
  /** Another day than the machine's, to live through a course; only in the demo practice. */
  readonly today?: CalendarDate | undefined
  /**
   * Where families reach this server, such as `https://eyes.example`: it stands in links and codes. The environment's
   * LENGTHWISE_ADDRESS when absent, else the address by which the practice itself reached it.
   */
  readonly address?: string | undefined
  /** Mail server, `smtp[s]://user:password@host:port`; the environment's LENGTHWISE_SMTP when absent. */
  readonly smtp?: string | undefined
  /** Port of the DICOM receiver in place of the practice's own setting; the certificate and key turn TLS on. */
  readonly dicom?:
    | {
        readonly port?: number | undefined
        /** Where instruments reach this machine; the server's own host when absent. */
        readonly host?: string | undefined
        readonly certificate?: string | undefined
        readonly key?: string | undefined
      }
    | undefined
  /** Where the address and the first log-in are told; the standard output unless said otherwise. */
  readonly say?: (line: string) => void
}

export interface RunningServer {
  readonly address: string
  /** How to log in the first time; absent once that password has been changed. */
  readonly firstLogIn?: FirstLogIn
  readonly close: () => Promise<void>
}

export { ServerStartError }

/** Any number would do; this one makes every demo of one day the same. */
const DEMO_SEED = 7

const BUILT_PAGES = fileURLToPath(new URL("../web", import.meta.url))

/** Serves a data folder until it is closed or the process is asked to end. One process at a time holds a folder. */
export async function startServer(options: ServerOptions): Promise<RunningServer> {
  const {
    clock = options.today ? clockMovedTo(options.today) : machineClock,
    host = "127.0.0.1",
    port,
    staticFolder = BUILT_PAGES,
    say = print,
  } = options
  const dataFolder = resolve(options.dataFolder)
  // Undone in reverse order, by a close as well as by a start that fails half-way.
  const undo: (() => unknown)[] = []
  const close = async () => {
    for (const step of undo.splice(0).reverse()) await step()
  }
  try {
    const publicAddress = addressOfFamilies(options.address ?? process.env.LENGTHWISE_ADDRESS)
    const smtp = mailServer(options.smtp ?? process.env.LENGTHWISE_SMTP)
    const keys = receiverKeys(options.dicom)
    const lock = lockFolder(dataFolder)
    undo.push(() => lock.release())
    const database = openEmbedded(dataFolder)
    undo.push(() => database.close())
    await migrate(database)
    const record = await practiceOf(database, { demo: options.demo ?? false, nowMs: clock.nowMs() })
    const logIn = await firstLogIn({ record, dataFolder, nowMs: clock.nowMs() })
    if (options.demo)
      await loadDemo({
        record,
        children: () => demoCourses({ today: clock.today(), seed: DEMO_SEED, evidence }),
        nowMs: clock.nowMs(),
      })
    if (options.today && !(await isDemo(record)))
      throw new ServerStartError(
        "the day can be set in the demo practice only; this one holds other children",
      )
    const pages = existsSync(join(staticFolder, "index.html")) ? staticFolder : undefined
    const app = await buildApp({
      record,
      clock,
      staticFolder: pages,
      publicAddress,
      mail: { smtp },
      log: true,
    })
    undo.push(() => app.close())
    const address = await app.listen({ host, port }).catch((cause) => {
      throw cause.code === "EADDRINUSE"
        ? new ServerStartError(`port ${port} of ${host} is taken; choose another`, { cause })
        : cause
    })
    const receives = await startReceiver(app.instruments, {
      ...options.dicom,
      host: options.dicom?.host ?? host,
      keys,
    })
    lock.note(`serving ${address}, process ${process.pid}`)
    undo.push(closeOnSignals(close))
    const told = { address, logIn, pages, smtp, receives: receiverGreeting(receives), today: options.today }
    for (const line of greeting(told)) say(line)
    return { address, ...(logIn ? { firstLogIn: logIn } : {}), close }
  } catch (error) {
    await close()
    throw error
  }
}

/** The mail server that was named; a fault of it stops the start, since messages would wait unseen. */
function mailServer(text: string | undefined): SmtpAddress | null {
  try {
    return text ? smtpAddress(text) : null
  } catch (cause) {
    if (cause instanceof SmtpAddressFault) throw new ServerStartError(cause.message)
    throw cause
  }
}

/** An address that a path can be put behind; a wrong one is told at the start and not found on a family's paper. */
function addressOfFamilies(text: string | undefined): string | undefined {
  if (!text) return undefined
  const url = URL.canParse(text) ? new URL(text) : null
  const isPlain = url && /^https?:$/.test(url.protocol) && url.pathname === "/" && !url.search && !url.hash
  if (!isPlain || url.username)
    throw new ServerStartError(
      `the address of families must be such as https://eyes.example, with no path; it is ${text}`,
    )
  return url.origin
}

function greeting({
  address,
  logIn,
  pages,
  smtp,
  receives,
  today,
}: {
  readonly smtp: SmtpAddress | null
  readonly receives: readonly string[]
  readonly today: CalendarDate | undefined
  readonly address: string
  readonly logIn: FirstLogIn | undefined
  readonly pages: string | undefined
}): readonly string[] {
  return [
    `Lengthwise is at ${address}`,
    ...(pages ? [] : ["The pages are not built; only the API is served."]),
    ...(smtp ? [`Messages to families go through ${smtp.place}.`] : []),
    ...receives,
    ...(today ? [`The practice's day is set to ${today}.`] : []),
    ...(logIn?.password ? [`Log in as ${logIn.name} with the password ${logIn.password}`] : []),
    ...(logIn ? [`The first log-in is kept in ${logIn.file} until its password is changed.`] : []),
    "Ctrl+C stops it.",
  ]
}

function print(line: string): void {
  process.stdout.write(`${line}\n`)
}

/** Ends the server in good order when the process is asked to end; returns how to stop listening for that. */
function closeOnSignals(close: () => Promise<void>): () => void {
  const signals = ["SIGINT", "SIGTERM"] as const
  const end = () => void close()
  for (const signal of signals) process.once(signal, end)
  return () => {
    for (const signal of signals) process.off(signal, end)
  }
}
