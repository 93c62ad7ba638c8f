/** Who does a thing that is owed. Apart from what is owed, so that a list of names loads nothing else. */
export const ROLES = ["clinician", "technician", "front-desk"] as const
export type Role = (typeof ROLES)[number]
