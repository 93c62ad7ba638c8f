import { createHash } from "node:crypto"
import type { Course } from "../../engine/course.js"
import type { FhirContext } from "./context.js"

/** Logical ids: made of what a resource is about, so that the same course gives the same ids on any day. */

const VALID = /^[A-Za-z0-9\-.]{1,64}$/
const LONGEST_KEY = 24

const digest = (text: string): string => createHash("sha256").update(text).digest("hex").slice(0, 16)

/**
 * The Patient's id: the record's, else the course file's, else the chart number. A child with none of them is told from
 * others by its birth, name and first visit.
 */
export function patientId({ child, visits }: Course, { id, identity }: FhirContext): string {
  const known = id ?? child.id ?? identity?.number
  if (known !== undefined && known !== "") return VALID.test(known) ? known : `child-${digest(known)}`
  const first = visits.toSorted((a, b) => (a.date < b.date ? -1 : 1))[0]
  return `child-${digest(JSON.stringify([child.born, child.sex, identity?.name ?? null, first ?? null]))}`
}

/** What the ids of a child's resources begin with. */
export const patientKey = (patient: string): string =>
  patient.length <= LONGEST_KEY ? patient : digest(patient)

/** Makes the ids of one child's resources; what would be the same id twice is counted. */
export type NewId = (...parts: readonly (string | number | undefined)[]) => string

export function idsOf(patient: string): NewId {
  const key = patientKey(patient)
  const used = new Map<string, number>()
  return (...parts) => {
    const base = part(parts.filter((each) => each !== undefined && each !== "").join("-"))
    const count = (used.get(base) ?? 0) + 1
    used.set(base, count)
    return `${key}-${base}${count === 1 ? "" : `.${count}`}`
  }
}

/** An id for what is no child's own, such as an instrument. */
export const sharedId = (kind: string, name: string): string => `${kind}-${part(name)}`

function part(text: string): string {
  return VALID.test(text) && text.length <= 32
    ? text
    : `${text.replace(/[^A-Za-z0-9-].*$/s, "").slice(0, 12)}-${digest(text)}`
}
