import type { z } from "zod"
import type { Check } from "../../engine/assessment.js"
import type { CalendarDate, Course, EyeExamination } from "../../engine/course.js"
import type { Problem } from "../../engine/problem.js"
import { say, withDecimalSign } from "../../engine/say.js"
import { firstJsonFault } from "./json-position.js"
import { LARGEST_FILE_BYTES, limits, slippedDecimal } from "./limits.js"
import { pathText, problem, WHOLE_FILE } from "./problem.js"
import { ruleProblems } from "./rules.js"
import { COURSE_FILE_VERSION, courseSchema } from "./schema.js"
import { tooLarge } from "./too-large.js"

export type ReadCourse =
  | {
      readonly course: Course
      /** What was passed over or assumed; paths are those of the file. */
      readonly notes: readonly Check[]
      /** For each visit of `course`, its place in the file. */
      readonly visitOrder: readonly number[]
    }
  | { readonly problems: readonly Problem[] }

/** A file with more faults than this is another kind of file; the rest is counted, not listed. */
const MOST_PROBLEMS = 500
const LONGEST_LIST = 2000

/**
 * Reads the text of a course file. Either the whole course, with what was passed over as notes, or every fault at once.
 *
 * Visits come out sorted by date, an axis of 0 as 180, nulls as absent. Nothing that has happened may be
 * dated after `today`.
 *
 * @example
 * readCourse('{ "lengthwise": 1, "child": { "born": "2017-03-14", "sex": "female" } }')
 * // => { course: { lengthwise: 1, child: { ... }, visits: [] }, notes: [], visitOrder: [] }
 */
export function readCourse(
  text: string,
  { today }: { readonly today?: CalendarDate | undefined } = {},
): ReadCourse {
  const parsed = parsedJson(text)
  if ("problem" in parsed) return { problems: [parsed.problem] }
  return courseFrom(parsed.value, { today })
}

/** As `readCourse`, for a value that is already parsed (a request body). */
export function courseFrom(
  value: unknown,
  { today }: { readonly today?: CalendarDate | undefined } = {},
): ReadCourse {
  if (typeof value !== "object" || value === null || Array.isArray(value)) {
    return { problems: [problem({ path: WHOLE_FILE, value, allowed: say("a JSON object '{' ... '}'") })] }
  }
  const long = longLists(value)
  if (long.length > 0) return { problems: long }
  const result = courseSchema.safeParse(value)
  const fieldProblems = (result.error?.issues ?? []).map(({ path, message }) =>
    fieldProblem(value, path, message),
  )
  const problems = firstOfEachPath([...fieldProblems, ...ruleProblems(value, { today })])
  if (!result.success || problems.length > 0) return { problems: capped(problems) }
  const file = withoutNulls(result.data)
  const visitOrder = [...(file.visits ?? []).keys()].toSorted((a, b) =>
    (file.visits?.[a]?.date ?? "") < (file.visits?.[b]?.date ?? "") ? -1 : 1,
  )
  return {
    course: canonical({ ...file, visits: visitOrder.flatMap((index) => file.visits?.[index] ?? []) }),
    notes: [
      ...versionNote(value),
      ...plannedNotes(result.data, today),
      ...unknownFields(value, result.data, []),
    ],
    visitOrder,
  }
}

function parsedJson(text: string): { readonly value: unknown } | { readonly problem: Problem } {
  if (text.length > LARGEST_FILE_BYTES) return { problem: tooLarge(text.length) }
  // A byte order mark is written by some editors and is not part of JSON.
  const body = text.replace(/^\uFEFF/, "")
  const notJson = { path: WHOLE_FILE, value: null, allowed: say("a course file in JSON") }
  if (body.trim() === "") {
    return { problem: { ...notJson, message: say("The file is empty: it must be a course file in JSON.") } }
  }
  try {
    return { value: JSON.parse(body) }
  } catch {
    const fault = firstJsonFault(body)
    const message =
      fault === null
        ? say("The file is not JSON.")
        : say("The file is not JSON, line {line}, column {column}: {found} cannot stand there.", { ...fault })
    return { problem: { ...notJson, value: fault?.found ?? null, message } }
  }
}

/** Lists no child's course can have; refused by their length alone, so that junk costs no time. */
function longLists(file: object): readonly Problem[] {
  const { visits } = file as Readonly<Record<string, unknown>>
  const lists: readonly (readonly [path: string, value: unknown])[] = [
    ...Object.entries(file),
    ...(Array.isArray(visits) && visits.length <= LONGEST_LIST ? visits : []).map(
      (visit, index) => [`visits[${index}].symptoms`, visit?.symptoms] as const,
    ),
  ]
  return lists
    .filter(([, value]) => Array.isArray(value) && value.length > LONGEST_LIST)
    .map(([path, value]) =>
      problem({ path, value, allowed: say("a list of at most {most}", { most: LONGEST_LIST }) }),
    )
}

function fieldProblem(file: unknown, path: readonly PropertyKey[], allowed: string): Problem {
  const where = pathText(path)
  const value = path.reduce<unknown>(
    (inside, key) => (inside as Readonly<Record<PropertyKey, unknown>> | undefined)?.[key],
    file,
  )
  if (where === "lengthwise") {
    const hint = say("This program reads course files of version {version}; this file says {said}.", {
      version: COURSE_FILE_VERSION,
      said: String(JSON.stringify(value)?.slice(0, 40)),
    })
    return problem({ path: where, value, allowed, hint })
  }
  return problem({ path: where, value, allowed, hint: decimalHint(where, value) })
}

/** A length, radius or pupil whose decimal point slipped: 2.41 and 241 for 24.1. */
function decimalHint(path: string, value: unknown): string | undefined {
  if (typeof value !== "number") return undefined
  const limit = path.endsWith(".axialLength.mm")
    ? limits.axialLengthMm
    : path.includes(".corneaRadius.")
      ? limits.corneaRadiusMm
      : undefined
  const meant = limit && slippedDecimal(value, limit)
  return meant ? say("Did you mean {figure}?", { figure: withDecimalSign(String(meant)) }) : undefined
}

function firstOfEachPath(problems: readonly Problem[]): readonly Problem[] {
  const seen = new Set<string>()
  return problems.filter(({ path, allowed }) => {
    const key = `${path}\n${allowed}`
    if (seen.has(key)) return false
    seen.add(key)
    return true
  })
}

function capped(problems: readonly Problem[]): readonly Problem[] {
  if (problems.length <= MOST_PROBLEMS) return problems
  const rest = problems.length - MOST_PROBLEMS
  const summary = {
    path: WHOLE_FILE,
    value: rest,
    allowed: say("a course file"),
    message: say("{rest, plural, one {And # more fault.} other {And # more faults.}}", { rest }),
  }
  return [...problems.slice(0, MOST_PROBLEMS), summary]
}

function versionNote(file: object): readonly Check[] {
  const version = (file as { readonly lengthwise?: unknown }).lengthwise
  if (version !== undefined && version !== null) return []
  const why = say("the file does not say its version; it was read as version {version}", {
    version: COURSE_FILE_VERSION,
  })
  return [{ kind: "version-not-stated", path: "lengthwise", why }]
}

function plannedNotes(
  { treatments }: z.output<typeof courseSchema>,
  today: CalendarDate | undefined,
): readonly Check[] {
  return (treatments ?? []).flatMap(({ from }, index) =>
    today === undefined || from <= today
      ? []
      : [
          {
            kind: "planned-treatment",
            path: `treatments[${index}].from`,
            why: say("it starts on {from}: read as planned", { from }),
          },
        ],
  )
}

/** Fields of the file that the schema does not know: kept out of the course, and said. */
function unknownFields(file: unknown, kept: unknown, path: readonly PropertyKey[]): readonly Check[] {
  if (typeof file !== "object" || file === null || typeof kept !== "object" || kept === null) return []
  const found: Check[] = []
  for (const name of Object.keys(file)) {
    const value = (file as Readonly<Record<string, unknown>>)[name]
    const isKept = Object.hasOwn(kept, name)
    if (isKept && (typeof value !== "object" || value === null)) continue
    const here = [...path, Array.isArray(file) ? Number(name) : name]
    if (isKept) found.push(...unknownFields(value, (kept as Readonly<Record<string, unknown>>)[name], here))
    else
      found.push({
        kind: "unknown-field",
        path: pathText(here),
        why: say("not a field of the course file; it was not used"),
      })
  }
  return found
}

type WithoutNulls<T> = T extends readonly (infer Item)[]
  ? WithoutNulls<Item>[]
  : T extends object
    ? { [Key in keyof T]: WithoutNulls<Exclude<T[Key], null>> }
    : T

function withoutNulls<T>(value: T): WithoutNulls<T> {
  if (Array.isArray(value)) return value.map(withoutNulls) as WithoutNulls<T>
  if (typeof value !== "object" || value === null) return value as WithoutNulls<T>
  // A plain loop: an import of a table comes here with every figure it holds.
  const kept: Record<string, unknown> = {}
  for (const key of Object.keys(value)) {
    const item: unknown = value[key as keyof typeof value]
    if (item !== null && item !== undefined) kept[key] = withoutNulls(item)
  }
  return kept as WithoutNulls<T>
}

type SoundFile = Omit<Course, "lengthwise"> & { readonly lengthwise?: Course["lengthwise"] | undefined }

function canonical({ lengthwise: _, child, practice, visits, ...rest }: SoundFile): Course {
  return {
    lengthwise: COURSE_FILE_VERSION,
    child,
    ...(practice === undefined ? {} : { practice }),
    visits: visits.map((visit) => ({
      ...visit,
      ...(visit.right === undefined ? {} : { right: withAxisInRange(visit.right) }),
      ...(visit.left === undefined ? {} : { left: withAxisInRange(visit.left) }),
    })),
    ...rest,
  }
}

function withAxisInRange(eye: EyeExamination): EyeExamination {
  const { refraction, spectaclesWorn, otherRefractions } = eye
  return {
    ...eye,
    ...(refraction && { refraction: from1To180(refraction) }),
    ...(spectaclesWorn && { spectaclesWorn: from1To180(spectaclesWorn) }),
    ...(otherRefractions && { otherRefractions: otherRefractions.map(from1To180) }),
  }
}

const from1To180 = <T extends { readonly axis?: number | undefined }>(prescription: T): T =>
  prescription.axis === 0 ? { ...prescription, axis: 180 } : prescription
