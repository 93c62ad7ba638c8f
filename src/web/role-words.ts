import { msg, say } from "../engine/say.js"
import type { Role } from "../engine/today/owed.js"

export const ROLE_WORDS: Readonly<Record<Role, string>> = {
  clinician: msg("Clinician"),
  technician: msg("Technician"),
  "front-desk": msg("Front desk"),
}

/** A role as a person has it; one that is not known here as it was given. */
export const roleInWords = (role: string): string =>
  isRole(role) ? say(ROLE_WORDS[role]).toLowerCase() : role

const isRole = (role: string): role is Role => Object.hasOwn(ROLE_WORDS, role)
