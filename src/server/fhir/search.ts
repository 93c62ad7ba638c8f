import { dayNumberOrNull } from "../../engine/calendar.js"
import { FhirFault } from "./fhir-fault.js"
import { type ServedType, searchParameters } from "./served-types.js"

const USUAL_COUNT = 50
const LARGEST_COUNT = 200

/** A search as it was asked, every part of it understood. */
export interface Search {
  readonly count: number
  /** Where the page begins; the first page when absent. */
  readonly from: Place | null
  readonly values: Readonly<Record<string, string>>
}

/** The next child of a page, and how many of its resources stood on the page before. */
export interface Place {
  readonly child: string
  readonly skip: number
}

/**
 * Reads a search. A parameter that is not understood is refused: passed over, it would answer with more than was asked
 * for, and a reader would take it for what was asked.
 *
 * @example
 * searchOf("Observation", { patient: "Patient/1", _count: "10" }) // => { count: 10, from: null, values: { patient: "1" } }
 */
export function searchOf(type: ServedType, query: Readonly<Record<string, unknown>>): Search {
  const known = searchParameters(type).map(({ name }) => name)
  const values: Record<string, string> = {}
  for (const [name, value] of Object.entries(query)) {
    if (name === "_count" || name === "_page" || name === "_format") continue
    const wanted =
      name === "subject" || name === "subject:Patient" || name === "patient:Patient" ? "patient" : name
    if (!known.includes(wanted))
      throw new FhirFault(
        400,
        "not-supported",
        `${type} is not searched by ${name.slice(0, 60)}; it is searched by ${known.join(", ")}`,
      )
    if (typeof value !== "string" || value === "")
      throw new FhirFault(400, "invalid", `${wanted} must stand once and have a value`)
    values[wanted] = wanted === "patient" ? value.replace(/^(.*\/)?Patient\//, "") : value
  }
  return { count: countOf(query._count), from: placeOf(query._page), values }
}

function countOf(value: unknown): number {
  if (value === undefined) return USUAL_COUNT
  const count = Number(value)
  if (Number.isInteger(count) && count >= 1 && count <= LARGEST_COUNT) return count
  throw new FhirFault(400, "invalid", `_count must be a whole number from 1 to ${LARGEST_COUNT}`)
}

function placeOf(value: unknown): Place | null {
  if (value === undefined) return null
  const found = /^([A-Za-z0-9\-.]{1,64})~(\d{1,9})$/.exec(String(value))
  if (!found) throw new FhirFault(400, "invalid", "_page must be taken from the link to the next page")
  return { child: found[1] ?? "", skip: Number(found[2]) }
}

export const pageText = ({ child, skip }: Place): string => `${child}~${skip}`

const COMPARISONS: Readonly<Record<string, (day: string, asked: string) => boolean>> = {
  eq: (day, asked) => day === asked,
  ge: (day, asked) => day >= asked,
  gt: (day, asked) => day > asked,
  le: (day, asked) => day <= asked,
  lt: (day, asked) => day < asked,
}

/** Whether a day is one that a search asks for, such as `ge2026-01-01`. */
export function dayIsAsked(day: string | undefined, asked: string): boolean {
  const [, prefix = "eq", date = ""] = /^(eq|ge|gt|le|lt)?(\d{4}-\d{2}-\d{2})$/.exec(asked) ?? []
  const compare = COMPARISONS[prefix]
  if (!compare || dayNumberOrNull(date) === null)
    throw new FhirFault(
      400,
      "invalid",
      `a day must be written YYYY-MM-DD, with eq, ge, gt, le or lt before it; it is ${asked.slice(0, 40)}`,
    )
  return day !== undefined && compare(day.slice(0, 10), date)
}
