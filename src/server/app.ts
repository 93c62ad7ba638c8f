import { join } from "node:path"
import fastifyCookie from "@fastify/cookie"
import fastifyHelmet from "@fastify/helmet"
import fastifyRateLimit from "@fastify/rate-limit"
import fastifyStatic from "@fastify/static"
import fastify, { type FastifyInstance } from "fastify"
import { say } from "../engine/say.js"
import { defaultSettings } from "../engine/settings.js"
import type { PracticeRecord } from "../record/index.js"
import { learnEveryLanguage } from "../words/index.js"
import { byLanguage } from "./by-language.js"
import { childReadings } from "./child-readings.js"
import type { Clock } from "./clock.js"
import type { Context } from "./context.js"
import { type InstrumentReceiver, instrumentReceiver } from "./dicom/receiver.js"
import { guard, isApi } from "./guard.js"
import { inTurn } from "./in-turn.js"
import { type MailJobOptions, mailJob } from "./mail/mail-job.js"
import { documentApi } from "./open-api.js"
import { paperSetter } from "./paper-setter.js"
import { speakTheReadersLanguage } from "./reading-language.js"
import { answerFailure, Refusal } from "./refusal.js"
import { contractValidator } from "./route.js"
import { calendarRoutes } from "./routes/calendar.js"
import { childrenRoutes } from "./routes/children.js"
import { consentsRoutes } from "./routes/consents.js"
import { decideRoutes } from "./routes/decide.js"
import { documentsRoutes } from "./routes/documents.js"
import { entriesRoutes } from "./routes/entries.js"
import { familyContactRoutes } from "./routes/family-contact.js"
import { familyLinksRoutes } from "./routes/family-links.js"
import { fhirRoutes } from "./routes/fhir.js"
import { filesRoutes } from "./routes/files.js"
import { importsRoutes } from "./routes/imports.js"
import { inboxRoutes } from "./routes/inbox.js"
import { instrumentsRoutes } from "./routes/instruments.js"
import { leaveRoutes } from "./routes/leave.js"
import { lotsRoutes } from "./routes/lots.js"
import { messagesRoutes } from "./routes/messages.js"
import { practiceRoutes } from "./routes/practice.js"
import { researchRoutes } from "./routes/research.js"
import { rulesRoutes } from "./routes/rules.js"
import { safetyRoutes } from "./routes/safety.js"
import { sessionRoutes } from "./routes/session.js"
import { templatesRoutes } from "./routes/templates.js"
import { todayRoutes } from "./routes/today.js"
import { tokensRoutes } from "./routes/tokens.js"
import { rulesInForce } from "./rules.js"

declare module "fastify" {
  interface FastifyInstance {
    instruments: InstrumentReceiver
  }
}

const LARGEST_BODY_BYTES = 1_000_000

export interface AppOptions {
  readonly record: PracticeRecord
  readonly clock: Clock
  /** The built pages; without them only the API is served. */
  readonly staticFolder?: string | undefined
  /** Where families reach this server, without a slash at the end. */
  readonly publicAddress?: string | undefined
  /** The mail server messages go through; without one they wait. */
  readonly mail?: MailJobOptions | undefined
  /** Failures of our own are written to the standard error output. */
  readonly log?: boolean
}

/** The whole HTTP application as a value: it listens nowhere, and `inject` asks it without a socket. */
export async function buildApp({
  record,
  clock,
  staticFolder,
  publicAddress,
  mail,
  log,
}: AppOptions): Promise<FastifyInstance> {
  const app = fastify({
    bodyLimit: LARGEST_BODY_BYTES,
    logger: log ? { level: "error", stream: process.stderr } : false,
  })
  learnEveryLanguage()
  const papers = paperSetter()
  app.addHook("onClose", async () => papers.close())
  const context: Context = {
    record,
    clock,
    settings: { ...defaultSettings, ...record.practice.settings },
    rules: rulesInForce(record),
    papers,
    publicAddress,
    oneAtATime: inTurn(),
  }
  const readings = byLanguage(() => childReadings(context))
  // Receives nothing before it is started, which whoever listens does.
  app.decorate("instruments", instrumentReceiver(context))
  app.setValidatorCompiler(contractValidator)
  // The contract describes our answers and the tests hold us to it; a record written under older rules stays readable.
  app.setSerializerCompiler(() => (answer) => JSON.stringify(answer))
  app.setErrorHandler(answerFailure)
  // A form of another site can send text and forms, but not JSON.
  app.removeContentTypeParser("text/plain")

  await app.register(fastifyHelmet, SECURITY_HEADERS)
  await app.register(fastifyCookie)
  await app.register(fastifyRateLimit, {
    global: false,
    errorResponseBuilder: (_request, { ttl }) => {
      const seconds = Math.ceil(ttl / 1000)
      const message = say(
        "too many requests from this address; try again in {seconds, plural, one {# second} other {# seconds}}",
        { seconds },
      )
      return new Refusal(429, [{ path: "", value: null, allowed: "", message }], seconds)
    },
  })
  speakTheReadersLanguage(app)
  guard(app, context)
  await documentApi(app)
  await app.register(async (routes) => {
    sessionRoutes(routes, context)
    practiceRoutes(routes, context)
    childrenRoutes(routes, context, readings)
    todayRoutes(routes, context, readings)
    entriesRoutes(routes, context)
    consentsRoutes(routes, context)
    decideRoutes(routes, context)
    documentsRoutes(routes, context)
    await routes.register((scope) => filesRoutes(scope, context))
    rulesRoutes(routes, context)
    calendarRoutes(routes, context)
    lotsRoutes(routes, context)
    templatesRoutes(routes, context)
    familyLinksRoutes(routes, context)
    familyContactRoutes(routes, context)
    messagesRoutes(routes, context, mailJob(context, readings, mail ?? { smtp: null }))
    safetyRoutes(routes, context)
    researchRoutes(routes, context)
    // Each in a scope of its own: some read bodies that are no JSON.
    for (const scoped of [
      inboxRoutes,
      importsRoutes,
      instrumentsRoutes,
      fhirRoutes,
      leaveRoutes,
      tokensRoutes,
    ])
      await routes.register((scope) => scoped(scope, context))
  })
  if (staticFolder) await servePages(app, staticFolder)
  else app.setNotFoundHandler(() => Promise.reject(new Refusal(404)))
  return app
}

/** Any path that is no file and not of the API is a page, which the browser's own router shows. */
async function servePages(app: FastifyInstance, staticFolder: string): Promise<void> {
  const hashedFiles = join(staticFolder, "assets")
  await app.register(fastifyStatic, {
    root: staticFolder,
    // Built files carry a hash of their content in their name; the page that names them does not.
    setHeaders: (response, path) =>
      response.header(
        "cache-control",
        path.startsWith(hashedFiles) ? "public, max-age=31536000, immutable" : "no-cache",
      ),
    cacheControl: false,
  })
  app.setNotFoundHandler((request, reply) => {
    // A link of a family holds a dot, like the name of a file.
    const isFamilys = request.url.startsWith("/f/")
    const isFile = !isFamilys && /\.\w+$/.test(request.url.split("?")[0] ?? "")
    if (request.method !== "GET" || isApi(request) || isFile) throw new Refusal(404)
    return reply.sendFile(isFamilys ? "family.html" : "index.html")
  })
}

const SECURITY_HEADERS = {
  contentSecurityPolicy: {
    useDefaults: false,
    directives: {
      "default-src": ["'none'"],
      "script-src": ["'self'"],
      "style-src": ["'self'"],
      "img-src": ["'self'", "data:"],
      "font-src": ["'self'"],
      "connect-src": ["'self'"],
      "manifest-src": ["'self'"],
      "base-uri": ["'none'"],
      "form-action": ["'self'"],
      "frame-ancestors": ["'none'"],
    },
  },
  // Served on the loopback without TLS; whoever puts TLS in front sets this there.
  strictTransportSecurity: false,
  referrerPolicy: { policy: "no-referrer" as const },
  xFrameOptions: { action: "deny" as const },
}
