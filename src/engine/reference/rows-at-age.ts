import type { Reference, ReferenceSex } from "../../evidence/types.js"
import type { Sex } from "../course.js"
import { monotoneCubic } from "../numeric/monotone-cubic.js"

interface Aged {
  readonly ageYears: number
}

interface ReferenceRow extends Aged {
  readonly sex: ReferenceSex
}

/** The rows for a sex, else those of both sexes together, youngest first; empty when the reference has neither. */
export function rowsForSex<Row extends ReferenceRow>(rows: readonly Row[], sex: Sex): readonly Row[] {
  const own = rows.filter((row) => row.sex === sex)
  const chosen = own.length > 0 ? own : rows.filter((row) => row.sex === "all")
  return chosen.toSorted((a, b) => a.ageYears - b.ageYears)
}

/** Why a reference has no answer for a child of this sex and age, or null when it has one. */
export function outsideReference({
  reference,
  sex,
  ageYears,
}: {
  reference: Reference
  sex: Sex
  ageYears: number
}): string | null {
  const ages = rowsForSex<ReferenceRow>(reference.rows, sex).map((row) => row.ageYears)
  if (ages.length === 0) return `the reference ${reference.id} has no rows for a ${sex} child`
  const asked = `age ${shownAge(ageYears)} lies outside`
  if (reference.shape === "centiles" && reference.agesAreCells) {
    if (ages.includes(Math.floor(ageYears))) return null
    return `the reference ${reference.id} has cells for children of ${listed(ages)} completed years only; ${asked}`
  }
  const youngest = Math.max(reference.youngestAgeYears, ages[0]!)
  const oldest = Math.min(reference.oldestAgeYears, ages.at(-1)!)
  if (ageYears >= youngest && ageYears <= oldest) return null
  const range = youngest === oldest ? `age ${youngest} only` : `${youngest} to ${oldest} years`
  return `the reference ${reference.id} covers ${range} for a ${sex} child; ${asked}`
}

/** A quantity at an age between rows: monotone cubic over all rows given. */
export function cubicAtAge<Row extends Aged>(
  rows: readonly Row[],
  ageYears: number,
  quantity: (row: Row) => number,
): number {
  return monotoneCubic(rows.map((row) => ({ x: row.ageYears, y: quantity(row) })))(ageYears)
}

/** A quantity at an age between rows: straight line between the two neighbours. */
export function lineAtAge<Row extends Aged>(
  rows: readonly Row[],
  ageYears: number,
  quantity: (row: Row) => number,
): number {
  const { before, after } = neighbours(rows, ageYears)
  const [from, to] = [rows[before]!, rows[after]!]
  if (before === after) return quantity(from)
  const share = (ageYears - from.ageYears) / (to.ageYears - from.ageYears)
  return quantity(from) + share * (quantity(to) - quantity(from))
}

/** Places of the rows on both sides of an age within the rows; one row twice when the age is that row's own. */
export function neighbours(rows: readonly Aged[], ageYears: number): { before: number; after: number } {
  const after = rows.findIndex((row) => row.ageYears >= ageYears)
  return { before: rows[after]!.ageYears === ageYears ? after : after - 1, after }
}

/** An age as it is said in a refusal: at most two decimals. */
export function shownAge(ageYears: number): string {
  return Number.isFinite(ageYears) ? String(Number(ageYears.toFixed(2))) : String(ageYears)
}

function listed(ages: readonly number[]): string {
  return ages.length === 1 ? String(ages[0]) : `${ages.slice(0, -1).join(", ")} and ${ages.at(-1)}`
}
