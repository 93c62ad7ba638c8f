import type { FastifyInstance } from "fastify"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import { recordItems, sentItem } from "../record-items.js"
import { serveRoute } from "../route.js"
import { signedBeside } from "../signed-consent.js"

/** A consent as the course file has it, and, where it was signed here, how. */
export function consentsRoutes(app: FastifyInstance, context: Context): void {
  serveRoute(app, api.addConsent, {
    // Faults are looked for by `recordItems`, in the whole course at once.
    ownBodyCheck: true,
    answer: async ({ params, bodyAsSent, person, request }) => {
      const sent = sentItem(bodyAsSent)
      const isObject = typeof sent.fields === "object" && sent.fields !== null && !Array.isArray(sent.fields)
      const fields = isObject ? (sent.fields as Readonly<Record<string, unknown>>) : {}
      const beside = await signedBeside(context.record, { fields, place: "" })
      const { signature: _, ...consent } = fields
      const item = { ...sent, fields: isObject ? consent : sent.fields, ...(beside && { beside }) }
      return recordItems(context, { list: "consents", child: params.id, items: [item], person, request })
    },
  })
}
