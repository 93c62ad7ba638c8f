import type { Coding } from "fhir/r4.js"
import type { EyeExamination } from "../../../engine/course.js"
import type { Loose } from "../../course/loose.js"
import { AXIAL_LENGTH, DISTANCE_ACUITY, NEAR_ACUITY, PRESSURE, REFRACTION } from "./codes.js"
import * as function_ from "./eye-function.js"
import { lengthDraft, lengthRead, OWN_AXIAL_LENGTH } from "./eye-length.js"
import {
  KERATOMETRY,
  keratometryDraft,
  keratometryRead,
  OTHER_REFRACTION,
  OWN_REFRACTION,
  refractionDraft,
  refractionRead,
} from "./eye-refraction.js"
import type { Look } from "./look.js"
import { type Draft, hasCode, present, type WhereInEye } from "./observation.js"

/** One eye of one visit as Observations, one for each thing measured, and back. */

export type EyeField = keyof EyeExamination

export interface EyePart {
  /** Stands in the logical id. */
  readonly word: string
  readonly field: EyeField
  /** What the Observation has to say. */
  readonly whole: unknown
  readonly draft: Draft
}

export function eyeParts(eye: EyeExamination, where: WhereInEye): readonly EyePart[] {
  // An object with nothing in it is no observation; the visit keeps it.
  const part = <Field extends EyeField>(
    field: Field,
    word: string,
    write: (value: NonNullable<EyeExamination[Field]>, where: WhereInEye) => Draft,
    value: EyeExamination[Field] = eye[field],
  ): readonly EyePart[] =>
    value === undefined || value === null || Object.keys(Object(value)).length === 0
      ? []
      : [{ word, field, whole: value, draft: write(value as NonNullable<EyeExamination[Field]>, where) }]
  const { acuity, otherRefractions = [] } = eye
  const distance = given({
    distanceLogMAR: acuity?.distanceLogMAR,
    distanceCorrection: acuity?.distanceCorrection,
  })
  const near = given({ nearLogMAR: acuity?.nearLogMAR })
  return [
    ...part("axialLength", "length", lengthDraft),
    ...part("refraction", "refraction", refractionDraft),
    ...otherRefractions.map((other): EyePart => {
      const draft = refractionDraft(other, where, true)
      return { word: "other-refraction", field: "otherRefractions", whole: other, draft }
    }),
    ...part("corneaRadius", "cornea", keratometryDraft),
    ...part("pupil", "pupil", function_.pupilDraft),
    ...part("accommodation", "accommodation", function_.accommodationDraft),
    ...part("acuity", "distance-acuity", function_.distanceDraft, distance),
    ...part("acuity", "near-acuity", function_.nearDraft, near),
    ...part("intraocularPressure", "pressure", function_.pressureDraft),
    ...part("lensStatus", "lens", function_.lensDraft),
    ...part("dilation", "dilation", function_.dilationDraft),
  ]
}

/** The fields that are given; undefined when none is. */
function given<T extends object>(fields: T) {
  const held = present(fields)
  return Object.keys(held).length === 0 ? undefined : (held as NonNullable<EyeExamination["acuity"]>)
}

interface Reader {
  readonly field: EyeField
  readonly codes: readonly Coding[]
  readonly read: (observation: Loose, look: Look) => unknown
}

/** Ours before the shared code, since a further refraction has the shared one too. */
const READERS: readonly Reader[] = [
  {
    field: "axialLength",
    codes: [AXIAL_LENGTH.right, AXIAL_LENGTH.left, OWN_AXIAL_LENGTH],
    read: lengthRead,
  },
  { field: "otherRefractions", codes: [OTHER_REFRACTION], read: refractionRead },
  { field: "refraction", codes: [OWN_REFRACTION, REFRACTION], read: refractionRead },
  { field: "corneaRadius", codes: [KERATOMETRY], read: keratometryRead },
  { field: "pupil", codes: [function_.PUPIL], read: function_.pupilRead },
  { field: "accommodation", codes: [function_.ACCOMMODATION], read: function_.accommodationRead },
  {
    field: "acuity",
    codes: [DISTANCE_ACUITY, function_.OWN_DISTANCE_ACUITY],
    read: function_.distanceRead,
  },
  { field: "acuity", codes: [NEAR_ACUITY, function_.OWN_NEAR_ACUITY], read: function_.nearRead },
  {
    field: "intraocularPressure",
    codes: [PRESSURE, function_.OWN_PRESSURE],
    read: function_.pressureRead,
  },
  { field: "lensStatus", codes: [function_.LENS], read: function_.lensRead },
  { field: "dilation", codes: [function_.DILATION], read: function_.dilationRead },
]

/** Which field of an eye an Observation is about; undefined for any other. */
export const eyeReader = ({ code }: Loose): Reader | undefined =>
  READERS.find(({ codes }) => codes.some((each) => hasCode(code, each)))
