import type { Scope } from "../../engine/access/scopes.js"

/**
 * What a route asks of a token: one of its scopes, or `session`: it is for a person who is logged in, and no token opens
 * it. `none` is open to everyone.
 */
export type RouteScope = Scope | "session" | "none"

interface Line {
  readonly method: string
  readonly url: string
  /** Where the area's rule does not fit. */
  readonly scope?: RouteScope
}

/** The rule of each area of the API by the beginning of its path, the first that fits; what reads and what changes. */
const AREAS: readonly (readonly [path: string, reads: RouteScope, changes: RouteScope])[] = [
  ["/api/openapi.json", "none", "session"],
  ["/api/health", "none", "session"],
  ["/api/shared", "none", "none"],
  // What opens doors stays with people.
  ["/api/session", "session", "session"],
  ["/api/password", "session", "session"],
  ["/api/people", "session", "session"],
  ["/api/tokens", "session", "session"],
  ["/api/webhooks", "session", "session"],
  ["/api/children/:id/links", "session", "session"],
  // So does what speaks to families, and how the practice works.
  ["/api/messages", "session", "session"],
  ["/api/templates", "session", "session"],
  ["/api/instruments", "session", "session"],
  ["/api/rules", "read", "session"],
  ["/api/practice", "read", "session"],
  // Whole practices at once.
  ["/api/leave", "export", "export"],
  ["/api/archives", "export", "export"],
  ["/api/archive", "export", "export"],
  ["/api/exports", "export", "export"],
  ["/api/export", "export", "export"],
  ["/api/research", "export", "export"],
  ["/api/files", "files", "files"],
  ["/fhir", "fhir", "session"],
  // Papers are made from what is recorded; asking for many at once is a POST that records nothing.
  ["/api/documents", "read", "read"],
  ["/api/children", "read", "write"],
  ["/api/today", "read", "write"],
  ["/api/lots", "read", "write"],
  ["/api/adverse-events", "read", "write"],
  ["/api/inbox", "read", "write"],
  ["/api/imports", "read", "write"],
  ["/api/read", "read", "read"],
]

/**
 * What a route asks of a token. Null for an area nobody has thought about yet: closed to tokens, and a test says so.
 *
 * @example
 * ruledScope({ method: "GET", url: "/api/children/:id" }) // => "read"
 */
export function ruledScope({ method, url, scope }: Line): RouteScope | null {
  if (scope !== undefined) return scope
  const area = AREAS.find(([path]) => url === path || url.startsWith(`${path}/`))
  if (!area) return null
  return method === "GET" || method === "HEAD" ? area[1] : area[2]
}

export const scopeOf = (line: Line): RouteScope => ruledScope(line) ?? "session"
