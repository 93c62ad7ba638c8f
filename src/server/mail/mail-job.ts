import { isQuiet } from "../../engine/messages/quiet-hours.js"
import type { MessageRules, PracticeRules } from "../../engine/practice-rules.js"
import type { OutboxMessage } from "../../record/index.js"
import type { ChildReadings } from "../child-readings.js"
import type { Context } from "../context.js"
import { inTurn } from "../in-turn.js"
import { type Filled, fillOutbox } from "./fill-outbox.js"
import { messagePlan, type Plan } from "./plan.js"
import type { SmtpAddress } from "./smtp-address.js"
import {
  type Delivery,
  type Email,
  openSmtp,
  type ServerProblem,
  type SmtpSession,
  type SmtpTimes,
  SmtpUnavailable,
} from "./smtp-session.js"

export interface MailJobOptions {
  /** Null where no mail server was named at the start. */
  readonly smtp: SmtpAddress | null
  readonly times?: SmtpTimes | undefined
}

/** What one look at the outbox did. */
export interface MailRun extends Filled {
  readonly sent: number
  readonly putOff: number
  readonly refused: number
  readonly unknown: number
  /** Why nothing, or nothing more, was sent. */
  readonly held: "off" | "quiet" | "no-server" | "server-down" | null
}

export interface MailHealth {
  readonly server: string | null
  readonly lastLookAt: string | null
  readonly lastAcceptedAt: string | null
  readonly failure: { readonly at: string; readonly problem: ServerProblem; readonly reply: string } | null
  /** Not before this instant is the mail server tried again. */
  readonly nextAttemptAt: string | null
}

const MINUTE_MS = 60_000
/** How long a message the server put off waits before the next attempt; the last one is kept to. Common practice, no source. */
const PUT_OFF_MINUTES = [1, 5, 15, 60, 240, 720, 1440, 1440]
/** How long a server that can't be spoken to is left alone. Common practice, no source. */
const DOWN_MINUTES = [1, 2, 5, 10, 20, 30]
const LOOK_EVERY_MS = MINUTE_MS
/** How long a server that is stopped waits for the answer to its last message. */
const LAST_MESSAGE_MS = 5000

export type MailJob = ReturnType<typeof mailJob>

/** Looks after the outbox: fills it from the plan and sends what is due, one message after another. */
export function mailJob(context: Context, readings: () => ChildReadings, { smtp, times }: MailJobOptions) {
  const { record, clock, rules } = context
  const plan = messagePlan(context, readings)
  const oneAtATime = inTurn()
  let timer: NodeJS.Timeout | null = null
  let ending = false
  let session: SmtpSession | null = null
  let down = { times: 0, untilMs: 0 }
  let health: Omit<MailHealth, "server" | "nextAttemptAt"> = {
    lastLookAt: null,
    lastAcceptedAt: null,
    failure: null,
  }
  const now = () => instant(clock.nowMs())

  const ended = () => {
    session?.close()
    session = null
  }

  const serverFailed = (problem: ServerProblem, reply: string) => {
    const minutes = DOWN_MINUTES[Math.min(down.times, DOWN_MINUTES.length - 1)] ?? 0
    down = { times: down.times + 1, untilMs: clock.nowMs() + minutes * MINUTE_MS }
    health = { ...health, failure: { at: now(), problem, reply } }
    ended()
  }

  /** The conversation under way, or a new one; null where the server can't be spoken to. */
  const conversation = async (address: SmtpAddress): Promise<SmtpSession | null> => {
    if (session?.isOpen()) return session
    try {
      session = await openSmtp(address, times)
      return session
    } catch (error) {
      if (!(error instanceof SmtpUnavailable)) throw error
      serverFailed(error.problem, error.reply)
      return null
    }
  }

  const accepted = () => {
    down = { times: 0, untilMs: 0 }
    health = { ...health, lastAcceptedAt: now(), failure: null }
  }

  /** Writes down what became of a message that was being sent. */
  const settle = async ({ id, attempts }: OutboxMessage, delivery: Delivery): Promise<void> => {
    const { reply } = delivery
    const settled = { id, from: ["sending"] as const, at: now(), reply }
    if (delivery.kind === "accepted")
      await record.outbox.change({ ...settled, state: "sent", attempts: attempts + 1 })
    else if (delivery.kind === "no-answer")
      await record.outbox.change({
        ...settled,
        state: "unknown",
        problem: "interrupted",
        attempts: attempts + 1,
      })
    else if (delivery.kind === "not-now") await record.outbox.change({ ...settled, state: "waiting" })
    else {
      const minutes = delivery.kind === "put-off" ? PUT_OFF_MINUTES[attempts] : undefined
      await record.outbox.change({
        ...settled,
        problem: delivery.kind,
        attempts: attempts + 1,
        ...(minutes === undefined
          ? { state: "failed" }
          : { state: "waiting", nextAttemptAt: instant(clock.nowMs() + minutes * MINUTE_MS) }),
      })
    }
  }

  /**
   * Sends one message. That it is being sent is on the disk before the server hears of it, so that a process that ends in
   * between can be seen to have ended there.
   */
  const sendOne = async (
    message: OutboxMessage,
    open: SmtpSession,
    from: MessageRules,
  ): Promise<Delivery | null> => {
    const { id } = message
    if (!(await record.outbox.change({ id, from: ["waiting"], state: "sending", at: now() }))) return null
    const delivery = await open.send(emailOf(message, { rules: from, atMs: clock.nowMs() }))
    await settle(message, delivery)
    if (delivery.kind === "accepted") accepted()
    if (delivery.kind === "not-now") serverFailed(delivery.problem, delivery.reply)
    return delivery
  }

  const look = async ({ insist }: { readonly insist: boolean }): Promise<MailRun> => {
    let run: MailRun = { added: 0, cancelled: 0, sent: 0, putOff: 0, refused: 0, unknown: 0, held: null }
    health = { ...health, lastLookAt: now() }
    // Looks come one after another: nothing is being sent now, whatever says so was cut short.
    await record.outbox.interrupted(now())
    let filledFrom: Plan | null = null
    try {
      for (;;) {
        const inForce = await rules.now()
        if (!isOn(inForce)) return { ...run, held: "off" }
        // Before each message anew: a visit recorded a moment ago takes its reminder back.
        const current = await plan.now()
        if (current !== filledFrom) {
          const filled = await fillOutbox({ record, plan: current, rules: inForce, at: now() })
          run = { ...run, added: run.added + filled.added, cancelled: run.cancelled + filled.cancelled }
          filledFrom = current
        }
        const message = await record.outbox.nextEmail(now())
        if (message === null || ending) return run
        if (smtp === null) return { ...run, held: "no-server" }
        if (isQuiet({ nowMs: clock.nowMs(), ...inForce.messages })) return { ...run, held: "quiet" }
        if (!insist && clock.nowMs() < down.untilMs) return { ...run, held: "server-down" }
        const open = await conversation(smtp)
        if (open === null) return { ...run, held: "server-down" }
        const delivery = await sendOne(message, open, inForce.messages)
        run = counted(run, delivery)
        if (delivery?.kind === "not-now") return { ...run, held: "server-down" }
      }
    } finally {
      ended()
    }
  }

  return {
    plan,
    /** Looks at once; with `insist` also at a server that is being left alone. */
    run: ({ insist = false }: { readonly insist?: boolean } = {}): Promise<MailRun> =>
      oneAtATime(() => look({ insist })),

    /** Sends a message that is in no outbox, to see whether the mail server takes it. */
    test: (email: Omit<Email, "atMs">): Promise<Delivery> =>
      oneAtATime(async () => {
        if (smtp === null) throw new RangeError("no mail server was named")
        try {
          const open = await conversation(smtp)
          if (open === null) return notNow(health.failure)
          const delivery = await open.send({ ...email, atMs: clock.nowMs() })
          if (delivery.kind === "accepted") accepted()
          if (delivery.kind === "not-now") serverFailed(delivery.problem, delivery.reply)
          return delivery
        } finally {
          ended()
        }
      }),

    health: (): MailHealth => ({
      ...health,
      server: smtp?.place ?? null,
      nextAttemptAt: down.untilMs > clock.nowMs() ? instant(down.untilMs) : null,
    }),

    /** Looks every minute until it is stopped. */
    start: (failed: (error: unknown) => void): void => {
      const beat = () => void oneAtATime(() => look({ insist: false })).catch(failed)
      timer ??= setInterval(beat, LOOK_EVERY_MS).unref()
      beat()
    },

    /** Lets the message under way finish, and begins no other. */
    stop: async (): Promise<void> => {
      ending = true
      if (timer) clearInterval(timer)
      const patience = setTimeout(() => session?.abort(), LAST_MESSAGE_MS)
      await oneAtATime(async () => {})
      clearTimeout(patience)
    },
  }
}

const instant = (ms: number): string => new Date(ms).toISOString()

const isOn = (rules: PracticeRules): rules is PracticeRules & { readonly messages: MessageRules } =>
  rules.messages?.isOn === true

const notNow = (failure: MailHealth["failure"]): Delivery => ({
  kind: "not-now",
  problem: failure?.problem ?? "unreachable",
  reply: failure?.reply ?? "",
})

function counted(run: MailRun, delivery: Delivery | null): MailRun {
  switch (delivery?.kind) {
    case "accepted":
      return { ...run, sent: run.sent + 1 }
    case "put-off":
      return { ...run, putOff: run.putOff + 1 }
    case "refused":
      return { ...run, refused: run.refused + 1 }
    case "no-answer":
      return { ...run, unknown: run.unknown + 1 }
    default:
      return run
  }
}

function emailOf(
  { recipient, name, subject, text, language, messageId }: OutboxMessage,
  { rules, atMs }: { readonly rules: MessageRules; readonly atMs: number },
): Email {
  return {
    from: { name: rules.sender, address: rules.from },
    replyTo: rules.replyTo,
    to: { name, address: recipient },
    subject,
    text,
    language,
    messageId,
    atMs,
  }
}
