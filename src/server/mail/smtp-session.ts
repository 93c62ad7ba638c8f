import { Readable } from "node:stream"
import MailComposer from "nodemailer/lib/mail-composer"
import SMTPConnection from "nodemailer/lib/smtp-connection"
import type { SmtpAddress } from "./smtp-address.js"

/** An e-mail as it is written; addresses are plain and checked before. */
export interface Email {
  readonly from: { readonly name: string; readonly address: string }
  readonly replyTo?: string | undefined
  readonly to: { readonly name: string; readonly address: string }
  readonly subject: string
  readonly text: string
  readonly language: string
  readonly messageId: string
  readonly atMs: number
}

/** Why nothing can be sent at the moment, whatever the message. */
export const SERVER_PROBLEMS = ["unreachable", "no-tls", "log-in-refused", "sender-refused"] as const
export type ServerProblem = (typeof SERVER_PROBLEMS)[number]

/** What became of one message. Only `no-answer` leaves it open whether it arrived. */
export type Delivery =
  | { readonly kind: "accepted"; readonly reply: string }
  | { readonly kind: "put-off"; readonly reply: string }
  | { readonly kind: "refused"; readonly reply: string }
  /** The mail server takes nothing now: this message was not given to it. */
  | { readonly kind: "not-now"; readonly problem: ServerProblem; readonly reply: string }
  | { readonly kind: "no-answer"; readonly reply: string }

/** The mail server can't be spoken to; nothing was given to it. */
export class SmtpUnavailable extends Error {
  override readonly name = "SmtpUnavailable"
  constructor(
    readonly problem: ServerProblem,
    readonly reply: string,
  ) {
    super(problem)
  }
}

export interface SmtpSession {
  readonly send: (email: Email) => Promise<Delivery>
  /** False once the connection has ended; then a new session is needed. */
  readonly isOpen: () => boolean
  readonly close: () => void
  /** Ends the conversation where it stands; a message under way is given up as without an answer. */
  readonly abort: () => void
}

export interface SmtpTimes {
  readonly connectMs: number
  /** How long an answer may take. RFC 5321, 4.5.3.2.6 asks for ten minutes after the message. */
  readonly answerMs: number
}

const USUAL_TIMES: SmtpTimes = { connectMs: 20_000, answerMs: 600_000 }

/**
 * Opens a conversation with the mail server, logged in where a log-in is given. Nothing goes over a network
 * unencrypted: without TLS there is no conversation, except with this machine itself.
 */
export async function openSmtp(
  { host, port, secure, isLoopback, login }: SmtpAddress,
  { connectMs, answerMs }: SmtpTimes = USUAL_TIMES,
): Promise<SmtpSession> {
  const connection = new SMTPConnection({
    host,
    port,
    secure,
    requireTLS: !secure && !isLoopback,
    // A certificate of this machine's own would have to be made first, and protects nothing here.
    ignoreTLS: !secure && isLoopback,
    tls: { minVersion: "TLSv1.2" },
    connectionTimeout: connectMs,
    greetingTimeout: connectMs,
    dnsTimeout: connectMs,
    socketTimeout: answerMs,
    logger: false,
  })
  let open = true
  // Every failure also reaches the call that waits for it; unheard, an "error" event would end the process.
  let failed: (error: SmtpError) => void = () => {}
  connection.on("error", (error: SmtpError) => failed(error))
  connection.on("end", () => {
    open = false
  })
  const secrets = secretForms(login)
  const step = (start: (done: (error?: SmtpError | null) => void) => void) =>
    new Promise<void>((resolve, reject) => {
      failed = reject
      start((error) => (error ? reject(error) : resolve()))
    })
  try {
    await step((done) => connection.connect(done))
    if (login) await step((done) => connection.login({ user: login.user, pass: login.pass }, done))
  } catch (error) {
    connection.close()
    throw new SmtpUnavailable(serverProblem(error as SmtpError), replyOf(error as SmtpError, secrets))
  }
  return {
    isOpen: () => open,
    close: () => (open ? connection.quit() : connection.close()),
    abort: () => {
      connection.close()
      failed(new Error("the program was stopped"))
    },
    send: async (email) => {
      const bytes = await written(email)
      const { stream, isGiven } = givenOnce(bytes)
      try {
        const envelope = { from: email.from.address, to: [email.to.address] }
        const { response } = await new Promise<{ readonly response: string }>((resolve, reject) => {
          failed = reject
          connection.send(envelope, stream, (error, info) =>
            error ? reject(error) : resolve(info ?? { response: "" }),
          )
        })
        return { kind: "accepted", reply: cleaned(response, secrets) }
      } catch (error) {
        // After a refusal the server may think itself in the middle of something; a new conversation is cheap.
        open = false
        connection.close()
        return deliveryOf(error as SmtpError, {
          isGiven: isGiven(),
          reply: replyOf(error as SmtpError, secrets),
        })
      }
    },
  }
}

/** What nodemailer adds to an error. */
interface SmtpError extends Error {
  readonly code?: string | undefined
  /** Node's own code, where nodemailer put another in its place. */
  readonly originalCode?: unknown
  readonly command?: string | undefined
  readonly responseCode?: number | undefined
  readonly response?: string | undefined
}

function serverProblem({ code, originalCode, responseCode }: SmtpError): ServerProblem {
  if (code === "EAUTH" || responseCode === 535) return "log-in-refused"
  const isUntrusted = /CERT|ERR_TLS|ERR_SSL|UNABLE_TO_/.test(String(originalCode ?? ""))
  return code === "ETLS" || isUntrusted ? "no-tls" : "unreachable"
}

/**
 * What a failed conversation means for the message. An answer with a number is certain. Without one all turns on whether
 * the message had been handed over: then the server may have taken it, and only the answer was lost.
 */
function deliveryOf(
  { responseCode, command }: SmtpError,
  { isGiven, reply }: { readonly isGiven: boolean; readonly reply: string },
): Delivery {
  if (responseCode === undefined)
    return isGiven ? { kind: "no-answer", reply } : { kind: "not-now", problem: "unreachable", reply }
  const isFinal = responseCode >= 500 && responseCode < 600
  // Who sends is the practice's own setting: no message would fare better.
  if (command === "MAIL FROM" && isFinal) return { kind: "not-now", problem: "sender-refused", reply }
  return { kind: isFinal ? "refused" : "put-off", reply }
}

const LONGEST_REPLY = 300

function replyOf({ response, message }: SmtpError, secrets: readonly string[]): string {
  return cleaned(response ?? message, secrets)
}

/** A server's words in one line, without what opens it: some repeat what they were sent. */
function cleaned(reply: string, secrets: readonly string[]): string {
  const plain = secrets.reduce((text, secret) => text.replaceAll(secret, "***"), reply)
  return plain.replace(/\s+/g, " ").trim().slice(0, LONGEST_REPLY)
}

/** What opens the server, as it may be written in a conversation; a name of a letter or two would hide half the reply. */
function secretForms(login: SmtpAddress["login"]): readonly string[] {
  if (login === null) return []
  const { user, pass } = login
  const whole = Buffer.from(`\u0000${user}\u0000${pass}`).toString("base64")
  const plain = user.length > 2 ? [pass, user] : [pass]
  return [whole, ...plain.flatMap((secret) => [Buffer.from(secret).toString("base64"), secret])]
}

/** The message as a stream that knows whether any of it was taken: a mail server is given it only after its go-ahead. */
function givenOnce(bytes: Buffer) {
  let given = false
  const stream = new Readable({
    read() {
      given = true
      this.push(bytes)
      this.push(null)
    },
  })
  return { stream, isGiven: () => given }
}

/** The e-mail as bytes: plain text, marked as sent by a program, so that no out-of-office note answers it. */
function written(email: Email): Promise<Buffer> {
  const { from, replyTo, to, subject, text, language, messageId, atMs } = email
  const composer = new MailComposer({
    from: { ...from },
    ...(replyTo ? { replyTo } : {}),
    to: { ...to },
    subject,
    text,
    messageId,
    date: new Date(atMs),
    headers: { "Content-Language": language, "Auto-Submitted": "auto-generated" },
    disableFileAccess: true,
    disableUrlAccess: true,
  })
  return composer.compile().build()
}
