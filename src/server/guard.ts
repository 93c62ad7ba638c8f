import type { FastifyInstance, FastifyRequest } from "fastify"
import { say } from "../engine/say.js"
import type { PracticeRecord } from "../record/index.js"
import type { Clock } from "./clock.js"
import { Refusal } from "./refusal.js"
import { askForToken, tokenCheck, tokenOf } from "./tokens/token-check.js"

export const SESSION_COOKIE = "lengthwise-session"

/**
 * Refuses what comes from another site, and whatever no log-in and no token stands behind unless the route is open. A
 * request with a token is its person's within its scopes, whatever cookie comes along.
 */
export function guard(
  app: FastifyInstance,
  { record, clock }: { readonly record: PracticeRecord; readonly clock: Clock },
): void {
  app.decorateRequest("person", null)
  app.decorateRequest("token", null)
  app.decorateRequest("bodyAsSent", null)
  const checkToken = tokenCheck({ record, clock })
  app.addHook("onRequest", async (request, reply) => {
    if (!isApi(request)) return
    reply.header("cache-control", "no-store")
    const secret = tokenOf(request)
    // No page of another site can make a browser send this header, so where it comes from does not matter.
    if (secret !== null) {
      if (!request.is404) await checkToken(secret, request, reply)
      return
    }
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
    if (request.person) return
    askForToken(reply)
    throw new Refusal(401)
  })
}

/** Whether what is asked for is answered by the API, to programs, and not by a page. */
export function isApi({ url }: FastifyRequest): boolean {
  const [path = ""] = url.split("?")
  return ["/api", "/fhir"].some((root) => path === root || path.startsWith(`${root}/`))
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
