import type { FastifyInstance } from "fastify"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import { serveRoute } from "../route.js"

export function practiceRoutes(app: FastifyInstance, { record, clock, settings, rules }: Context): void {
  serveRoute(app, api.health, { open: true, answer: async () => ({ status: "ok" as const }) })

  serveRoute(app, api.practice, {
    answer: async () => ({
      name: record.practice.name,
      latitude: record.practice.latitude,
      today: clock.today(),
      settings,
      rules: await rules.now(),
    }),
  })
}
