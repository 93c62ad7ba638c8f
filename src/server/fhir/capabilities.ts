import type { CapabilityStatement } from "fhir/r4.js"
import { SERVED_TYPES, searchParameters } from "./served-types.js"

/** What this server can be asked, as every FHIR client asks first. The day is that of the shape, not of the request. */
export function capabilities(address: string): CapabilityStatement {
  return {
    resourceType: "CapabilityStatement",
    status: "active",
    date: "2026-11-26",
    kind: "instance",
    software: { name: "Lengthwise" },
    implementation: { description: "Courses of myopia control of one practice, to be read", url: address },
    fhirVersion: "4.0.1",
    format: ["application/fhir+json"],
    rest: [
      {
        mode: "server",
        documentation:
          "Read only. Answers carry what the practice has recorded; docs/fhir.md says which code stands for what.",
        security: { description: "A token with the scope fhir, as a bearer token (RFC 6750)." },
        resource: SERVED_TYPES.map((type) => ({
          type,
          interaction: [{ code: "read" as const }, { code: "search-type" as const }],
          searchParam: [
            ...searchParameters(type),
            {
              name: "_count",
              type: "number" as const,
              documentation: "Resources a page, 1 to 200; 50 when absent.",
            },
          ],
          ...(type === "Patient"
            ? {
                operation: [
                  {
                    name: "everything",
                    definition: "http://hl7.org/fhir/OperationDefinition/Patient-everything",
                  },
                ],
              }
            : {}),
        })),
        operation: [
          {
            name: "export",
            definition: "http://hl7.org/fhir/uv/bulkdata/OperationDefinition/export",
            documentation: "The whole practice as NDJSON, made in the background.",
          },
        ],
      },
    ],
  }
}
