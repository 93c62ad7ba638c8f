import type { FastifyInstance } from "fastify"
import { type AdverseEvent, adverseEvents, adverseEventTable } from "../../engine/safety/adverse-events.js"
import { csvText } from "../../interop/table/csv-text.js"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import { serveRoute } from "../route.js"

/** How many children are read at a time: others are answered in between. */
const AT_A_TIME = 100

export function safetyRoutes(app: FastifyInstance, context: Context): void {
  serveRoute(app, api.adverseEvents, {
    answer: async ({ query, reply }) => {
      const { from, to, format } = query
      const { children, events } = await eventsOfPractice(context, query)
      if (format === "json") return { from: from ?? null, to: to ?? null, children, events: [...events] }
      reply.header("content-disposition", 'attachment; filename="adverse-events.csv"')
      reply.type("text/csv; charset=utf-8")
      return csvText(adverseEventTable(events))
    },
  })
}

async function eventsOfPractice(
  { record }: Context,
  {
    from,
    to,
    names,
  }: { readonly from?: string | undefined; readonly to?: string | undefined; readonly names: "yes" | "no" },
): Promise<{ readonly children: number; readonly events: readonly AdverseEvent[] }> {
  const found: AdverseEvent[] = []
  for (let page = 1; ; page += 1) {
    const { total, children } = await record.children({ page, pageSize: AT_A_TIME })
    const courses = await record.coursesOf(children.map(({ id }) => id))
    for (const { id, number, name } of children) {
      const course = courses.get(id)
      if (!course) continue
      // A child without a number is told by its id: somebody must be able to find it again.
      const child = { number: number ?? id, ...(names === "yes" ? { name } : {}) }
      found.push(...adverseEvents({ course, child, from, to }))
    }
    if (page * AT_A_TIME >= total) {
      const events = found.toSorted((a, b) => (a.opened < b.opened ? -1 : a.opened > b.opened ? 1 : 0))
      return { children: total, events }
    }
  }
}
