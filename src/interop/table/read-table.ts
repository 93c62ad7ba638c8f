import type { TableMapping } from "../../engine/practice-rules.js"
import type { ReadFile } from "../intake/fragment.js"

/** Reads a table by a mapping, or by what its headings say. */
export async function readTable({
  file,
}: {
  readonly file: string
  readonly bytes: Uint8Array
  readonly mapping?: TableMapping | undefined
}): Promise<ReadFile> {
  return { file, fragments: [], skipped: [] }
}
