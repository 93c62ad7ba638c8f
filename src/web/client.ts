import { language, say } from "../engine/say.js"
import type { Problem, ProblemAnswer } from "../server/contract/problem.js"

/** A refusal of the server: every problem with its path, to be shown at its field. */
export class Refused extends Error {
  constructor(
    readonly status: number,
    readonly title: string,
    readonly problems: readonly Problem[],
  ) {
    super(title)
    this.name = "Refused"
  }
}

/** The server could not be reached, or answered with something that is no answer. */
export class Unreachable extends Error {
  constructor(cause: unknown) {
    super(say("The server cannot be reached. Nothing was saved; what you typed is still here."), { cause })
    this.name = "Unreachable"
  }
}

/** Asks the server and gives its answer as it is: both sides are built from the same contract. */
export async function ask<Answer>(
  method: "GET" | "POST" | "DELETE",
  url: string,
  body?: unknown,
): Promise<Answer> {
  const response = await fetched(url, {
    method,
    credentials: "same-origin",
    headers: {
      "accept-language": language(),
      ...(body === undefined ? {} : { "content-type": "application/json" }),
    },
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  })
  if (response.status === 204) return undefined as Answer
  const answer: unknown = await response.json().catch((cause: unknown) => {
    throw new Unreachable(cause)
  })
  if (response.ok) return answer as Answer
  const { title = say("The server answered {status}", { status: response.status }), problems = [] } =
    (answer ?? {}) as Partial<ProblemAnswer>
  throw new Refused(response.status, title, problems)
}

async function fetched(url: string, request: RequestInit): Promise<Response> {
  try {
    return await fetch(url, request)
  } catch (cause) {
    throw new Unreachable(cause)
  }
}

/** What to say of a failed request as a whole; problems that have a field are shown there instead. */
export function failureInWords(error: unknown): string {
  if (error instanceof Refused) {
    const general = error.problems.filter((problem) => problem.path === "").map((problem) => problem.message)
    return [error.title, ...general].join(". ")
  }
  return error instanceof Error ? error.message : String(error)
}
