import { STATUS_CODES } from "node:http"
import type { FastifyError, FastifyReply, FastifyRequest } from "fastify"
import type { Saved } from "../record/index.js"
import type { Problem, ProblemAnswer } from "./contract/problem.js"

const TITLES = {
  400: "This request can't be read",
  401: "Log in first",
  403: "Not allowed from here",
  404: "Not found",
  409: "This contradicts what is recorded",
  413: "Too much at once",
  415: "Only JSON is read here",
  422: "Something needs to be put right",
  429: "Too many attempts",
} as const

export type RefusalStatus = keyof typeof TITLES

/** A request that is turned down for a reason its sender can understand. */
export class Refusal extends Error {
  override readonly name = "Refusal"
  constructor(
    readonly statusCode: RefusalStatus,
    readonly problems: readonly Problem[] = [],
    readonly retryAfterSeconds?: number,
  ) {
    super(TITLES[statusCode])
  }
}

export const noSuch = (thing: string, value: string): Refusal =>
  new Refusal(404, [{ path: "", value, allowed: `a ${thing} of this practice`, message: `no such ${thing}` }])

/** The refusal of the record as one of the server. */
export function refusalOfSave(saved: Exclude<Saved, { kind: "saved" }>): Refusal {
  return new Refusal(saved.kind === "not-found" ? 404 : 409, [...saved.problems])
}

/** The one place where whatever went wrong becomes an answer. */
export function answerFailure(error: FastifyError | Refusal, request: FastifyRequest, reply: FastifyReply) {
  if (error instanceof Refusal && error.retryAfterSeconds !== undefined)
    reply.header("retry-after", String(error.retryAfterSeconds))
  const status = error.statusCode ?? 500
  if (error instanceof Refusal)
    return sendProblem(reply, status, { title: error.message, problems: [...error.problems] })
  if (status >= 400 && status < 500) {
    const title = status in TITLES ? TITLES[status as RefusalStatus] : (STATUS_CODES[status] ?? "Refused")
    const problem = { path: "", value: null, allowed: "", message: error.message }
    return sendProblem(reply, status, { title, problems: [problem] })
  }
  // What failed is ours to know: the sender gets a number to quote, the log has the rest under the same number.
  const reference = crypto.randomUUID()
  request.log.error({ reference, err: error }, "request failed")
  return sendProblem(reply, 500, {
    title: "Something failed on our side",
    problems: [{ path: "", value: null, allowed: "", message: `reference ${reference}` }],
  })
}

function sendProblem(reply: FastifyReply, status: number, answer: ProblemAnswer) {
  return reply.code(status).type("application/problem+json").send(answer)
}
