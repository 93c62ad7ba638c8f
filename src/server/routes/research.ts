import type { FastifyInstance } from "fastify"
import { z } from "zod"
import { dataDictionary } from "../../interop/research/data-dictionary.js"
import { researchZip } from "../../interop/research/research-zip.js"
import { SMALLEST_CELL } from "../../interop/research/small-cells.js"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import { problemAnswer } from "../contract/problem.js"
import { practiceResearch } from "../research/practice-research.js"
import { serveRoute } from "../route.js"

/** The measurements of the practice without names. */
export function researchRoutes(app: FastifyInstance, { record }: Context): void {
  serveRoute(app, api.research, {
    answer: async () => {
      const { children, rows, smallCells } = await practiceResearch(record)
      return {
        children,
        rows,
        smallestCell: SMALLEST_CELL,
        smallCells: [...smallCells],
        dictionary: [...dataDictionary()],
      }
    },
  })

  app.get(api.researchTable.url, { schema: { response: ZIP } }, async (_request, reply) => {
    const bytes = await researchZip(await practiceResearch(record))
    return reply
      .type("application/zip")
      .header("content-disposition", 'attachment; filename="measurements-without-names.zip"')
      .send(bytes)
  })
}

const ZIP = {
  200: {
    description: "The files of the table",
    content: { "application/zip": { schema: z.string().meta({ format: "binary" }) } },
  },
  "4xx": { content: { "application/problem+json": { schema: problemAnswer } } },
}
