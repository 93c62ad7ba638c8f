import type { Position } from "../../engine/assessment.js"
import type { Ancestry, Sex } from "../../engine/course.js"
import { chooseReference } from "../../engine/reference/choose-reference.js"
import { position } from "../../engine/reference/position.js"
import { references } from "../../evidence/index.js"
import type { Reference } from "../../evidence/types.js"
import { limitInWords, limits } from "../../interop/course/limits.js"
import { problem } from "../../interop/course/problem.js"
import { centileInWords } from "../centile-words.js"
import { GRADES } from "../grades.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"
import { tableOf, whyText, withSources } from "../why.js"
import { fixed, inDigits, paragraph } from "../words.js"

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
  const why = args.why
    ? await centileWhy(args, "reference" in chosen ? chosen.reference : undefined)
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
  const { reference, grade, note } = placed
  return paragraph(
    `${inDigits(al)} mm stands at ${centileInWords(placed.centile)} of ${child} of ${inDigits(age)} years${z}, by ${reference}, grade ${grade}: ${note ?? GRADES[grade]}.`,
    0,
  )
}

const centileWhy = ({ al, age, sex, ancestry }: CentileArguments, reference: Reference | undefined) =>
  withSources({
    title: "Why this centile?",
    inputs: [
      ["Axial length", `${al} mm`],
      ["Age", `${age} years`],
      ["Sex", sex],
      ["Ancestry", ancestry ?? "not given, taken as European"],
      ["Reference", reference?.id ?? "none fits"],
    ],
    formula: [
      shapeInWords(reference),
      "Outside the ages and sexes of a reference, or when it is of grade D, the answer is a refusal with its reason.",
      "A reference is not a target: a myopic eye on the 50th centile is still myopic.",
      ...(reference === undefined ? [] : [reference.note]),
    ],
    parameters: [],
    tables: reference === undefined ? [] : [tableOf(reference)],
  })

function shapeInWords(reference: Reference | undefined): string {
  switch (reference?.shape) {
    case "lms":
      return "With L, M and S of the age and sex, z is ((length / M) to the power L, less 1) divided by L times S; the centile is the normal share below z."
    case "normal":
      return "With mean and SD of the age and sex, z is the length less the mean, divided by the SD; the centile is the normal share below z."
    case "centiles":
      return "z is interpolated between the printed centiles, each at its own z; beyond the outermost centile only that is said."
    case "split-normal":
      return "z is the distance from the median, divided by the SD of that side as its outer centile gives it."
    case undefined:
      return "No reference at hand fits this child, and a child is never placed on the table of another population in silence."
  }
}
