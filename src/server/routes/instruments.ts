import type { FastifyInstance } from "fastify"
import type { Context } from "../context.js"
import { eventInWords } from "../contract/instrument-words.js"
import { INSTRUMENT_EVENTS_PAGE, instrumentsApi } from "../contract/instruments.js"
import { serveRoute } from "../route.js"

/** The DICOM receiver: whether it listens, what it took and refused. */
export async function instrumentsRoutes(app: FastifyInstance, _context: Context): Promise<void> {
  const { instruments } = app

  serveRoute(app, instrumentsApi.instruments, {
    answer: async ({ query }) => {
      // Looked at first: whoever just changed the settings sees what came of it.
      const listener = await instruments.look()
      const { total, events } = instruments.log.page({ ...query, words: eventInWords })
      return {
        listener,
        heard: [...(await instruments.heard())],
        counts: instruments.log.counts(),
        total,
        page: query.page,
        pageSize: INSTRUMENT_EVENTS_PAGE,
        events,
      }
    },
  })

  app.addHook("onClose", () => instruments.close())
}
