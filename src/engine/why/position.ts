import type { Evidence, Reference } from "../../evidence/types.js"
import type { Assessment, Position } from "../assessment.js"
import { ageYears } from "../calendar.js"
import { type Ancestry, type Child, type Course, EYES } from "../course.js"
import { GRADE_WORDS } from "../reference/grade-words.js"
import { msg, say } from "../say.js"
import { centileInWords, fixed, inDigits } from "../words.js"
import { type SourceOf, tableOf, type Why, type WhyInput, whyOf } from "./why.js"

interface Placed {
  /** "right eye on 2025-01-10", or "this length" when no child is known. */
  readonly what: string
  readonly mm?: number | undefined
  readonly ageYears?: number | undefined
  readonly position: Position
}

/** Why lengths stand where they stand among peers, or why no position is given. */
export function positionWhy(question: {
  readonly placed: readonly Placed[]
  readonly child: Pick<Child, "sex" | "ancestry">
  readonly references: readonly Reference[]
  readonly sourceOf: SourceOf
}): Why {
  const { placed, child, references, sourceOf } = question
  const used = references.filter(({ id }) => placed.some(({ position }) => position.reference === id))
  return whyOf(
    {
      title: say("Why this position among peers?"),
      inputs: [
        [say("Sex"), say("{sex, select, female {female} other {male}}", { sex: child.sex })],
        [say("Ancestry"), say(ANCESTRIES[child.ancestry ?? "not-given"])],
        ...placed.flatMap(placeInputs),
        [
          say("Reference|growth table"),
          used.length === 0 ? say("none fits") : used.map(({ id }) => id).join(", "),
        ],
      ],
      formula: [
        say(
          "The length is compared with children of the same age, and of the same sex where the reference has the sexes apart.",
        ),
        ...[...new Set(used.map(({ shape }) => say(SHAPE_WORDS[shape])))],
        say(
          "Outside the ages and sexes of a reference, when it is of grade D, or when none is of the child's population, no position is given: a child is never placed on the table of another population in silence.",
        ),
        say(
          "A reference is not a target: a myopic eye on the 50th centile is still myopic, and children on treatment are not the reference population.",
        ),
        ...used.map(({ id, grade, population, n, instrument, note }) =>
          say("Reference {id}, grade {grade} ({words}): {population}; n {n}; {instrument}. {note}", {
            id,
            grade,
            words: say(GRADE_WORDS[grade]),
            population,
            n,
            instrument,
            note,
          }),
        ),
      ],
      tables: used.map(tableOf),
    },
    sourceOf,
  )
}

/** The same of the last length of each eye, as an assessment places it. */
export function eyesPositionWhy(assessed: {
  readonly course: Course
  readonly assessment: Assessment
  readonly evidence: Evidence
  readonly sourceOf: SourceOf
}): Why {
  const { course, assessment, evidence, sourceOf } = assessed
  const placed = EYES.map((eye): Placed => {
    const last = course.visits
      .filter((visit) => visit.date <= assessment.asOf && visit[eye]?.axialLength)
      .toSorted((a, b) => a.date.localeCompare(b.date))
      .at(-1)
    const { position } = assessment.eyes[eye]
    if (!last) return { what: say("{eye, select, right {right eye} other {left eye}}", { eye }), position }
    return {
      what: say("{eye, select, right {right eye} other {left eye}} on {date}", { eye, date: last.date }),
      mm: last[eye]?.axialLength?.mm,
      ageYears: ageYears({ born: course.child.born, on: last.date }),
      position,
    }
  })
  return positionWhy({ placed, child: course.child, references: evidence.references, sourceOf })
}

function placeInputs({ what, mm, ageYears: age, position }: Placed): readonly WhyInput[] {
  return [
    ...(mm === undefined
      ? []
      : [[say("Length, {what}", { what }), say("{mm} mm", { mm: fixed(mm) })] as const]),
    ...(age === undefined
      ? []
      : [[say("Age, {what}", { what }), say("{age} years", { age: inDigits(age) })] as const]),
    [say("Position, {what}", { what }), placeInWords(position)],
  ]
}

function placeInWords(position: Position): string {
  if ("refused" in position) return say("not given: {why}", { why: position.refused })
  const { centile, z, note } = position
  const number = centileInWords(centile)
  const place = typeof centile === "number" ? say("centile {number}", { number }) : number
  return `${place}${z === null ? "" : ` (z ${fixed(z)})`}${note === undefined ? "" : `; ${note}`}`
}

const ANCESTRIES: Readonly<Record<Ancestry | "not-given", string>> = {
  "east-asian": msg("east-asian|ancestry"),
  european: msg("european|ancestry"),
  "south-asian": msg("south-asian|ancestry"),
  african: msg("african|ancestry"),
  other: msg("other|ancestry"),
  unstated: msg("unstated|ancestry"),
  "not-given": msg("not given|ancestry"),
}

const SHAPE_WORDS: Readonly<Record<Reference["shape"], string>> = {
  lms: msg(
    "With L, M and S of the age and sex, z is ((length / M) to the power L, less 1) divided by L times S; the centile is the normal share below z.",
  ),
  normal: msg(
    "With mean and SD of the age and sex, z is the length less the mean, divided by the SD; the centile is the normal share below z.",
  ),
  centiles: msg(
    "The z is interpolated between the printed centiles, each at its own z; beyond the outermost centile only that is said.",
  ),
  "split-normal": msg(
    "The z is the distance from the median, divided by the SD of that side as its outer centile gives it.",
  ),
}
