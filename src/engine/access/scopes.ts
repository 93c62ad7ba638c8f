/** What a token of another program can be made for. */
export const SCOPES = ["read", "write", "fhir", "export", "files"] as const
export type Scope = (typeof SCOPES)[number]
