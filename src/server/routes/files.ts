import type { FastifyInstance } from "fastify"
import { z } from "zod"
import { say } from "../../engine/say.js"
import { problem } from "../../interop/course/problem.js"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import { endingOf, LARGEST_FILE_BYTES } from "../contract/file-types.js"
import { problemAnswer } from "../contract/problem.js"
import { fileFault } from "../file-fault.js"
import { noSuch, Refusal } from "../refusal.js"
import { serveRoute } from "../route.js"

// A little too large is refused by us, in words; what is far too large is not even read.
const READ_AT_MOST_BYTES = 2 * LARGEST_FILE_BYTES

/** Files by the hash of their bytes. Bytes are read only here, in a scope of their own. */
export async function filesRoutes(app: FastifyInstance, { record, clock }: Context): Promise<void> {
  app.addContentTypeParser(
    "application/octet-stream",
    { parseAs: "buffer", bodyLimit: READ_AT_MOST_BYTES },
    (_request, bytes, done) => done(null, bytes),
  )

  serveRoute(app, api.addFile, {
    answer: async ({ query: { mediaType }, bodyAsSent, person }) => {
      if (!Buffer.isBuffer(bodyAsSent)) throw new Refusal(415)
      const allowed = fileFault(bodyAsSent, mediaType)
      // The bytes themselves are not repeated in the refusal.
      if (allowed !== null)
        throw new Refusal(422, [
          {
            ...problem({ path: "file", value: null, allowed }),
            message: say("The file must be {allowed}.", { allowed }),
          },
        ])
      const recordedAt = new Date(clock.nowMs()).toISOString()
      const sha256 = await record.addFile({ mediaType, bytes: bodyAsSent, author: person.id, recordedAt })
      return { sha256, bytes: bodyAsSent.length }
    },
  })

  app.get<{ Params: { sha256: string } }>(
    api.file.url,
    { schema: { params: api.file.params, response: BYTES } },
    async ({ params: { sha256 } }, reply) => {
      const file = await record.file(sha256)
      if (!file) throw noSuch("file", sha256)
      const name = `file-${sha256.slice(0, 12)}.${endingOf(file.mediaType)}`
      const isText = file.mediaType === "text/plain"
      return reply
        .type(isText ? "text/plain; charset=utf-8" : file.mediaType)
        .header("content-disposition", `attachment; filename="${name}"`)
        .header("content-security-policy", "sandbox; default-src 'none'")
        .send(file.bytes)
    },
  )
}

const BYTES = {
  200: {
    description: "The file as it was stored",
    content: { "application/octet-stream": { schema: z.string().meta({ format: "binary" }) } },
  },
  "4xx": { content: { "application/problem+json": { schema: problemAnswer } } },
}
