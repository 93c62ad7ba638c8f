import type { FastifyInstance } from "fastify"
import { say } from "../../engine/say.js"
import { problem } from "../../interop/course/problem.js"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import {
  DELIVERIES_PAGE,
  type DeliveriesAnswer,
  type DeliveriesQuery,
  MOST_WEBHOOKS,
  type WebhooksAnswer,
} from "../contract/webhooks.js"
import { noSuch, Refusal } from "../refusal.js"
import { serveRoute } from "../route.js"
import { isLoopbackAddress } from "./addresses.js"
import { urlFault } from "./url-fault.js"
import { webhookJob } from "./webhook-job.js"

/** How long a first look at all children is waited for; it goes on by itself. */
const FIRST_LOOK_MS = 3000

/** Addresses that are told of what is new, and everything they were told. */
export function webhookRoutes(app: FastifyInstance, context: Context): void {
  const { record, clock, oneAtATime } = context
  const { webhooks } = record
  const loopback = () => isReachedFromHereOnly(app)
  const job = webhookJob(context, { loopback })
  const failed = (error: unknown) => app.log.error({ err: error }, "telling other programs failed")
  const now = () => new Date(clock.nowMs()).toISOString()

  const namesById = async () => {
    const people = new Map((await record.people()).map(({ id, name }) => [id, name]))
    return (id: string) => people.get(id) ?? id
  }

  const answer = async (): Promise<WebhooksAnswer> => {
    const [all, counts, nameOf] = await Promise.all([
      webhooks.list(),
      webhooks.deliveries.counts(),
      namesById(),
    ])
    const count = (id: string, states: readonly string[]) =>
      counts
        .filter(({ webhook, state }) => webhook === id && states.includes(state))
        .reduce((sum, each) => sum + each.count, 0)
    return {
      webhooks: all.map((webhook) => ({
        ...webhook,
        events: [...webhook.events],
        createdBy: nameOf(webhook.createdBy),
        changedBy: webhook.changedBy && nameOf(webhook.changedBy),
        waiting: count(webhook.id, ["waiting", "sending"]),
        delivered: count(webhook.id, ["delivered"]),
        failed: count(webhook.id, ["failed"]),
      })),
    }
  }

  const deliveriesAnswer = async (query: DeliveriesQuery): Promise<DeliveriesAnswer> => {
    const { search, state, page = 1 } = query
    const asked = { search, state, page: Number(page), pageSize: DELIVERIES_PAGE }
    const [{ total, deliveries }, nameOf] = await Promise.all([webhooks.deliveries.list(asked), namesById()])
    return {
      total,
      page: Number(page),
      pageSize: DELIVERIES_PAGE,
      deliveries: deliveries.map(({ child, childName, changedBy, body: _, webhook: __, ...delivery }) => ({
        ...delivery,
        child: child === null ? null : { id: child, name: childName ?? "" },
        changedBy: changedBy && nameOf(changedBy),
      })),
    }
  }

  serveRoute(app, api.webhooks, { answer })

  serveRoute(app, api.addWebhook, {
    perMinute: 30,
    answer: ({ body, person }) =>
      oneAtATime(async () => {
        const allowed = urlFault(body.url, { loopback: loopback() })
        if (allowed !== null) throw new Refusal(422, [problem({ path: "url", value: body.url, allowed })])
        const known = await webhooks.list()
        if (known.length >= MOST_WEBHOOKS)
          throw new Refusal(409, [
            problem({
              path: "",
              value: known.length,
              allowed: say("at most {most} addresses at a time", { most: MOST_WEBHOOKS }),
            }),
          ])
        // What is new until now belongs to those who were there before.
        if (known.length > 0) await soon(job.compare())
        const { secret } = await webhooks.add({
          url: body.url,
          events: body.events,
          by: person.id,
          at: now(),
        })
        if (known.length === 0) await soon(job.compare())
        return { ...(await answer()), secret }
      }),
  })

  serveRoute(app, api.setWebhook, {
    answer: async ({ params: { webhookId }, body: { state }, person }) => {
      const from = state === "on" ? (["off", "disabled"] as const) : (["on", "disabled"] as const)
      // What happened while it was off is compared first, and told to nobody.
      await soon(job.compare())
      const isDone = await webhooks.setState({ id: webhookId, from, state, at: now(), by: person.id })
      if (!isDone && !(await webhooks.withSecret(webhookId))) throw noSuch("address", webhookId)
      return answer()
    },
  })

  serveRoute(app, api.removeWebhook, {
    answer: async ({ params: { webhookId }, person }) => {
      const from = ["on", "off", "disabled"] as const
      const gone = { id: webhookId, from, state: "removed", at: now(), by: person.id } as const
      if (!(await webhooks.setState(gone))) throw noSuch("address", webhookId)
      await webhooks.deliveries.cancelWaiting({ webhook: webhookId, at: now(), by: person.id })
      return answer()
    },
  })

  serveRoute(app, api.lookForNews, { perMinute: 30, answer: () => job.run({ insist: true }) })

  serveRoute(app, api.deliveries, { answer: ({ query }) => deliveriesAnswer(query) })

  serveRoute(app, api.deliverAgain, {
    answer: async ({ params: { deliveryId }, person }) => {
      const delivery = await webhooks.deliveries.delivery(deliveryId)
      if (!delivery) throw noSuch("delivery", deliveryId)
      const target = await webhooks.withSecret(delivery.webhook)
      const isMoved =
        target !== null &&
        (await webhooks.deliveries.change({
          id: deliveryId,
          from: ["waiting", "delivered", "failed"],
          state: "waiting",
          problem: "again",
          attempts: 0,
          at: now(),
          by: person.id,
        }))
      if (!isMoved)
        throw new Refusal(409, [
          problem({
            path: "state",
            value: delivery.state,
            allowed: say("a delivery to an address that is still there, and not under way"),
          }),
        ])
      return deliveriesAnswer({ search: deliveryId })
    },
  })

  // A first look at a large practice goes on after the answer.
  const soon = (look: Promise<unknown>): Promise<void> => {
    const looked = look.then(() => undefined, failed)
    const enough = new Promise<void>((resolve) => setTimeout(resolve, FIRST_LOOK_MS).unref())
    return Promise.race([looked, enough])
  }

  // Only where it listens: an application that is asked without a socket does nothing by itself.
  app.addHook("onListen", async () => job.start(failed))
  app.addHook("onClose", () => job.stop())
}

/** Whether nobody but this machine reaches the server, so that it may tell this machine's own programs. */
function isReachedFromHereOnly({ server }: FastifyInstance): boolean {
  const bound = server.address()
  return bound === null || (typeof bound === "object" && isLoopbackAddress(bound.address))
}
