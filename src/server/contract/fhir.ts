/** The record as FHIR R4, to be read only. */
export const fhirApi = {} as const
