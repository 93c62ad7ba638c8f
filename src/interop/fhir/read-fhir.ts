import { createHash } from "node:crypto"
import type { CalendarDate } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import type { ReadFile } from "../intake/fragment.js"
import { courseFromFhir } from "./course-from-fhir.js"
import { jsonOfText } from "./json-of-text.js"

/**
 * Reads a FHIR R4 Bundle, a single resource, or a resource a line (NDJSON). Nothing is fetched: what lies outside the
 * file stays outside.
 */
export async function readFhir({
  file,
  text,
  today,
}: {
  readonly file: string
  readonly text: string
  readonly today?: CalendarDate | undefined
}): Promise<ReadFile> {
  const parsed = jsonOfText(text)
  if ("why" in parsed) return { file, fragments: [], skipped: [{ file, why: parsed.why }] }
  const id = createHash("sha256").update(text).digest("hex")
  const read = courseFromFhir(parsed.value, { file, id, today })
  if (read.fragments.length > 0 || read.skipped.length > 0) return read
  return { ...read, skipped: [{ file, why: say("It holds nothing of a child.") }] }
}
