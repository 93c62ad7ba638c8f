import type { FastifyInstance } from "fastify"
import { z } from "zod"
import { say } from "../../engine/say.js"
import type { Person } from "../../record/index.js"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import { problemAnswer } from "../contract/problem.js"
import { archiveShelf } from "../leave/shelf.js"
import { logInCheck } from "../log-in.js"
import { Refusal } from "../refusal.js"
import { serveRoute } from "../route.js"

/** Everything out: the archive of the practice, for a clinician who says the password again. */
export async function leaveRoutes(app: FastifyInstance, context: Context): Promise<void> {
  // Failures alone go into the log otherwise; that somebody took everything out is written down as well.
  const log = app.log.child({}, { level: "info" })
  const shelf = archiveShelf(context, (line) => log.info({ archive: line }, "archive of the practice"))
  app.addHook("onClose", () => shelf.close())
  const checkLogIn = logInCheck(context)

  serveRoute(app, api.archives, {
    answer: async ({ person }) => {
      onlyClinicians(person)
      return shelf.shown()
    },
  })

  serveRoute(app, api.makeArchive, {
    perMinute: 10,
    answer: async ({ body: { password, withPapers, paper }, person }) => {
      onlyClinicians(person)
      await checkLogIn({ name: person.logIn, password }).catch((cause) => {
        throw cause instanceof Refusal && cause.statusCode === 401 ? wrongPassword() : cause
      })
      await shelf.start({ person, withPapers, paper })
      return shelf.shown()
    },
  })

  serveRoute(app, api.removeArchive, {
    answer: async ({ params: { archiveId }, person }) => {
      onlyClinicians(person)
      await shelf.remove({ id: archiveId, person })
      return shelf.shown()
    },
  })

  app.get<{ Params: z.output<typeof api.archiveFile.params> }>(
    api.archiveFile.url,
    { schema: { params: api.archiveFile.params, response: ZIP } },
    async ({ params: { archiveId }, person }, reply) => {
      if (!person) throw new Refusal(401)
      onlyClinicians(person)
      const { stream, bytes, name } = shelf.open(archiveId)
      // Removed only once all of it went out: a download that broke off can be begun again.
      reply.raw.once("finish", () => shelf.fetched({ id: archiveId, person }))
      return reply
        .type("application/zip")
        .header("content-length", bytes)
        .header("content-disposition", `attachment; filename="${name}"`)
        .send(stream)
    },
  )
}

function onlyClinicians({ role }: Person): void {
  if (role !== "clinician") throw new Refusal(403)
}

const wrongPassword = () =>
  new Refusal(422, [
    {
      path: "password",
      value: null,
      allowed: say("the password in use"),
      message: say("this is not the password in use"),
    },
  ])

const ZIP = {
  200: {
    description: "The archive (docs/archive.md)",
    content: { "application/zip": { schema: z.string().meta({ format: "binary" }) } },
  },
  "4xx": { content: { "application/problem+json": { schema: problemAnswer } } },
}
