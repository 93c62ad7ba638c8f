import { once } from "node:events"
import type { AddressInfo } from "node:net"
import { SMTPServer, type SMTPServerOptions } from "smtp-server"
import { type SmtpAddress, smtpAddress } from "../../src/server/mail/smtp-address.js"

/** What a mail server does with the next message; it accepts everything unless told otherwise. */
export type Behaviour =
  | "accept"
  | "put-off-recipient"
  | "refuse-recipient"
  | "refuse-sender"
  | "put-off-message"
  | "drop-before-message"
  | "drop-after-message"

export interface MailServer {
  readonly address: SmtpAddress
  readonly url: string
  /** Every message that was taken, as it came. */
  readonly taken: readonly string[]
  /** Every message whose last line arrived, taken or not. */
  readonly arrived: readonly string[]
  readonly next: (...behaviours: readonly Behaviour[]) => void
  readonly close: () => Promise<void>
}

/** A real SMTP server on this machine. */
export async function mailServer({
  port = 0,
  login,
  options = {},
}: {
  readonly port?: number
  readonly login?: { readonly user: string; readonly pass: string }
  readonly options?: SMTPServerOptions
} = {}): Promise<MailServer> {
  const taken: string[] = []
  const arrived: string[] = []
  const behaviours: Behaviour[] = []
  let behaviour: Behaviour = "accept"
  const answer = (code: number, text: string) => Object.assign(new Error(text), { responseCode: code })
  const server = new SMTPServer({
    authOptional: login === undefined,
    disabledCommands: ["STARTTLS"],
    logger: false,
    onAuth: ({ username, password }, _session, done) =>
      username === login?.user && password === login?.pass
        ? done(null, { user: username })
        : done(answer(535, "authentication failed")),
    onMailFrom: (_address, _session, done) => {
      behaviour = behaviours.shift() ?? "accept"
      done(behaviour === "refuse-sender" ? answer(553, "sender not allowed") : null)
    },
    onRcptTo: (_address, _session, done) => {
      if (behaviour === "put-off-recipient") return done(answer(451, "come back later"))
      if (behaviour === "refuse-recipient") return done(answer(550, "no such mailbox"))
      if (behaviour === "drop-before-message") return drop()
      done()
    },
    onData: (stream, _session, done) => {
      let text = ""
      stream.on("data", (chunk) => {
        text += chunk
      })
      stream.on("end", () => {
        arrived.push(text)
        if (behaviour === "drop-after-message") return drop()
        if (behaviour === "put-off-message") return done(answer(452, "no room at the moment"))
        taken.push(text)
        done()
      })
    },
    ...options,
  })
  const drop = () => {
    for (const connection of server.connections) connection._socket?.destroy()
  }
  // A client that goes away in the middle is what some of the tests are about.
  server.on("error", () => {})
  server.listen(port, "127.0.0.1")
  await once(server.server, "listening")
  const at = (server.server.address() as AddressInfo).port
  const url = `smtp://${login ? `${login.user}:${login.pass}@` : ""}127.0.0.1:${at}`
  return {
    address: smtpAddress(url),
    url,
    taken,
    arrived,
    next: (...coming) => {
      behaviours.push(...coming)
    },
    close: () => new Promise((resolve) => server.close(() => resolve())),
  }
}
