import { STATUS_CODES } from "node:http"
import type { FastifyError, FastifyReply, FastifyRequest } from "fastify"
import { inLanguage, msg, say } from "../engine/say.js"
import type { Saved } from "../record/index.js"
import type { Problem, ProblemAnswer } from "./contract/problem.js"
import { sendOutcome } from "./fhir/outcome.js"
import { languageOf } from "./reading-language.js"

const TITLES = {
  400: msg("This request can't be read"),
  401: msg("Log in first"),
  403: msg("Not allowed from here"),
  404: msg("Not found"),
  409: msg("This contradicts what is recorded"),
  413: msg("Too much at once"),
  415: msg("Only JSON is read here"),
  422: msg("Something needs to be put right"),
  429: msg("Too many attempts"),
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

const NO_SUCH: Readonly<Record<string, readonly [allowed: string, message: string]>> = {
  child: [msg("a child of this practice"), msg("no such child")],
  visit: [msg("a visit of this practice"), msg("no such visit")],
  treatment: [msg("a treatment of this practice"), msg("no such treatment")],
  file: [msg("a file of this practice"), msg("no such file")],
  archive: [msg("an archive of this practice that is ready"), msg("no such archive")],
  message: [msg("a message of this practice"), msg("no such message")],
  list: [msg("a list of this practice"), msg("no such list")],
  token: [msg("a token of this practice"), msg("no such token")],
  address: [msg("an address of this practice"), msg("no such address")],
  delivery: [msg("a delivery of this practice"), msg("no such delivery")],
  "entry that can be put right": [
    msg("a entry that can be put right of this practice"),
    msg("no such entry that can be put right"),
  ],
}

export function noSuch(thing: string, value: string): Refusal {
  const [allowed, message] = NO_SUCH[thing] ?? [`a ${thing} of this practice`, `no such ${thing}`]
  return new Refusal(404, [{ path: "", value, allowed: say(allowed), message: say(message) }])
}

/** The refusal of the record as one of the server. */
export function refusalOfSave(saved: Exclude<Saved, { kind: "saved" }>): Refusal {
  return new Refusal(saved.kind === "not-found" ? 404 : 409, [...saved.problems])
}

/** The one place where whatever went wrong becomes an answer. */
export function answerFailure(error: FastifyError | Refusal, request: FastifyRequest, reply: FastifyReply) {
  // A body that cannot be read fails before the request's language is in force.
  return inLanguage(languageOf(request), () => answered(error, request, reply))
}

function answered(error: FastifyError | Refusal, request: FastifyRequest, reply: FastifyReply) {
  if (error instanceof Refusal && error.retryAfterSeconds !== undefined)
    reply.header("retry-after", String(error.retryAfterSeconds))
  const status = error.statusCode ?? 500
  if (error instanceof Refusal)
    return sendProblem(reply, status, { title: say(TITLES[error.statusCode]), problems: [...error.problems] })
  if (status >= 400 && status < 500) {
    const title =
      status in TITLES ? say(TITLES[status as RefusalStatus]) : (STATUS_CODES[status] ?? "Refused")
    const problem = { path: "", value: null, allowed: "", message: ofFastify(error) }
    return sendProblem(reply, status, { title, problems: [problem] })
  }
  // What failed is ours to know: the sender gets a number to quote, the log has the rest under the same number.
  const reference = crypto.randomUUID()
  request.log.error({ reference, err: error }, "request failed")
  return sendProblem(reply, 500, {
    title: say("Something failed on our side"),
    problems: [{ path: "", value: null, allowed: "", message: say("reference {reference}", { reference }) }],
  })
}

/** What Fastify says itself is English, but for what a page can bring about: a body over the limit. */
const ofFastify = ({ code, message }: FastifyError): string =>
  code === "FST_ERR_CTP_BODY_TOO_LARGE" ? say("Request body is too large") : message

function sendProblem(reply: FastifyReply, status: number, answer: ProblemAnswer) {
  if (reply.request.url.startsWith("/fhir")) return sendOutcome(reply, status, answer)
  return reply.code(status).type("application/problem+json").send(answer)
}
