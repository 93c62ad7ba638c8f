import type { Reference, ReferenceSex } from "../../evidence/types.js"
import type { Sex } from "../course.js"
import { monotoneCubic } from "../numeric/monotone-cubic.js"
import { listed, say, withDecimalSign } from "../say.js"

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
  if (ages.length === 0) {
    return say("the reference {id} has no rows for a {sex, select, female {female} other {male}} child", {
      id: reference.id,
      sex,
    })
  }
  const age = shownAge(ageYears)
  if (reference.shape === "centiles" && reference.agesAreCells) {
    if (ages.includes(Math.floor(ageYears))) return null
    return say(
      "the reference {id} has cells for children of {ages} completed years only; age {age} lies outside",
      { id: reference.id, ages: listed(ages.map(String)), age },
    )
  }
  const youngest = Math.max(reference.youngestAgeYears, ages[0]!)
  const oldest = Math.min(reference.oldestAgeYears, ages.at(-1)!)
  if (ageYears >= youngest && ageYears <= oldest) return null
  if (youngest === oldest) {
    return say(
      "the reference {id} covers age {only} only for a {sex, select, female {female} other {male}} child; age {age} lies outside",
      { id: reference.id, only: youngest, sex, age },
    )
  }
  return say(
    "the reference {id} covers {youngest} to {oldest} years for a {sex, select, female {female} other {male}} child; age {age} lies outside",
    { id: reference.id, youngest, oldest, sex, age },
  )
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
  return withDecimalSign(Number.isFinite(ageYears) ? String(Number(ageYears.toFixed(2))) : String(ageYears))
}
