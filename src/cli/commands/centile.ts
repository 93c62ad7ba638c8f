import type { Position } from "../../engine/assessment.js"
import type { Ancestry, Sex } from "../../engine/course.js"
import { chooseReference } from "../../engine/reference/choose-reference.js"
import { GRADE_WORDS } from "../../engine/reference/grade-words.js"
import { position } from "../../engine/reference/position.js"
import { positionWhy } from "../../engine/why/position.js"
import { centileInWords, fixed, inDigits } from "../../engine/words.js"
import { references } from "../../evidence/index.js"
import { limitInWords, limits } from "../../interop/course/limits.js"
import { problem } from "../../interop/course/problem.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"
import { sourceRegister, whyText } from "../why-text.js"
import { paragraph } from "../words.js"

export interface CentileArguments {
  readonly al: number
  readonly age: number
  readonly sex: Sex
  readonly ancestry?: Ancestry | undefined
  readonly reference?: string | undefined
  readonly json?: boolean | undefined
  readonly why?: boolean | undefined
}

/** Where a length stands among children of that age and sex. A refusal is an answer. */
export async function run(args: CentileArguments, io: Io): Promise<ExitCode> {
  const { json = false } = args
  const problems = faults(args)
  if (problems.length > 0) return toldProblems(problems, { io, json })
  const chosen = referenceOf(args)
  const placed = placedOn(chosen, args)
  const { al: mm, age: ageYears, sex, ancestry } = args
  const why = args.why
    ? positionWhy({
        placed: [{ what: "this length", mm, ageYears, position: placed }],
        child: { sex, ancestry },
        references,
        sourceOf: await sourceRegister(),
      })
    : undefined
  if (json) return toldJson({ ...placed, ...(why && { why }) }, io)
  io.out(positionText(placed, args))
  if (why) io.out(whyText(why))
  return 0
}

const lengthReferences = references.filter(({ measure }) => measure === "axial-length")

function faults({ al, age, reference }: CentileArguments) {
  const { low, high } = limits.axialLengthMm
  const ids = lengthReferences.map(({ id }) => id)
  return [
    ...(al >= low && al <= high
      ? []
      : [problem({ path: "--al", value: al, allowed: limitInWords(limits.axialLengthMm) })]),
    ...(age >= 0 && age <= 120
      ? []
      : [problem({ path: "--age", value: age, allowed: "a number from 0 to 120 years" })]),
    ...(reference === undefined || ids.includes(reference)
      ? []
      : [problem({ path: "--reference", value: reference, allowed: `one of ${ids.join(", ")}` })]),
  ]
}

/**
 * The reference named, or the one that fits the ancestry. A bare question names no child: it gets the only population
 * that length tables at hand are of, and the answer says so.
 */
function referenceOf({ reference, sex, age, ancestry = "european" }: CentileArguments) {
  const named = lengthReferences.find(({ id }) => id === reference)
  if (named !== undefined) return { reference: named }
  return chooseReference({ references, sex, ageYears: age, ancestry, measure: "axial-length" })
}

function placedOn(chosen: ReturnType<typeof referenceOf>, args: CentileArguments): Position {
  if ("refused" in chosen) return chosen
  const { al: value, age: ageYears, sex } = args
  const placed = position({ measure: "axial-length", value, ageYears, sex, reference: chosen.reference })
  if ("refused" in placed || args.ancestry !== undefined || args.reference !== undefined) return placed
  const caution = "no ancestry was given: European children are the ones at hand"
  return { ...placed, note: placed.note === undefined ? caution : `${placed.note}; ${caution}` }
}

function positionText(placed: Position, { al, age, sex }: CentileArguments): string {
  if ("refused" in placed) {
    const ids = lengthReferences.map(({ id, grade }) => `${id} (grade ${grade})`).join(", ")
    return (
      paragraph(`No centile is given: ${placed.refused}.`, 0) +
      paragraph(`References at hand, by --reference: ${ids}.`, 0)
    )
  }
  const child = sex === "female" ? "girls" : "boys"
  const z = placed.z === null ? "" : ` (z ${fixed(placed.z)})`
  const { reference, grade, note, centile } = placed
  const number = typeof centile === "number" ? "centile " : ""
  return paragraph(
    `${inDigits(al)} mm stands at ${number}${centileInWords(centile)} of ${child} of ${inDigits(age)} years${z}, by ${reference}, grade ${grade}: ${note ?? GRADE_WORDS[grade]}.`,
    0,
  )
}
