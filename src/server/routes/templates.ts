import type { FastifyInstance } from "fastify"
import { DOCUMENT_KINDS } from "../../report/document.js"
import { documentOf } from "../../report/documents.js"
import { PARTS_OF, REQUIRED_PARTS, VALUES_OF } from "../../report/template/document-parts.js"
import { templateProblems } from "../../report/template/template-problems.js"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import { documentInputOf } from "../document-input.js"
import { serveRoute } from "../route.js"
import { shownDocument } from "../shown-document.js"

/** What a template may hold, and a look at one before it is recorded. */
export function templatesRoutes(app: FastifyInstance, context: Context): void {
  serveRoute(app, api.templateNames, {
    answer: async () => ({
      documents: DOCUMENT_KINDS.map((document) => ({
        document,
        parts: [...PARTS_OF[document]],
        required: [...REQUIRED_PARTS[document]],
        values: [...VALUES_OF[document]],
      })),
    }),
  })

  serveRoute(app, api.tryTemplate, {
    answer: async ({ body: { document, language, text, child }, person }) => {
      const problems = templateProblems({ document, language, text })
      if (problems.length > 0) return { problems: [...problems], document: null, refused: null }
      const input = await documentInputOf(context, child, { document, language, author: person.name })
      const made = documentOf(document, { ...input, template: { text } })
      if (made.kind === "refused") return { problems: [], document: null, refused: made.why }
      return { problems: [], document: shownDocument(made), refused: null }
    },
  })
}
