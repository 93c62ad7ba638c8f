import type { Webhook, WebhookDelivery } from "../../record/index.js"
import type { Context } from "../context.js"
import { inTurn } from "../in-turn.js"
import type { Resolve } from "./addresses.js"
import { type Posted, post } from "./post.js"
import { signedHeaders } from "./signature.js"
import { newsTeller } from "./tell-news.js"

const MINUTE_MS = 60_000
const LOOK_EVERY_MS = MINUTE_MS
/** How long a delivery that failed waits before its next attempt; after the last it is given up. Common practice, no source. */
export const AGAIN_MINUTES = [1, 5, 15, 60, 240, 720, 1440, 1440, 1440]
/** How long an address is left alone by its failures in a row; the last is kept to. Common practice, no source. */
const PAUSE_MINUTES = [1, 1, 5, 15, 60, 240, 720, 1440]
/** Failures in a row after which an address is told no more, about six days. Ours; common practice, no source. */
export const FAILURES_ALLOWED = 12
/** Whoever insists asks for what waits for a later attempt as well, after what is due. */
const FAR_AHEAD = "9999"
/** How long a server that is stopped waits for the answers under way. */
const LAST_ANSWER_MS = 5000

export interface WebhookRun {
  readonly planned: number
  readonly delivered: number
  readonly failed: number
}

export interface WebhookJobOptions {
  /** Whether this machine itself may be told: only where nobody else can reach this server. */
  readonly loopback: () => boolean
  readonly timeoutMs?: number
  readonly resolve?: Resolve
}

/** Looks for what is new and tells it: each address on its own, so that a slow one keeps nobody waiting. */
export function webhookJob(context: Context, options: WebhookJobOptions) {
  const { record, clock } = context
  const { webhooks } = record
  const tellNews = newsTeller(context)
  const lookInTurn = inTurn()
  const queues = new Map<string, ReturnType<typeof inTurn>>()
  const ending = new AbortController()
  const state = { isEnding: false }
  let timer: NodeJS.Timeout | null = null
  let recovered: Promise<unknown> | null = null
  const instant = (addMs = 0) => new Date(clock.nowMs() + addMs).toISOString()

  /** Once per process, before anything is sent: what says it is being sent was cut short. */
  const recover = () => {
    recovered ??= webhooks.deliveries.interrupted(instant())
    return recovered
  }

  const settle = async (webhook: Webhook, delivery: WebhookDelivery, posted: Posted): Promise<void> => {
    const attempts = delivery.attempts + 1
    const common = { id: delivery.id, from: ["sending"] as const, at: instant(), attempts }
    const { status } = posted
    if (posted.kind === "accepted") {
      await webhooks.deliveries.change({ ...common, state: "delivered", status })
      await webhooks.succeeded(webhook.id)
      return
    }
    const { problem } = posted
    const minutes = AGAIN_MINUTES[delivery.attempts]
    await webhooks.deliveries.change({
      ...common,
      problem,
      status,
      ...(minutes === undefined
        ? { state: "failed" }
        : { state: "waiting", nextAttemptAt: instant(minutes * MINUTE_MS) }),
    })
    const failures = webhook.failures + 1
    const pause = PAUSE_MINUTES[Math.min(webhook.failures, PAUSE_MINUTES.length - 1)] ?? 0
    await webhooks.failed({ id: webhook.id, failures, pausedUntil: instant(pause * MINUTE_MS) })
    if (failures >= FAILURES_ALLOWED)
      await webhooks.setState({ id: webhook.id, from: ["on"], state: "disabled", at: instant(), by: null })
  }

  /** Sends an address what waits for it, one after another, until it fails once. */
  const deliver = async (id: string, insist: boolean): Promise<Omit<WebhookRun, "planned">> => {
    let delivered = 0
    for (;;) {
      const found = await webhooks.withSecret(id)
      const isPaused = !insist && (found?.webhook.pausedUntil ?? "") > instant()
      if (found?.webhook.state !== "on" || isPaused || state.isEnding) return { delivered, failed: 0 }
      const { next } = webhooks.deliveries
      const delivery = (await next(id, instant())) ?? (insist ? await next(id, FAR_AHEAD) : null)
      if (!delivery) return { delivered, failed: 0 }
      const { body } = delivery
      const claim = { id: delivery.id, from: ["waiting"] as const, state: "sending", at: instant() } as const
      if (!(await webhooks.deliveries.change(claim))) continue
      const { loopback, ...rest } = options
      const posted = await post({
        ...rest,
        url: found.webhook.url,
        body,
        headers: signedHeaders({ secret: found.secret, body, nowMs: clock.nowMs() }),
        loopback: loopback(),
        signal: ending.signal,
      })
      await settle(found.webhook, delivery, posted)
      if (posted.kind === "failed") return { delivered, failed: 1 }
      delivered++
    }
  }

  const deliverAll = async (insist: boolean): Promise<Omit<WebhookRun, "planned">> => {
    await recover()
    const runs = await Promise.all(
      (await webhooks.list()).map(({ id }) => {
        const queue = queues.get(id) ?? inTurn()
        queues.set(id, queue)
        return queue(() => deliver(id, insist))
      }),
    )
    const sum = (field: "delivered" | "failed") => runs.reduce((total, run) => total + run[field], 0)
    return { delivered: sum("delivered"), failed: sum("failed") }
  }

  const compare = (): Promise<number> => lookInTurn(async () => (state.isEnding ? 0 : tellNews()))

  const run = async ({ insist = false }: { readonly insist?: boolean } = {}): Promise<WebhookRun> => {
    const planned = await compare()
    return { planned, ...(await deliverAll(insist)) }
  }

  return {
    /** Looks for what is new and sends nothing. */
    compare,
    /** Looks and sends at once; with `insist` also to an address that is being left alone. */
    run,

    /** Looks every minute until it is stopped. */
    start: (failed: (error: unknown) => void): void => {
      const beat = () => void run().catch(failed)
      timer ??= setInterval(beat, LOOK_EVERY_MS).unref()
      beat()
    },

    /** Lets the answers under way come in for a moment, and begins nothing more. */
    stop: async (): Promise<void> => {
      state.isEnding = true
      if (timer) clearInterval(timer)
      const patience = setTimeout(() => ending.abort(), LAST_ANSWER_MS)
      await Promise.all([
        lookInTurn(async () => {}),
        ...[...queues.values()].map((queue) => queue(async () => {})),
      ])
      clearTimeout(patience)
    },
  }
}
