import type { Problem } from "../../engine/problem.js"

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: "its folder is not there",
  EISDIR: "it is a folder",
  ENOTDIR: "it is a file, not a folder",
  EACCES: "it may not be written",
  EROFS: "it may not be written",
  ENOSPC: "there is no room left",
}

/** What hindered a long export or import, as a fault of the input with words for whoever started it. */
export function faultOf(
  cause: unknown,
  { path, value }: { readonly path: string; readonly value: string },
): Problem {
  const { code } = (cause ?? {}) as { readonly code?: unknown }
  const reason = REASONS[String(code)] ?? (cause instanceof Error ? cause.message : String(cause))
  return { path, value, allowed: "", message: `${value}: ${reason}.` }
}
