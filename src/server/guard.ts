import type { FastifyInstance, FastifyRequest } from "fastify"
import { say } from "../engine/say.js"
import type { PracticeRecord } from "../record/index.js"
import type { Clock } from "./clock.js"
import { Refusal } from "./refusal.js"

export const SESSION_COOKIE = "lengthwise-session"

/** Refuses what comes from another site, and whatever no log-in stands behind unless the route is open. */
export function guard(
  app: FastifyInstance,
  { record, clock }: { readonly record: PracticeRecord; readonly clock: Clock },
): void {
  app.decorateRequest("person", null)
  app.decorateRequest("bodyAsSent", null)
  app.addHook("onRequest", async (request, reply) => {
    if (!isApi(request)) return
    reply.header("cache-control", "no-store")
    if (isWrite(request) && !isSameOrigin(request))
      throw new Refusal(403, [
        {
          path: "",
          value: request.headers.origin ?? request.headers["sec-fetch-site"] ?? null,
          allowed: say("the pages of this server"),
          message: say("a change can be asked for by the pages of this server only"),
        },
      ])
    if (request.is404 || request.routeOptions.config.open) return
    const token = request.cookies[SESSION_COOKIE]
    request.person = token ? await record.personOfSession({ token, nowMs: clock.nowMs() }) : null
    if (!request.person) throw new Refusal(401)
  })
}

export function isApi(request: FastifyRequest): boolean {
  return request.url === "/api" || request.url.startsWith("/api/")
}

function isWrite({ method }: FastifyRequest): boolean {
  return method !== "GET" && method !== "HEAD"
}

/**
 * Browsers say where a request comes from; a program on this machine may say nothing and then has no cookie of
 * somebody else to abuse.
 */
function isSameOrigin({ headers }: FastifyRequest): boolean {
  const site = headers["sec-fetch-site"]
  if (site !== undefined && site !== "same-origin") return false
  if (headers.origin === undefined) return true
  return URL.canParse(headers.origin) && new URL(headers.origin).host === headers.host
}
