import { EYES, type Visit } from "./course.js"
import { msg, say } from "./say.js"

/** What a field of a visit is called. */
const NAMES: Readonly<Record<string, string>> = {
  axialLength: msg("axial length|figure"),
  refraction: msg("refraction|figure"),
  otherRefractions: msg("further refractions|figure"),
  spectaclesWorn: msg("glasses worn|figure"),
  corneaRadius: msg("cornea|figure"),
  lensStatus: msg("lens of the eye|figure"),
  dilation: msg("dilation|figure"),
  pupil: msg("pupil|figure"),
  accommodation: msg("accommodation|figure"),
  acuity: msg("acuity|figure"),
  intraocularPressure: msg("eye pressure|figure"),
  symptoms: msg("symptoms|figure"),
  answers: msg("answers to questions|figure"),
  from: msg("where the figures come from|figure"),
}

/** Fields of an eye in the order in which they are told. */
export const EYE_FIELDS = [
  "axialLength",
  "refraction",
  "otherRefractions",
  "spectaclesWorn",
  "corneaRadius",
  "lensStatus",
  "dilation",
  "pupil",
  "accommodation",
  "acuity",
  "intraocularPressure",
] as const
export type EyeField = (typeof EYE_FIELDS)[number]

/** The name of a field, without its eye; a field nobody named stays as it is written. */
export function fieldName(field: string): string {
  const name = NAMES[field]
  return name === undefined ? field : say(name)
}

/**
 * A path inside a visit as a person says it.
 *
 * @example
 * figureName("right.axialLength") // => "axial length of the right eye"
 */
export function figureName(path: string): string {
  const [first = "", second] = path.split(".")
  if (second === undefined) return fieldName(first)
  return say("{figure} of the {eye, select, right {right} other {left}} eye", {
    figure: fieldName(second),
    eye: first,
  })
}

/** The names of everything a visit holds, each once, whichever eye has it. */
export function figuresHeld(visits: readonly Visit[]): readonly string[] {
  const eyes = visits.flatMap((visit) => EYES.flatMap((eye) => Object.keys(visit[eye] ?? {})))
  const rest = visits.flatMap(({ symptoms, answers }) => [
    ...(symptoms?.length ? ["symptoms"] : []),
    ...(answers?.length ? ["answers"] : []),
  ])
  const held = new Set([...eyes, ...rest])
  return Object.keys(NAMES).flatMap((field) => (held.has(field) ? [fieldName(field)] : []))
}

/** The names of what paths lead to, each once: "axial length, cornea". */
export function figuresOf(paths: readonly string[]): string {
  return [...new Set(paths.map((path) => fieldName(path.split(".")[1] ?? path)))].join(", ")
}
