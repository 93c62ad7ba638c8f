import type { Bundle, FhirResource } from "fhir/r4.js"
import type { Course } from "../../engine/course.js"
import type { FhirContext } from "./context.js"
import { r4Resources } from "./r4/resources.js"

export type { Bundle, FhirResource } from "fhir/r4.js"

/**
 * A child's whole course as FHIR R4 resources, the Patient first. Logical ids are made of the child's id and of what a
 * resource is about, so that the same course gives the same ids again.
 *
 * @example
 * fhirResources(course, { identity: { name: "Kim Sample" } })[0]?.resourceType // => "Patient"
 */
export function fhirResources(course: Course, about: FhirContext = {}): readonly FhirResource[] {
  return r4Resources(course, about)
}

/**
 * The same as one transaction. Every entry is a PUT by logical id, so that sending it twice changes nothing.
 *
 * @example
 * fhirBundle(course).entry?.[0]?.request?.method // => "PUT"
 */
export function fhirBundle(course: Course, about: FhirContext = {}): Bundle {
  return {
    resourceType: "Bundle",
    type: "transaction",
    entry: fhirResources(course, about).map((resource) => {
      const address = `${resource.resourceType}/${resource.id}`
      return { fullUrl: `urn:lengthwise:fhir:${address}`, resource, request: { method: "PUT", url: address } }
    }),
  }
}

/** One resource a line, the form of bulk data. */
export function fhirLines(resources: readonly FhirResource[]): string {
  return resources.map((resource) => `${JSON.stringify(resource)}\n`).join("")
}
