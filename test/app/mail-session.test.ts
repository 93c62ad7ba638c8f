import { createServer } from "node:net"
import { afterEach, beforeEach, describe, expect, it } from "vitest"
import { smtpAddress } from "../../src/server/mail/smtp-address.js"
import { type Email, openSmtp, SmtpUnavailable } from "../../src/server/mail/smtp-session.js"
import { type MailServer, mailServer } from "./mail-server.js"

const LOG_IN = { user: "practice", pass: "hush-hush" }
const times = { connectMs: 3000, answerMs: 3000 }
const email: Email = {
  from: { name: "Quiet Harbour", address: "desk@harbour.example" },
  to: { name: "Inés Solberg", address: "ines@family.example" },
  subject: "Es hora de pedir una cita: 到访",
  text: "Hola.\n.\nA line that is a dot alone stands above this one.",
  language: "es",
  messageId: "<one@harbour.example>",
  atMs: Date.parse("2025-11-25T09:00:00Z"),
}

let server: MailServer
beforeEach(async () => {
  server = await mailServer({ login: LOG_IN })
})
afterEach(() => server.close())

const failure = async (opened: Promise<unknown>): Promise<SmtpUnavailable> => {
  const error = await opened.then(
    () => new Error("it opened"),
    (cause: unknown) => cause,
  )
  if (!(error instanceof SmtpUnavailable)) throw error
  return error
}

describe("a conversation with a mail server", () => {
  it("delivers letters of every script and lines that are a dot", async () => {
    const session = await openSmtp(server.address, times)
    expect(await session.send(email)).toMatchObject({ kind: "accepted" })
    session.close()
    const [mail = ""] = server.taken
    expect(mail).toMatch(/^Message-ID: <one@harbour\.example>/m)
    expect(mail).toMatch(/^Content-Language: es/m)
    expect(mail).toMatch(/\r\n\.\r\nA line/)
  })

  it("takes several messages, one after another", async () => {
    const session = await openSmtp(server.address, times)
    await session.send(email)
    await session.send({ ...email, messageId: "<two@harbour.example>" })
    session.close()
    expect(server.taken).toHaveLength(2)
  })

  it("does not open with a wrong password, and does not repeat it", async () => {
    const wrong = { ...server.address, login: { user: "practice", pass: "guessed" } }
    const { problem, reply } = await failure(openSmtp(wrong, times))
    expect(problem).toBe("log-in-refused")
    expect(reply).toContain("535")
    expect(reply).not.toContain("guessed")
  })

  it("does not go over a network without TLS, and sends no password there", async () => {
    const { problem } = await failure(openSmtp({ ...server.address, isLoopback: false }, times))
    expect(problem).toBe("no-tls")
  })

  it("does not trust a certificate that nobody vouches for", async () => {
    const signed = await mailServer({ login: LOG_IN, options: { disabledCommands: [], logger: false } })
    const { problem } = await failure(openSmtp({ ...signed.address, isLoopback: false }, times))
    expect(problem).toBe("no-tls")
    await signed.close()
  })

  it("gives up on a server that says nothing", async () => {
    const silent = createServer(() => {})
    await new Promise<void>((resolve) => silent.listen(0, "127.0.0.1", resolve))
    const address = silent.address()
    const port = typeof address === "object" && address ? address.port : 0
    const mute = smtpAddress(`smtp://127.0.0.1:${port}`)
    expect((await failure(openSmtp(mute, { connectMs: 200, answerMs: 200 }))).problem).toBe("unreachable")
    await new Promise((resolve) => {
      silent.close(resolve)
    })
  }, 15_000)

  it("hides what opens the server where it is repeated", async () => {
    const echo = await mailServer({
      options: {
        authOptional: false,
        onAuth: ({ username, password }, _session, done) =>
          done(Object.assign(new Error(`no ${username} with ${password}`), { responseCode: 535 })),
      },
    })
    const { reply } = await failure(openSmtp({ ...echo.address, login: LOG_IN }, times))
    expect(reply).toContain("no *** with ***")
    await echo.close()
  })

  it("that is stopped in the middle of a message leaves it without an answer", async () => {
    const slow = await mailServer({ options: { onData: (stream) => stream.resume() } })
    const session = await openSmtp(slow.address, times)
    const sending = session.send(email)
    await new Promise((resolve) => setTimeout(resolve, 300))
    session.abort()
    expect(await sending).toMatchObject({ kind: "no-answer" })
    await slow.close()
  })
})
