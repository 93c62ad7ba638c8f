import type { Provenance } from "../../evidence/types.js"
import { dayNumberOrNull } from "../calendar.js"
import type { Problem } from "../problem.js"

interface Rule {
  readonly allowed: string
  readonly holds: (value: unknown) => boolean
}

const isText = (value: unknown): value is string => typeof value === "string" && value.trim() !== ""
const text: Rule = { allowed: "a text that is not empty", holds: isText }
const orNull = ({ allowed, holds }: Rule): Rule => ({
  allowed: `${allowed}, or null`,
  holds: (value) => value === null || holds(value),
})

// A record over the keys of the type, so that a key added there and forgotten here is a compile error.
const RULES: Readonly<Record<keyof Provenance, Rule>> = {
  id: {
    allowed: "small letters, digits and hyphens, such as wuhan2022-al",
    holds: (value) => isText(value) && /^[a-z0-9][a-z0-9-]*$/.test(value),
  },
  title: text,
  authors: text,
  year: orNull({
    allowed: "a whole year from 1900 to 2100",
    holds: (value) => Number.isInteger(value) && Number(value) >= 1900 && Number(value) <= 2100,
  }),
  doi: orNull(text),
  where: text,
  obtained: text,
  population: text,
  n: text,
  ageRange: text,
  device: text,
  units: {
    allowed: 'UCUM codes with mm for the lengths, such as "a; mm"',
    holds: (value) => isText(value) && value.split(";").some((unit) => unit.trim() === "mm"),
  },
  licence: text,
  transcribedBy: text,
  checkedBy: orNull(text),
  checkedOn: orNull({
    allowed: "a date such as 2026-03-31",
    holds: (value) => isText(value) && dayNumberOrNull(value) !== null,
  }),
  sha256: {
    allowed: "the SHA-256 of the file, 64 hexadecimal digits",
    holds: (value) => isText(value) && /^[0-9a-f]{64}$/i.test(value),
  },
  supersedes: orNull(text),
  notes: { allowed: "a text, which may be empty", holds: (value) => typeof value === "string" },
}

/** Every key of a provenance that is missing or not as it must be. */
export function provenanceProblems(provenance: Readonly<Record<string, unknown>>): readonly Problem[] {
  return Object.entries(RULES)
    .filter(([key, rule]) => !rule.holds(provenance[key]))
    .map(([key, { allowed }]) => {
      const value = provenance[key] ?? null
      const found = key in provenance ? `not ${JSON.stringify(value)}` : "and is missing"
      const path = `provenance.${key}`
      return { path, value, allowed, message: `${path} must be ${allowed}, ${found}` }
    })
}
