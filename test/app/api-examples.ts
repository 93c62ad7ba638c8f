import type { LightMyRequestResponse } from "fastify"
import { api } from "../../src/server/contract/api.js"
import type { ApiExample } from "../../src/server/open-api/with-examples.js"
import { type Answers, EXAMPLE_CALLS, type ExampleCall } from "./example-calls.js"
import { testApp } from "./test-app.js"

interface Line {
  readonly method: string
  readonly url: string
  readonly answer?: unknown
}

const LINES = Object.entries<Line>(api)

export interface MadeExamples {
  readonly examples: ReadonlyMap<string, ApiExample>
  /** Lines nobody wrote a call for, and calls that were refused with why. */
  readonly missing: readonly string[]
}

/** Asks the whole application every line of the contract once and keeps small examples of what it answered. */
export async function makeExamples(): Promise<MadeExamples> {
  const t = await testApp()
  await t.logIn()
  const seen: Record<string, unknown> = {}
  const examples = new Map<string, ApiExample>()
  const missing: string[] = []
  const shown = new Set<unknown>()
  const stable = steadily()
  try {
    const body = { name: "", born: "2017-02-30", sex: "female" }
    const refused = await t.ask("POST", "/api/children", { body })
    examples.set("refused", { status: refused.statusCode, answer: refused.json() })
    for (const [name, line] of ordered()) {
      const call = await callOf(name, line, () => EXAMPLE_CALLS[name]?.(seen as Answers, t)).catch(String)
      if (call === null || typeof call === "string") {
        missing.push(call === null ? name : `${name}: ${call}`)
        continue
      }
      const answered = await t.app.inject(requestOf(line, call, await cookie(t)))
      if (call.isAskedOnly) {
        const { params, query, body } = call
        const asked = JSON.parse(JSON.stringify({ params, query, body }))
        examples.set(name, stable({ ...asked, status: 0 }) as ApiExample)
        continue
      }
      if (answered.statusCode >= 400) {
        missing.push(`${name}: ${answered.statusCode} ${answered.body.slice(0, 300)}`)
        continue
      }
      if (isJson(answered)) seen[name] = answered.json()
      const isShown = line.answer !== undefined && shown.has(line.answer)
      shown.add(line.answer)
      examples.set(name, stable(exampleOf(call, answered, isShown)) as ApiExample)
    }
  } finally {
    await t.close()
  }
  return { examples, missing }
}

/** Lines with a call in the order of the calls; others that read without parameters before the session ends. */
function ordered(): readonly (readonly [string, Line])[] {
  const lines = new Map(LINES)
  const written = Object.keys(EXAMPLE_CALLS).flatMap((name) => {
    const line = lines.get(name)
    return line ? [[name, line] as const] : []
  })
  const others = LINES.filter(([name]) => !Object.hasOwn(EXAMPLE_CALLS, name))
  const last = written.findIndex(([name]) => name === "changePassword")
  return [...written.slice(0, last), ...others, ...written.slice(last)]
}

async function callOf(
  name: string,
  { method, url }: Line,
  ask: () => ExampleCall | Promise<ExampleCall> | undefined,
): Promise<ExampleCall | null> {
  if (Object.hasOwn(EXAMPLE_CALLS, name)) return (await ask()) ?? null
  return method === "GET" && !url.includes(":") ? {} : null
}

let session = ""
async function cookie(t: Awaited<ReturnType<typeof testApp>>): Promise<string> {
  const person = (await t.record.people())[0]?.id ?? ""
  session = await t.record.openSession({ person, nowMs: Date.parse("2025-11-25T09:00:00Z") })
  return `lengthwise-session=${session}`
}

function requestOf({ method, url }: Line, { params = {}, query, body, headers }: ExampleCall, sent: string) {
  const path = url.replace(/:(\w+)/g, (_, name: string) => encodeURIComponent(params[name] ?? ""))
  return {
    method: method as "GET" | "POST" | "DELETE",
    url: path,
    ...(query ? { query } : {}),
    headers: { cookie: sent, ...headers },
    ...(body === undefined ? {} : { payload: body as object }),
  }
}

const isJson = ({ headers }: LightMyRequestResponse): boolean =>
  /^application\/([a-z]+\+)?json/.test(String(headers["content-type"]))

function exampleOf(call: ExampleCall, answered: LightMyRequestResponse, isShown: boolean): ApiExample {
  const { params, query, body } = call
  const type = String(answered.headers["content-type"] ?? "").split(";")[0]
  const isText = type === "text/csv" || type === "text/calendar"
  const answer = isJson(answered) ? trimmed(answered.json()) : isText ? trimmed(answered.body) : undefined
  return {
    ...(query ? { query } : {}),
    ...(params ? { params } : {}),
    ...(body === undefined || Buffer.isBuffer(body) ? {} : { body }),
    status: answered.statusCode,
    ...(type ? { type } : {}),
    ...(answer === undefined || isShown ? {} : { answer }),
  }
}

const MOST_ITEMS = 1
const MOST_CHARACTERS = 300

/** Lists and long texts cut short: an example shows the shape. */
function trimmed(value: unknown): unknown {
  if (typeof value === "string")
    return value.length > MOST_CHARACTERS ? `${value.slice(0, MOST_CHARACTERS)} …` : value
  if (Array.isArray(value)) {
    // A short list of figures is a tuple; cut, it would no longer be one.
    const isFigures = value.length <= 4 && value.every((each) => typeof each === "number")
    return isFigures ? value : value.slice(0, MOST_ITEMS).map(trimmed)
  }
  if (typeof value !== "object" || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, trimmed(each)]))
}

const SECRET_NAMES = new Set(["secret", "password", "current", "next"])
const RANDOM =
  /[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}|\b[0-9a-f]{64}\b|\b[\w-]{22}\.[\w-]{22}\b|\b[\w-]{22}\b/g

/** Replaces what is random or secret, the same by the same, so that two runs give one text. */
function steadily() {
  const known = new Map<string, string>()
  const steady = (text: string): string => {
    const found = known.get(text)
    if (found !== undefined) return found
    const number = known.size + 1
    const made = /^[0-9a-f-]{36}$/.test(text)
      ? `00000000-0000-4000-8000-${String(number).padStart(12, "0")}`
      : /^[0-9a-f]{64}$/.test(text)
        ? number.toString(16).padStart(64, "0")
        : `example-${number}`.padEnd(text.length, "x")
    known.set(text, made)
    return made
  }
  const replaced = (value: unknown, name: string): unknown => {
    if (typeof value === "string") {
      if (SECRET_NAMES.has(name)) return `(${name})`
      if (name === "ending") return "7Qx2"
      return value.replace(RANDOM, (text) => (/[0-9A-Z]/.test(text) ? steady(text) : text))
    }
    if (Array.isArray(value)) return value.map((each) => replaced(each, name))
    if (typeof value !== "object" || value === null) return value
    return Object.fromEntries(
      Object.entries(value).map(([key, each]) => [steadyKey(key), replaced(each, key)]),
    )
  }
  const steadyKey = (key: string) => key.replace(RANDOM, (text) => (/\d/.test(text) ? steady(text) : text))
  return (value: unknown) => replaced(value, "")
}
