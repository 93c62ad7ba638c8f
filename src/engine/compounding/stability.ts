import { capitalised, inDigits } from "../words.js"

/** One study of how long diluted drops keep, as the evidence has it (treatments/compounding.json, stability). */
export interface StabilityRow {
  readonly study: string
  readonly strengths_percent?: readonly number[]
  readonly diluent: string
  readonly storage?: string
  readonly months?: number
  readonly result: string
  readonly how_obtained: string
}

/** Days that opened bottles were followed in the studies read (evidence: sriin2022, abstract). */
export const OPENED_STUDIED_DAYS = 30

/** The studies, a line each, those at the strength ordered first; each says the strengths it is of. */
export function stabilityLines(
  rows: readonly StabilityRow[],
  concentrationPercent: number,
): readonly string[] {
  const isOfStrength = ({ strengths_percent = [] }: StabilityRow) =>
    strengths_percent.includes(concentrationPercent)
  const ordered = [...rows.filter(isOfStrength), ...rows.filter((row) => !isOfStrength(row))]
  const lines = ordered.map((row) => {
    const { study, strengths_percent = [], diluent, storage, months, result, how_obtained } = row
    const where = [diluent, storage, months === undefined ? "" : `${months} months`]
    const strengths = strengths_percent.length > 0 ? `${strengths_percent.map(inDigits).join(", ")} %; ` : ""
    return `${capitalised(where.filter((part) => part).join("; "))}: ${result} (${strengths}${study}, ${how_obtained}).`
  })
  return rows.length === 0 || rows.some(isOfStrength)
    ? lines
    : [`None of the studies read is of ${inDigits(concentrationPercent)} %.`, ...lines]
}
