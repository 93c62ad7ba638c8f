import { decimalSign, say } from "../say.js"
import { capitalised, inDigits } from "../words.js"
import { studyText } from "./stability-texts.js"

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
    const where = [
      studyText(diluent),
      ...(storage === undefined ? [] : [studyText(storage)]),
      ...(months === undefined ? [] : [say("{months, plural, one {# month} other {# months}}", { months })]),
    ]
    const told = {
      where: capitalised(where.join("; ")),
      result: studyText(result),
      study,
      how: studyText(how_obtained),
    }
    if (strengths_percent.length === 0) return say("{where}: {result} ({study}, {how}).", told)
    // A comma between figures that are written with one would make other figures of them.
    const strengths = strengths_percent.map(inDigits).join(decimalSign() === "," ? "; " : ", ")
    return say("{where}: {result} ({strengths} %; {study}, {how}).", { ...told, strengths })
  })
  return rows.length === 0 || rows.some(isOfStrength)
    ? lines
    : [
        say("None of the studies read is of {percent} %.", { percent: inDigits(concentrationPercent) }),
        ...lines,
      ]
}
