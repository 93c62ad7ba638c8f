import type { Course } from "../../engine/course.js"
import type { FhirContext } from "../../interop/fhir/context.js"
import { fhirBundle, fhirLines, fhirResources } from "../../interop/fhir/write-fhir.js"

/**
 * A course as the text of a file: a transaction Bundle, or one resource a line.
 *
 * @example
 * exportFhir({ course, format: "ndjson" }).split("\n")
 */
export function exportFhir({
  course,
  format,
  about = {},
}: {
  readonly course: Course
  readonly format: "fhir" | "ndjson"
  readonly about?: FhirContext | undefined
}): string {
  if (format === "ndjson") return fhirLines(fhirResources(course, about))
  return `${JSON.stringify(fhirBundle(course, about), null, 2)}\n`
}
