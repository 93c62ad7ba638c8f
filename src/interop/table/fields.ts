import type { Eye } from "../../engine/course.js"
import { msg } from "../../engine/say.js"

/** A field that a column of a table can be read into. */
export interface TableField {
  /** As a mapping names it; of one eye "right.sphere" or "left.sphere", of the row's eye "sphere". */
  readonly id: string
  readonly title: string
  readonly group: FieldGroup
  /** UCUM code of the field's own unit, where it has one. */
  readonly unit?: string | undefined
  /** UCUM codes of other units it can be read from. */
  readonly alternatives?: readonly string[] | undefined
  readonly perEye: boolean
  /** Of a field of an eye: may also be given once for both eyes of a row. */
  readonly forBoth?: boolean | undefined
}

export const FIELD_GROUPS = ["child", "visit", "eye", "glasses", "treatment", "left-out"] as const
export type FieldGroup = (typeof FIELD_GROUPS)[number]

const f = (group: FieldGroup, id: string, title: string, rest: Partial<TableField> = {}): TableField => ({
  id,
  title,
  group,
  perEye: false,
  ...rest,
})
const eye = { perEye: true } as const
const both = { perEye: true, forBoth: true } as const

export const TABLE_FIELDS: readonly TableField[] = [
  f("child", "number", msg("Number of the child")),
  f("child", "name", msg("Name, given name first")),
  f("child", "givenName", msg("Given name")),
  f("child", "familyName", msg("Family name")),
  f("child", "born", msg("Date of birth")),
  f("child", "sex", msg("Sex")),
  f("child", "ancestry", msg("Ancestry")),
  f("child", "myopicParents", msg("Myopic parents")),
  f("visit", "date", msg("Day of the visit")),
  f("visit", "eye", msg("Which eye the row is of")),
  f("eye", "axialLengthMm", msg("Axial length"), { ...eye, unit: "mm" }),
  f("eye", "readings", msg("Number of readings"), { ...both, unit: "1" }),
  f("eye", "axialLengthSdMm", msg("Standard deviation of the length"), {
    ...eye,
    unit: "mm",
    alternatives: ["um"],
  }),
  f("eye", "signalToNoise", msg("Signal to noise"), { ...eye, unit: "1" }),
  f("eye", "lengthMethod", msg("Method of the length"), both),
  f("eye", "lengthDevice", msg("Instrument of the length"), both),
  f("eye", "sphere", msg("Sphere"), { ...eye, unit: "[diop]" }),
  f("eye", "cylinder", msg("Cylinder"), { ...eye, unit: "[diop]" }),
  f("eye", "axis", msg("Axis"), { ...eye, unit: "deg" }),
  f("eye", "prescription", msg("Sphere, cylinder and axis in one cell"), { ...eye, unit: "[diop]" }),
  f("eye", "sphericalEquivalent", msg("Spherical equivalent"), { ...eye, unit: "[diop]" }),
  f("eye", "cycloplegic", msg("Cycloplegic"), both),
  f("eye", "refractionMethod", msg("Method of the refraction"), both),
  f("eye", "corneaFlatMm", msg("Flat radius of the cornea"), {
    ...eye,
    unit: "mm",
    alternatives: ["[diop]"],
  }),
  f("eye", "corneaSteepMm", msg("Steep radius of the cornea"), {
    ...eye,
    unit: "mm",
    alternatives: ["[diop]"],
  }),
  f("eye", "pupilPhotopicMm", msg("Photopic pupil"), { ...eye, unit: "mm" }),
  f("eye", "pupilMesopicMm", msg("Mesopic pupil"), { ...eye, unit: "mm" }),
  f("eye", "accommodationD", msg("Amplitude of accommodation"), { ...eye, unit: "[diop]" }),
  f("eye", "distanceLogMAR", msg("Distance acuity, logMAR"), { ...eye, unit: "1" }),
  f("eye", "distanceDecimal", msg("Distance acuity, decimal"), { ...eye, unit: "1" }),
  f("eye", "distanceSnellen", msg("Distance acuity, Snellen fraction"), eye),
  f("eye", "nearLogMAR", msg("Near acuity, logMAR"), { ...eye, unit: "1" }),
  f("eye", "pressureMmHg", msg("Pressure of the eye"), { ...eye, unit: "mm[Hg]" }),
  f("glasses", "oldGlasses", msg("Whether the row is of earlier glasses")),
  f("glasses", "glassesDate", msg("Day the earlier glasses were prescribed")),
  f("glasses", "glassesSphere", msg("Sphere of the earlier glasses"), { ...eye, unit: "[diop]" }),
  f("glasses", "glassesCylinder", msg("Cylinder of the earlier glasses"), { ...eye, unit: "[diop]" }),
  f("glasses", "glassesAxis", msg("Axis of the earlier glasses"), { ...eye, unit: "deg" }),
  f("glasses", "glassesPrescription", msg("Earlier glasses in one cell"), { ...eye, unit: "[diop]" }),
  f("treatment", "treatmentKind", msg("Treatment")),
  f("treatment", "concentrationPercent", msg("Strength of the drops"), { unit: "%" }),
  f("treatment", "treatmentFrom", msg("First day of the treatment")),
  f("treatment", "treatmentTo", msg("First day no longer treated")),
  f("left-out", "comment", msg("Remark, which is left out")),
]

const byId = new Map(TABLE_FIELDS.map((field) => [field.id, field]))

/** A field as a mapping names it, and the eye that is meant: null for the row's eye or for no eye at all. */
export interface NamedField {
  readonly field: TableField
  readonly eye: Eye | null
}

/**
 * @example
 * namedField("right.sphere") // => { field: { id: "sphere", ... }, eye: "right" }
 */
export function namedField(name: string): NamedField | null {
  const [, side, id = name] = /^(right|left)\.(.+)$/.exec(name) ?? []
  const field = byId.get(id)
  if (!field || (side !== undefined && !field.perEye)) return null
  return { field, eye: side === "right" || side === "left" ? side : null }
}
