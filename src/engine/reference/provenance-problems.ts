import type { Provenance } from "../../evidence/types.js"
import { dayNumberOrNull } from "../calendar.js"
import type { Problem } from "../problem.js"
import { msg, say } from "../say.js"

interface Rule {
  /** Said where it stands. */
  readonly allowed: string
  readonly orNull?: true
  readonly holds: (value: unknown) => boolean
}

const isText = (value: unknown): value is string => typeof value === "string" && value.trim() !== ""
const text: Rule = { allowed: msg("a text that is not empty"), holds: isText }
const orNull = ({ allowed, holds }: Rule): Rule => ({
  allowed,
  orNull: true,
  holds: (value) => value === null || holds(value),
})

// A record over the keys of the type, so that a key added there and forgotten here is a compile error.
const RULES: Readonly<Record<keyof Provenance, Rule>> = {
  id: {
    allowed: msg("small letters, digits and hyphens, such as wuhan2022-al"),
    holds: (value) => isText(value) && /^[a-z0-9][a-z0-9-]*$/.test(value),
  },
  title: text,
  authors: text,
  year: orNull({
    allowed: msg("a whole year from 1900 to 2100"),
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
    allowed: msg('UCUM codes with mm for the lengths, such as "a; mm"'),
    holds: (value) => isText(value) && value.split(";").some((unit) => unit.trim() === "mm"),
  },
  licence: text,
  transcribedBy: text,
  checkedBy: orNull(text),
  checkedOn: orNull({
    allowed: msg("a date such as 2026-03-31"),
    holds: (value) => isText(value) && dayNumberOrNull(value) !== null,
  }),
  sha256: {
    allowed: msg("the SHA-256 of the file, 64 hexadecimal digits"),
    holds: (value) => isText(value) && /^[0-9a-f]{64}$/i.test(value),
  },
  supersedes: orNull(text),
  notes: { allowed: msg("a text, which may be empty"), holds: (value) => typeof value === "string" },
}

/** Every key of a provenance that is missing or not as it must be. */
export function provenanceProblems(provenance: Readonly<Record<string, unknown>>): readonly Problem[] {
  return Object.entries(RULES)
    .filter(([key, rule]) => !rule.holds(provenance[key]))
    .map(([key, rule]) => {
      const value = provenance[key] ?? null
      const path = `provenance.${key}`
      const words = say(rule.allowed)
      const allowed = rule.orNull ? say("{allowed}, or null", { allowed: words }) : words
      const message =
        key in provenance
          ? say("{path} must be {allowed}, not {value}", { path, allowed, value: JSON.stringify(value) })
          : say("{path} must be {allowed}, and is missing", { path, allowed })
      return { path, value, allowed, message }
    })
}
