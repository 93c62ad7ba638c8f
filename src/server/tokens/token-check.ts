import type { FastifyReply, FastifyRequest } from "fastify"
import { say } from "../../engine/say.js"
import { type PracticeRecord, TOKEN_PREFIX } from "../../record/index.js"
import type { Clock } from "../clock.js"
import { scopeOf } from "../contract/scopes.js"
import { Refusal } from "../refusal.js"
import { perMinute } from "./per-minute.js"

/** Far above what a program in a practice needs. Ours; common practice, no source. */
export const TOKEN_REQUESTS_PER_MINUTE = 600
/** A token cannot be guessed; this only keeps the noise of trying down. Ours; common practice, no source. */
export const WRONG_TOKENS_PER_MINUTE = 20

const REALM = 'Bearer realm="lengthwise"'

/**
 * The token a request carries in its Authorization header (RFC 6750, 2.1), the only place where one is looked for;
 * null when there is none of ours.
 */
export function tokenOf({ headers: { authorization } }: FastifyRequest): string | null {
  const [, token = ""] = /^bearer +(\S+) *$/i.exec(authorization ?? "") ?? []
  return token.startsWith(TOKEN_PREFIX) ? token : null
}

/** Lets a request with a token in as the person who made it, within the token's scopes; refuses it otherwise. */
export function tokenCheck({ record, clock }: { readonly record: PracticeRecord; readonly clock: Clock }) {
  const tooMany = perMinute({ most: TOKEN_REQUESTS_PER_MINUTE, nowMs: clock.nowMs })
  const tooManyWrong = perMinute({ most: WRONG_TOKENS_PER_MINUTE, nowMs: clock.nowMs })

  return async (secret: string, request: FastifyRequest, reply: FastifyReply): Promise<void> => {
    const use = await record.tokens.use({ secret, nowMs: clock.nowMs() })
    if (!use) {
      const seconds = tooManyWrong(request.ip)
      if (seconds !== null) throw waiting(say("too many wrong tokens from this address"), seconds)
      reply.header("www-authenticate", `${REALM}, error="invalid_token"`)
      throw new Refusal(401, [
        {
          path: "",
          value: null,
          allowed: say("a token that is neither revoked nor expired"),
          message: say("this token opens nothing: it is unknown, revoked or expired"),
        },
      ])
    }
    const seconds = tooMany(use.token.id)
    if (seconds !== null) throw waiting(say("too many requests with this token"), seconds)
    request.person = use.person
    request.token = use.token
    const { config, url = "" } = request.routeOptions
    const needed = config.scope ?? scopeOf({ method: request.method, url })
    if (needed === "none" || use.token.scopes.some((scope) => scope === needed)) return
    const isForSessions = needed === "session"
    reply.header(
      "www-authenticate",
      `${REALM}, error="insufficient_scope"${isForSessions ? "" : `, scope="${needed}"`}`,
    )
    throw new Refusal(403, [
      {
        path: "",
        value: use.token.scopes.join(" "),
        allowed: isForSessions ? say("a person who is logged in") : needed,
        message: isForSessions
          ? say("this can be asked for by a person who is logged in only, with no token")
          : say("this token was made without the scope {scope}", { scope: needed }),
      },
    ])
  }
}

/** Told to whoever asks with nothing: a token would do. */
export const askForToken = (reply: FastifyReply) => reply.header("www-authenticate", REALM)

const waiting = (message: string, seconds: number): Refusal =>
  new Refusal(
    429,
    [
      {
        path: "",
        value: null,
        allowed: say("another attempt in {seconds, plural, one {# second} other {# seconds}}", { seconds }),
        message,
      },
    ],
    seconds,
  )
