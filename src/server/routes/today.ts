import type { FastifyInstance } from "fastify"
import { byLanguage } from "../by-language.js"
import type { ChildReadings } from "../child-readings.js"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import { serveRoute } from "../route.js"
import { todayList } from "../today.js"

export function todayRoutes(app: FastifyInstance, context: Context, readings: () => ChildReadings): void {
  const list = byLanguage(() => todayList(context, readings()))
  serveRoute(app, api.today, { answer: ({ query }) => list().ask(query) })
  // Once it listens: whoever comes first in the morning finds the list ready.
  app.addHook("onListen", async () => {
    void list()
      .warm()
      .catch((error: unknown) => app.log.error({ err: error }, "reading the children failed"))
  })
}
