import { EYES, type EyeExamination, type Refraction, type Visit } from "../../engine/course.js"

/** A figure that is recorded and that the other side gives otherwise; the recorded one stays. */
export interface Contradiction {
  /** As the course file names it, inside the visit: `right.axialLength.mm`. */
  readonly path: string
  readonly recorded: unknown
  readonly offered: unknown
}

export interface MergedVisit {
  readonly visit: Visit
  /** Paths that the visit gained; empty when the other side says nothing new. */
  readonly added: readonly string[]
  readonly contradictions: readonly Contradiction[]
}

/**
 * Two accounts of one child's visit of one day as one. What is recorded is never changed: the other account fills in what
 * was not measured, and where both have a figure and it differs, that is a contradiction for a person to settle. A group
 * such as a length with its readings is one figure and is taken whole. A second refraction by another method is kept
 * beside the first.
 *
 * @example
 * mergedVisit({ date: "2026-03-16" }, { date: "2026-03-16", right: { axialLength: { mm: 24.12 } } }).added
 * // => ["right.axialLength"]
 */
export function mergedVisit(recorded: Visit, offered: Visit): MergedVisit {
  const added: string[] = []
  const contradictions: Contradiction[] = []
  const eyes = EYES.flatMap((eye) => {
    const before = recorded[eye] ?? {}
    const merged = mergedEye(withRefractionBeside(before, offered[eye] ?? {}), {
      before,
      eye,
      added,
      contradictions,
    })
    return Object.keys(merged).length === 0 ? [] : [[eye, merged] as const]
  })
  const rest = ownFields(offered).flatMap(([field, value]) => {
    if (field === "date" || field === "sources" || field === "right" || field === "left") return []
    const was = recorded[field]
    if (was === undefined && field === "from" && hasFigures(recorded)) return []
    if (was === undefined) {
      added.push(field)
      return [[field, value] as const]
    }
    if (!same(was, value)) contradictions.push({ path: field, recorded: was, offered: value })
    return []
  })
  if (hasFigures(recorded) && added.some((path) => path !== "from") && recorded.from !== offered.from) {
    // Figures measured here and figures from elsewhere do not stand in one visit as if they were of one place.
    if (!contradictions.some(({ path }) => path === "from"))
      contradictions.push({ path: "from", recorded: recorded.from, offered: offered.from })
  }
  const sources = joinedSources(recorded, offered)
  const visit = {
    ...recorded,
    ...Object.fromEntries(rest),
    ...Object.fromEntries(eyes),
    ...(sources.length > 0 ? { sources } : {}),
  }
  return { visit, added, contradictions }
}

/** Whether anything is recorded beyond the day. */
const hasFigures = ({ date: _, sources: __, from: ___, ...rest }: Visit): boolean =>
  ownFields(rest).some(([, held]) => Object.keys(held).length > 0)

interface Gathering {
  readonly before: EyeExamination
  readonly eye: string
  readonly added: string[]
  readonly contradictions: Contradiction[]
}

function mergedEye(
  offered: EyeExamination,
  { before, eye, added, contradictions }: Gathering,
): EyeExamination {
  const gained = ownFields(offered).filter(([field, value]) => {
    const was = before[field]
    if (was === undefined) {
      added.push(`${eye}.${field}`)
      return true
    }
    if (field === "otherRefractions") {
      if (same(was, value)) return false
      added.push(`${eye}.${field}`)
      return true
    }
    if (!sameFigures(was, value))
      contradictions.push({ path: `${eye}.${field}`, recorded: was, offered: value })
    return false
  })
  return { ...before, ...Object.fromEntries(gained) }
}

/** A refraction by another method than the recorded one contradicts nothing: it stands beside it. */
function withRefractionBeside(recorded: EyeExamination, offered: EyeExamination): EyeExamination {
  const { refraction, otherRefractions = [], ...rest } = offered
  const others = [...(recorded.otherRefractions ?? [])]
  const beside = (found: Refraction) => {
    const isKnown = [recorded.refraction, ...others].some((known) => known && sameFigures(known, found))
    if (!isKnown) others.push(found)
  }
  const isOther = refraction && recorded.refraction && isOtherwiseMeasured(refraction, recorded.refraction)
  if (isOther) beside(refraction)
  for (const other of otherRefractions) beside(other)
  return {
    ...rest,
    ...(refraction && !isOther ? { refraction } : {}),
    ...(others.length > 0 ? { otherRefractions: others } : {}),
  }
}

/** Another method, or with and without cycloplegia: known only where both sides say. */
const isOtherwiseMeasured = (a: Refraction, b: Refraction): boolean =>
  (["method", "cycloplegic"] as const).some(
    (how) => a[how] !== undefined && b[how] !== undefined && a[how] !== b[how],
  )

function joinedSources({ sources: known = [] }: Visit, { sources = [] }: Visit) {
  return [...known, ...sources.filter(({ id }) => !known.some((source) => source.id === id))]
}

/** The same figure, however much more one side tells of it: both agree in every field that both have. */
function sameFigures(a: unknown, b: unknown): boolean {
  if (!isRecord(a) || !isRecord(b)) return same(a, b)
  return Object.keys(a).every(
    (field) => a[field] === undefined || b[field] === undefined || sameFigures(a[field], b[field]),
  )
}

/** Equal in every field, in whatever order the fields stand. */
export function same(a: unknown, b: unknown): boolean {
  if (Array.isArray(a) && Array.isArray(b))
    return a.length === b.length && a.every((item, index) => same(item, b[index]))
  if (!isRecord(a) || !isRecord(b)) return Object.is(a, b)
  return [...new Set([...Object.keys(a), ...Object.keys(b)])].every((field) => same(a[field], b[field]))
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value)

function ownFields<T extends object>(
  value: T,
): readonly (readonly [field: keyof T, value: NonNullable<T[keyof T]>])[] {
  return Object.entries(value).filter(([, held]) => held !== undefined && held !== null) as never
}
