import type { Coding } from "fhir/r4.js"
import {
  type CorneaRadius,
  REFRACTION_METHODS,
  type Refraction,
  type RefractionMethod,
} from "../../../engine/course.js"
import { type Loose, record } from "../../course/loose.js"
import { AUTOREFRACTION, AXIS, CYLINDER, own, REFRACTION, SPHERE, SUBJECTIVE } from "./codes.js"
import type { Look } from "./look.js"
import {
  components,
  type Draft,
  deviceIn,
  draft,
  figure,
  hasCode,
  methodIn,
  ownOneOf,
  partIn,
  partsWith,
  present,
  type WhereInEye,
} from "./observation.js"

/** Refractions and keratometry of one eye. */

export const OWN_REFRACTION = own("refraction", "Refraction")
export const OTHER_REFRACTION = own("other-refraction", "Further refraction of the same day")
const OWN_SPHERE = own("sphere", "Sphere")
const OWN_CYLINDER = own("cylinder", "Cylinder")
const OWN_AXIS = own("axis", "Axis of the cylinder")
const EQUIVALENT = own("spherical-equivalent", "Spherical equivalent")
const VERTEX = own("vertex-distance", "Vertex distance")
const CYCLOPLEGIC = own("cycloplegic", "Whether accommodation was relaxed by drops")

const METHOD_CODES: Readonly<Record<RefractionMethod, readonly Coding[]>> = {
  autorefraction: [AUTOREFRACTION],
  subjective: [SUBJECTIVE],
  retinoscopy: [],
}

export function refractionDraft(found: Refraction, where: WhereInEye, isOther = false): Draft {
  const { sphere, cylinder, axis, cycloplegic, method, vertexDistanceMm, device } = found
  const name = isOther ? "Further refraction" : "Refraction"
  return {
    ...draft(where, {
      code: [REFRACTION, isOther ? OTHER_REFRACTION : OWN_REFRACTION],
      text: `${name}, ${where.eye} eye`,
    }),
    ...methodIn(method, { codes: method && METHOD_CODES[method] }),
    ...deviceIn(device, where),
    ...components(
      figure(sphere, "dioptre", SPHERE, OWN_SPHERE),
      figure(cylinder, "dioptre", CYLINDER, OWN_CYLINDER),
      figure(axis, "degree", AXIS, OWN_AXIS),
      figure(Number((sphere + (cylinder ?? 0) / 2).toFixed(4)), "dioptre", EQUIVALENT),
      figure(vertexDistanceMm, "mm", VERTEX),
      cycloplegic === undefined ? undefined : { code: { coding: [CYCLOPLEGIC] }, valueBoolean: cycloplegic },
    ),
  }
}

export function refractionRead(observation: Loose, look: Look): Partial<Refraction> | undefined {
  const sphere = partIn(observation, "dioptre", SPHERE, OWN_SPHERE)
  if (sphere === undefined) return undefined
  const [cycloplegic] = partsWith(observation, CYCLOPLEGIC).map(({ valueBoolean }) => valueBoolean)
  return present({
    sphere,
    cylinder: partIn(observation, "dioptre", CYLINDER, OWN_CYLINDER),
    axis: partIn(observation, "degree", AXIS, OWN_AXIS),
    cycloplegic: typeof cycloplegic === "boolean" ? cycloplegic : undefined,
    method: methodRead(observation.method),
    vertexDistanceMm: partIn(observation, "mm", VERTEX),
    device: look.deviceName(observation.device),
  })
}

function methodRead(method: unknown): RefractionMethod | undefined {
  const ours = ownOneOf(method, REFRACTION_METHODS)
  return (
    ours ??
    REFRACTION_METHODS.find((name) => METHOD_CODES[name].some((code) => hasCode(record(method), code)))
  )
}

export const KERATOMETRY = own("keratometry", "Radii of the cornea")
const PARTS = {
  flat: { coding: own("flat-radius", "Radius of the flattest meridian"), unit: "mm" },
  steep: { coding: own("steep-radius", "Radius of the steepest meridian"), unit: "mm" },
  flatAxis: { coding: own("flat-meridian", "Direction of the flattest meridian"), unit: "degree" },
  steepAxis: { coding: own("steep-meridian", "Direction of the steepest meridian"), unit: "degree" },
  flatD: {
    coding: own("flat-power", "Power of the flattest meridian, as the instrument gave it"),
    unit: "dioptre",
  },
  steepD: {
    coding: own("steep-power", "Power of the steepest meridian, as the instrument gave it"),
    unit: "dioptre",
  },
} as const
const FIELDS = Object.keys(PARTS) as (keyof typeof PARTS)[]

export function keratometryDraft(cornea: CorneaRadius, where: WhereInEye): Draft {
  return {
    ...draft(where, { code: [KERATOMETRY], text: `Radii of the cornea, ${where.eye} eye` }),
    ...deviceIn(cornea.device, where),
    ...components(...FIELDS.map((field) => figure(cornea[field], PARTS[field].unit, PARTS[field].coding))),
  }
}

export function keratometryRead(observation: Loose, look: Look): Partial<CorneaRadius> | undefined {
  const figures = present(
    Object.fromEntries(
      FIELDS.map((field) => [field, partIn(observation, PARTS[field].unit, PARTS[field].coding)]),
    ) as Partial<CorneaRadius>,
  )
  if (figures.flat === undefined || figures.steep === undefined) return undefined
  return present({ ...figures, device: look.deviceName(observation.device) })
}
