import type { FastifyReply } from "fastify"
import type { OperationOutcome } from "fhir/r4.js"
import type { Problem } from "../contract/problem.js"

export const FHIR_JSON = "application/fhir+json; charset=utf-8"

/** Kinds of faults by R4's required value set `issue-type`. */
export type IssueType =
  | "invalid"
  | "not-found"
  | "not-supported"
  | "login"
  | "forbidden"
  | "exception"
  | "throttled"

/** A fault as a FHIR client reads it. */
export function outcome(code: IssueType, diagnostics: readonly string[]): OperationOutcome {
  return {
    resourceType: "OperationOutcome",
    issue: diagnostics.map((text) => ({ severity: "error" as const, code, diagnostics: text })),
  }
}

const TYPES: Readonly<Record<number, IssueType>> = {
  401: "login",
  403: "forbidden",
  404: "not-found",
  405: "not-supported",
  406: "not-supported",
  429: "throttled",
}

/** What another part of the server refused, in the form a FHIR client understands. */
export function sendOutcome(
  reply: FastifyReply,
  status: number,
  { title, problems }: { readonly title: string; readonly problems: readonly Problem[] },
) {
  const texts = problems.map(({ message }) => message).filter((text) => text !== "")
  const code = TYPES[status] ?? (status < 500 ? "invalid" : "exception")
  return reply
    .code(status)
    .type(FHIR_JSON)
    .send(JSON.stringify(outcome(code, texts.length > 0 ? texts : [title])))
}
