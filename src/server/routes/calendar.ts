import type { FastifyInstance } from "fastify"
import { z } from "zod"
import { LANGUAGES, say } from "../../engine/say.js"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import { problemAnswer } from "../contract/problem.js"
import { familyCalendar } from "../family-calendar.js"
import { familyLanguageOf } from "../family-language.js"
import { Refusal } from "../refusal.js"

export const calendarQuery = z.object({
  language: z
    .enum(LANGUAGES, { error: () => say("one of {list}", { list: LANGUAGES.join(", ") }) })
    .optional(),
})

/** A child's duties for the family's calendar, in its own language unless another is asked for. */
export function calendarRoutes(app: FastifyInstance, context: Context): void {
  app.get<{ Params: { id: string }; Querystring: z.output<typeof calendarQuery> }>(
    api.calendar.url,
    { schema: { params: api.calendar.params, querystring: calendarQuery, response: CALENDAR } },
    async ({ params: { id: child }, query }, reply) => {
      const language = query.language ?? (await familyLanguageOf(context.record, child)) ?? "en"
      const calendar = await familyCalendar(context, { child, language })
      if (calendar === null) throw nothingAhead()
      return reply
        .type("text/calendar; charset=utf-8")
        .header("content-disposition", 'attachment; filename="appointments.ics"')
        .send(calendar)
    },
  )
}

export const nothingAhead = (): Refusal =>
  new Refusal(422, [
    {
      path: "",
      value: null,
      allowed: "",
      message: say("nothing is owed to this child, so there is no calendar"),
    },
  ])

export const CALENDAR = {
  200: {
    description: "The calendar, RFC 5545",
    content: { "text/calendar": { schema: z.string() } },
  },
  "4xx": { content: { "application/problem+json": { schema: problemAnswer } } },
}
