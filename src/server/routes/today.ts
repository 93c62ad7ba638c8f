import type { FastifyInstance } from "fastify"
import { byLanguage } from "../by-language.js"
import type { ChildReadings } from "../child-readings.js"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import { serveRoute } from "../route.js"
import { todayList } from "../today.js"

export function todayRoutes(app: FastifyInstance, context: Context, readings: () => ChildReadings): void {
  const lists: ReturnType<typeof todayList>[] = []
  const list = byLanguage(() => {
    const made = todayList(context, readings())
    lists.push(made)
    return made
  })
  serveRoute(app, api.today, { answer: ({ query }) => list().ask(query) })
  // Once it listens: whoever comes first in the morning finds the list ready.
  app.addHook("onListen", async () => {
    void list()
      .warm()
      .catch((error: unknown) => app.log.error({ err: error }, "reading the children failed"))
  })
  // The record is closed after this; whatever is still read of it then would fail.
  app.addHook("onClose", async () => {
    await Promise.all(lists.map((made) => made.stop()))
  })
}
