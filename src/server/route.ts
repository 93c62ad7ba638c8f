import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify"
import { z } from "zod"
import type { Scope } from "../engine/access/scopes.js"
import { pathText, problem } from "../interop/course/problem.js"
import type { Person } from "../record/index.js"
import { problemAnswer } from "./contract/problem.js"
import { type RouteScope, scopeOf } from "./contract/scopes.js"
import { Refusal } from "./refusal.js"

/** One line of the contract. */
interface Described {
  readonly method: "GET" | "POST" | "DELETE"
  readonly url: string
  readonly params?: z.ZodType
  readonly query?: z.ZodType
  readonly body?: z.ZodType
  readonly answer?: z.ZodType
  /** What it asks of a token, where the rule of its area does not fit. */
  readonly scope?: RouteScope
}

type Read<R extends Described, Part extends "params" | "query" | "body"> = R extends {
  readonly [P in Part]: infer Schema extends z.ZodType
}
  ? z.output<Schema>
  : undefined

interface Asked<R extends Described> {
  readonly params: Read<R, "params">
  readonly query: Read<R, "query">
  readonly body: Read<R, "body">
  /** The body as it was sent, before the contract took out what it does not know. */
  readonly bodyAsSent: unknown
  readonly request: FastifyRequest
  readonly reply: FastifyReply
  /** Who asks; only an open route can be asked by nobody. */
  readonly person: Person
}

type Answer<R extends Described> = R extends { readonly answer: infer Schema extends z.ZodType }
  ? z.output<Schema>
  : undefined

interface RouteOptions<R extends Described> {
  readonly answer: (asked: Asked<R>) => Promise<Answer<R>>
  /** Answered without a log-in. */
  readonly open?: boolean
  /** The handler checks the body itself: faults of the contract come as `request.validationError`. */
  readonly ownBodyCheck?: boolean
  readonly perMinute?: number
}

declare module "fastify" {
  interface FastifyContextConfig {
    open?: boolean
    /** What a token must be made for; by the rule of its area (`contract/scopes.ts`) when absent. */
    scope?: RouteScope
  }
  interface FastifyRequest {
    person: Person | null
    /** The token it was asked by; null for a person who is logged in. */
    token: { readonly id: string; readonly scopes: readonly Scope[] } | null
    bodyAsSent: unknown
  }
}

/** Serves one line of the contract: what is asked is checked, what is answered is typed by it. */
export function serveRoute<const R extends Described>(
  app: FastifyInstance,
  described: R,
  { answer, open, ownBodyCheck, perMinute }: RouteOptions<R>,
): void {
  const status = described.method === "POST" && described.answer ? 201 : described.answer ? 200 : 204
  app.route({
    method: described.method,
    url: described.url,
    attachValidation: ownBodyCheck ?? false,
    config: {
      ...(open ? { open } : {}),
      scope: scopeOf(described),
      ...(perMinute ? { rateLimit: { max: perMinute, timeWindow: "1 minute" } } : {}),
    },
    schema: {
      ...(described.params ? { params: described.params } : {}),
      ...(described.query ? { querystring: described.query } : {}),
      ...(described.body ? { body: described.body } : {}),
      response: {
        ...(described.answer ? { [status]: described.answer } : { 204: NOTHING }),
        "4xx": { content: { "application/problem+json": { schema: problemAnswer } } },
      },
    },
    preValidation: async (request) => {
      request.bodyAsSent = request.body
    },
    handler: async (request, reply) => {
      // Only the body is the handler's own to check.
      const { validationError } = request
      if (validationError && validationError.validationContext !== "body") throw validationError
      const result = await answer({
        params: request.params,
        query: request.query,
        body: request.body,
        bodyAsSent: request.bodyAsSent,
        request,
        reply,
        person: request.person,
      } as Asked<R>)
      reply.code(status)
      return result ?? reply.send()
    },
  })
}

const NOTHING = z.null().describe("Done")

/** Checks a part of a request by its Zod schema; every fault becomes a problem of one refusal. */
export function contractValidator({ schema }: { readonly schema: unknown }) {
  return (data: unknown) => {
    const result = (schema as z.ZodType).safeParse(data ?? undefined)
    if (result.success) return { value: result.data }
    const problems = result.error.issues.map(({ path, message }) =>
      problem({ path: pathText(path), value: valueAt(data, path), allowed: message }),
    )
    return { error: new Refusal(422, problems) }
  }
}

function valueAt(data: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (inside, key) => (inside as Readonly<Record<PropertyKey, unknown>> | null | undefined)?.[key],
    data,
  )
}
