/**
 * The record as FHIR R4, to be read only. It describes itself at /fhir/metadata, as FHIR servers do; so nothing of it
 * stands in the description of the API.
 */
export const fhirApi = {} as const
