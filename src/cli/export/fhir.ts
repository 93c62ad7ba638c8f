import { assess } from "../../engine/assess.js"
import type { CalendarDate, Course } from "../../engine/course.js"
import { noRules } from "../../engine/practice-rules.js"
import { protocolFor } from "../../engine/protocol/choose-protocol.js"
import { evidence } from "../../evidence/index.js"
import type { FhirContext } from "../../interop/fhir/context.js"
import { fhirBundle, fhirLines, fhirResources } from "../../interop/fhir/write-fhir.js"

/**
 * A course as the text of a file: a transaction Bundle, or one resource a line. With a day the protocol, what is owed
 * and what the figures say stand beside the course.
 *
 * @example
 * exportFhir({ course, format: "ndjson" }).split("\n")
 */
export function exportFhir({
  course,
  format,
  asOf,
  about = {},
}: {
  readonly course: Course
  readonly format: "fhir" | "ndjson"
  readonly asOf?: CalendarDate | undefined
  readonly about?: FhirContext | undefined
}): string {
  const whole = { ...(asOf === undefined ? {} : around(course, asOf)), ...about }
  if (format === "ndjson") return fhirLines(fhirResources(course, whole))
  return `${JSON.stringify(fhirBundle(course, whole), null, 2)}\n`
}

function around(course: Course, asOf: CalendarDate): FhirContext {
  const protocol = protocolFor({ course, today: asOf, rules: noRules })
  return { asOf, protocol, assessment: assess({ course, asOf, evidence, protocol }) }
}
