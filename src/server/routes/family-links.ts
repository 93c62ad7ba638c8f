import type { FastifyInstance, FastifyRequest } from "fastify"
import { z } from "zod"
import { isLanguage, say } from "../../engine/say.js"
import { type FamilyLink, LINK_FAILURES_ALLOWED } from "../../record/index.js"
import type { ReadOn } from "../../report/document-input.js"
import { documentOf } from "../../report/documents.js"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import { type LinksAnswer, openLinkBody, sharedParams } from "../contract/family-links.js"
import { problemAnswer } from "../contract/problem.js"
import { documentInputOf } from "../document-input.js"
import { familyAddress } from "../family-address.js"
import { familyCalendar } from "../family-calendar.js"
import { noSuch, Refusal } from "../refusal.js"
import { serveRoute } from "../route.js"
import { shownDocument } from "../shown-document.js"
import { CALENDAR, nothingAhead } from "./calendar.js"

const DAY_MS = 86_400_000

/** Links by which families read their page: made and taken back by the practice, opened by the child's birth date. */
export function familyLinksRoutes(app: FastifyInstance, context: Context): void {
  const { record, clock, oneAtATime } = context

  serveRoute(app, api.familyLinks, {
    answer: async ({ params: { id }, request }) => {
      // A child whose record was taken back has no links that open.
      if (!(await record.child(id))) throw noSuch("child", id)
      return linksAnswer(id, request)
    },
  })

  serveRoute(app, api.addFamilyLink, {
    answer: async ({ params: { id }, body: { language, days }, person, request }) => {
      if (!(await record.child(id))) throw noSuch("child", id)
      const nowMs = clock.nowMs()
      const expiresMs = nowMs + days * DAY_MS
      await record.addFamilyLink({ child: id, language, createdBy: person.id, nowMs, expiresMs })
      return linksAnswer(id, request)
    },
  })

  serveRoute(app, api.revokeFamilyLink, {
    answer: async ({ params: { id, linkId }, request }) => {
      await record.revokeFamilyLink({ id: linkId, child: id, nowMs: clock.nowMs() })
      return linksAnswer(id, request)
    },
  })

  serveRoute(app, api.openShared, {
    open: true,
    perMinute: 20,
    answer: async ({ params: { token }, body: { born, language: asked, on } }) => {
      const { link, document } = await opened({ token, born, asked, readOn: on })
      return { document: shownDocument(document), language: isLanguage(link.language) ? link.language : "en" }
    },
  })

  app.post<{ Params: z.output<typeof sharedParams>; Body: z.output<typeof openLinkBody> }>(
    api.sharedPdf.url,
    {
      config: { open: true, rateLimit: { max: 20, timeWindow: "1 minute" } },
      schema: { params: sharedParams, body: openLinkBody, response: PDF },
    },
    async ({ params: { token }, body: { born, language: asked, paper } }, reply) => {
      const { document } = await opened({ token, born, asked, readOn: "paper" })
      const pdf = await context.papers.set([document], { paper })
      if (pdf.kind === "refused")
        throw new Refusal(422, [{ path: "", value: null, allowed: "", message: pdf.why }])
      return reply
        .type("application/pdf")
        .header("content-disposition", 'inline; filename="family-page.pdf"')
        .send(Buffer.from(pdf.bytes))
    },
  )

  app.post<{ Params: z.output<typeof sharedParams>; Body: z.output<typeof openLinkBody> }>(
    api.sharedCalendar.url,
    {
      config: { open: true, rateLimit: { max: 20, timeWindow: "1 minute" } },
      schema: { params: sharedParams, body: openLinkBody, response: CALENDAR },
    },
    async ({ params: { token }, body: { born, language: asked } }, reply) => {
      const link = await openedLink({ token, born })
      const language = [asked, link.language].find(isLanguage) ?? "en"
      const calendar = await familyCalendar(context, { child: link.child, language })
      if (calendar === null) throw nothingAhead()
      return reply
        .type("text/calendar; charset=utf-8")
        .header("content-disposition", 'attachment; filename="appointments.ics"')
        .send(calendar)
    },
  )

  /** The link, opened. Whatever does not open gives one and the same answer, so that trying teaches nothing. */
  async function openedLink({
    token,
    born,
  }: {
    readonly token: string
    readonly born: string
  }): Promise<FamilyLink> {
    // Counted one after another, so that many tries at once are not one try.
    const link = await oneAtATime(async () => {
      const found = await record.openableFamilyLink({ token, nowMs: clock.nowMs() })
      if (!found) return null
      const child = await record.child(found.child)
      const isRight = child?.born === born
      await record.noteFamilyLinkTry({ id: found.id, isRight, nowMs: clock.nowMs() })
      return isRight ? found : null
    })
    if (!link) throw doesNotOpen()
    return link
  }

  /** The family's document behind a link. */
  async function opened({
    token,
    born,
    asked,
    readOn,
  }: {
    readonly token: string
    readonly born: string
    readonly asked?: string | undefined
    readonly readOn: ReadOn
  }) {
    const link = await openedLink({ token, born })
    const language = [asked, link.language].find(isLanguage) ?? "en"
    const input = await documentInputOf(context, link.child, { document: "family", language })
    const document = documentOf("family", { ...input, readOn })
    if (document.kind === "refused") throw doesNotOpen()
    return { link, document }
  }

  async function linksAnswer(child: string, request: FastifyRequest): Promise<LinksAnswer> {
    const [links, people] = await Promise.all([record.familyLinksOf(child), record.people()])
    const names = new Map(people.map(({ id, name }) => [id, name]))
    const nowMs = clock.nowMs()
    return {
      links: await Promise.all(
        links.map(async (link) => {
          const state = stateOf(link, nowMs)
          const path = state === "open" ? `/f/${await record.familyLinkToken(link.id)}` : null
          return {
            id: link.id,
            path,
            url: path && familyAddress(request, context) + path,
            language: isLanguage(link.language) ? link.language : ("en" as const),
            createdAt: link.createdAt,
            createdBy: names.get(link.createdBy) ?? link.createdBy,
            expiresAt: link.expiresAt,
            state,
            openedCount: link.openedCount,
            lastOpenedAt: link.lastOpenedAt,
          }
        }),
      ),
    }
  }
}

function stateOf({ revokedAt, failures, expiresAt }: FamilyLink, nowMs: number) {
  if (revokedAt !== null) return "revoked"
  if (failures >= LINK_FAILURES_ALLOWED) return "locked"
  return Date.parse(expiresAt) > nowMs ? "open" : "expired"
}

const doesNotOpen = (): Refusal =>
  new Refusal(404, [
    {
      path: "",
      value: null,
      allowed: "",
      message: say("this link and this date do not open a page"),
    },
  ])

const PDF = {
  200: {
    description: "The family's page as a PDF",
    content: { "application/pdf": { schema: z.string().meta({ format: "binary" }) } },
  },
  "4xx": { content: { "application/problem+json": { schema: problemAnswer } } },
}
