import { api } from "../contract/api.js"
import { type RouteScope, scopeOf } from "../contract/scopes.js"
import { summaryOf } from "../contract/summaries.js"

interface Line {
  readonly method: string
  readonly url: string
  readonly scope?: RouteScope
}

const LINES = Object.entries<Line>(api).map(([name, line]) => ({ name, ...line, scope: scopeOf(line) }))

const SCOPE_NOTES: Readonly<Record<RouteScope, string>> = {
  none: "Open to everyone.",
  session: "For a person who is logged in only; no token opens it.",
  read: "A token needs the scope `read`.",
  write: "A token needs the scope `write`.",
  fhir: "A token needs the scope `fhir`.",
  export: "A token needs the scope `export`.",
  files: "A token needs the scope `files`.",
}

/** Answered without a log-in though their area is one of sessions. */
const OPEN = new Set(["health", "logIn", "openShared", "sharedCalendar", "sharedPdf"])

/** What is said of a line of the contract beside its schemas; null for a route that is no line of it. */
export function describedLine({ method, url }: { readonly method: string; readonly url: string }) {
  const line = LINES.find((each) => each.method === method && each.url === url)
  if (!line) return null
  const { name } = line
  const scope = OPEN.has(name) ? "none" : line.scope
  const [, area = "other"] = url.split("/").filter(Boolean)
  return {
    operationId: name,
    summary: summaryOf(name),
    description: SCOPE_NOTES[scope],
    tags: [area],
    security: securityOf(scope),
  }
}

function securityOf(scope: RouteScope): readonly Readonly<Record<string, readonly string[]>>[] {
  if (scope === "none") return []
  return scope === "session" ? [{ session: [] }] : [{ session: [] }, { token: [scope] }]
}

export const SECURITY_SCHEMES = {
  session: {
    type: "apiKey",
    in: "cookie",
    name: "lengthwise-session",
    description: "The cookie that POST /api/session sets, for the pages of this server.",
  },
  token: {
    type: "http",
    scheme: "bearer",
    description:
      "A token made in Settings, Connections: `Authorization: Bearer lw_...`. It is taken from no cookie and no query. A missing scope is answered with 403 and named in WWW-Authenticate (RFC 6750).",
  },
} as const

export const REFUSED_NOTE =
  "Refused, as problem+json: 400 it cannot be read, 401 no log-in and no token, 403 not allowed from here or a scope is missing, 404 no such thing, 409 it contradicts what is recorded, 413 too large, 415 another type than JSON, 422 something in it has to be put right (each with its path), 429 too often (see Retry-After)."
