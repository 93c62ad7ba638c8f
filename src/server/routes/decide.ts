import type { FastifyInstance } from "fastify"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import { decide } from "../decide.js"
import { serveRoute } from "../route.js"

export function decideRoutes(app: FastifyInstance, context: Context): void {
  serveRoute(app, api.decide, {
    ownBodyCheck: true,
    answer: ({ params, bodyAsSent, person, request }) =>
      decide(context, { child: params.id, sent: bodyAsSent, person, request }),
  })
}
