import { setImmediate } from "node:timers/promises"
import type { FastifyInstance } from "fastify"
import { z } from "zod"
import type { TreatmentChoice } from "../../engine/course.js"
import { type Language, language as readersLanguage, say } from "../../engine/say.js"
import { type BatchItem, batchOf } from "../../report/batch.js"
import type { DocumentKind, DocumentRefused, PaperDocument } from "../../report/document.js"
import type { DocumentInput } from "../../report/document-input.js"
import { documentOf } from "../../report/documents.js"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import { batchBody, type documentQuery } from "../contract/documents.js"
import { problemAnswer } from "../contract/problem.js"
import { documentInputOf } from "../document-input.js"
import { familyLanguageOf } from "../family-language.js"
import { openFamilyLink } from "../open-family-link.js"
import { Refusal } from "../refusal.js"
import { serveRoute } from "../route.js"
import { shownDocument } from "../shown-document.js"

/** What families read is in their language unless another is asked for; what professionals read in the reader's. */
const READ_BY_FAMILIES: readonly DocumentKind[] = ["family", "consent", "estimate", "travel"]

/** Papers of a child, as content for a page or as PDF; and of many children as one PDF. */
export function documentsRoutes(app: FastifyInstance, context: Context): void {
  serveRoute(app, api.document, {
    answer: async ({ params: { id, kind }, query, person, request, reply }) => {
      const language = query.language ?? (await usualLanguage(context, { child: id, kind }))
      const input = await documentInputOf(context, id, {
        document: kind,
        language,
        author: person.name,
        familyLink: await openFamilyLink(context, { child: id, language, request }),
        ...ofQuery(query),
      })
      const document = made(kind, input)
      if (document.kind === "refused") throw refused(document)
      if (query.as === "content") return shownDocument(document)
      const pdf = await context.papers.set([document], { paper: query.paper })
      if (pdf.kind === "refused") throw refused(pdf)
      reply.type("application/pdf")
      // A name that says whose it is would stay in the list of downloads of a shared machine.
      reply.header("content-disposition", `inline; filename="${kind}-${document.date}.pdf"`)
      return Buffer.from(pdf.bytes)
    },
  })

  app.post<{ Body: z.output<typeof batchBody> }>(
    api.documentBatch.url,
    {
      config: { rateLimit: { max: 20, timeWindow: "1 minute" } },
      schema: { body: batchBody, response: PDF },
    },
    async ({ body: { children, kind, language, paper }, person }, reply) => {
      const items: BatchItem[] = []
      let page: Pick<DocumentInput, "letterhead" | "today"> | null = null
      for (const child of children) {
        const spoken = language ?? (await familyLanguageOf(context.record, child)) ?? "en"
        const input = await documentInputOf(context, child, {
          document: kind,
          language: spoken,
          author: person?.name,
        })
        page ??= input
        const number = input.childNumber ? ` (${input.childNumber})` : ""
        items.push({
          label: `${input.childName ?? child}${number}`,
          document: made(kind, input),
        })
        // Others are answered between one child and the next.
        await setImmediate()
      }
      if (page === null) throw new RangeError("a batch of no children was let through")
      const batch = await batchOf(items, {
        title: say("{papers, plural, one {# paper} other {# papers}}", { papers: children.length }),
        page: { kind, language: readersLanguage(), date: page.today, letterhead: page.letterhead },
        set: (documents, title) => context.papers.set(documents, { paper, title }),
      })
      if (batch.kind === "refused") {
        const each = batch.notPrinted.map(({ label, why }) => problemOf(`${label}: ${why}`))
        throw new Refusal(422, [problemOf(batch.why), ...each])
      }
      return reply
        .type("application/pdf")
        .header("content-disposition", `inline; filename="${kind}-batch-${page.today}.pdf"`)
        .header("x-papers-not-printed", String(batch.notPrinted.length))
        .send(Buffer.from(batch.bytes))
    },
  )
}

async function usualLanguage(
  { record }: Context,
  { child, kind }: { readonly child: string; readonly kind: DocumentKind },
): Promise<Language> {
  if (!READ_BY_FAMILIES.includes(kind)) return readersLanguage()
  return (await familyLanguageOf(record, child)) ?? "en"
}

/** The document; a refusal is said again in the language of whoever asked, which need not be the paper's. */
function made(kind: DocumentKind, input: DocumentInput): PaperDocument | DocumentRefused {
  const document = documentOf(kind, input)
  if (document.kind !== "refused") return document
  const again = documentOf(kind, { ...input, language: readersLanguage() })
  return again.kind === "refused" ? again : document
}

function ofQuery({
  treatment,
  concentration,
  months,
  order,
  concern,
  ...how
}: z.output<typeof documentQuery>) {
  const asked: TreatmentChoice | undefined = treatment && {
    kind: treatment,
    ...(concentration === undefined ? {} : { concentrationPercent: concentration }),
  }
  const readOn = how.as === "pdf" ? undefined : how.on
  return { treatment: asked, months, orderIndex: order, concernIndex: concern, readOn }
}

const problemOf = (message: string) => ({ path: "", value: null, allowed: "", message })
const refused = ({ why }: { readonly why: string }) => new Refusal(422, [problemOf(why)])

const PDF = {
  200: {
    description: "One PDF, each child's paper after the other; on a last page who has none, and why",
    content: { "application/pdf": { schema: z.string().meta({ format: "binary" }) } },
  },
  "4xx": { content: { "application/problem+json": { schema: problemAnswer } } },
}
