import type { VisionPrescription, VisionPrescriptionLensSpecification } from "fhir/r4.js"
import { EYES, type Eye, type Refraction, type SpectaclesWorn, type Visit } from "../../../engine/course.js"
import { type Loose, record, records } from "../../course/loose.js"
import { plain } from "../plain-text.js"
import { withoutLoss, withRemainder } from "../remainder.js"
import { hl7, own } from "./codes.js"
import { hasCode, present, type Where } from "./observation.js"

/** Glasses: those worn and read off, and the prescriptions of old ones. */

/** Where the course file says that a visit's figures are from old glasses. */
export const OLD_GLASSES = "old glasses"
const WORN = own("glasses-worn", "Glasses read off while worn")
const OLD = own("old-glasses", "Prescription of old glasses")
export type GlassesField = "spectaclesWorn" | "refraction"

const UNKNOWN = [{ url: "http://hl7.org/fhir/StructureDefinition/data-absent-reason", valueCode: "unknown" }]

export const isOldGlasses = ({ from }: Visit): boolean => from === OLD_GLASSES

/** One resource for both eyes; undefined where neither has any. */
export function glassesOf(
  visit: Visit,
  { field, where, id }: { readonly field: GlassesField; readonly where: Where; readonly id: () => string },
): VisionPrescription | undefined {
  const lenses = EYES.flatMap((eye) => {
    const lens = visit[eye]?.[field]
    return lens ? [lensOf(lens, { eye, field })] : []
  })
  const [first, ...others] = lenses
  if (first === undefined) return undefined
  return {
    resourceType: "VisionPrescription",
    id: id(),
    status: "active",
    created: visit.date,
    patient: where.patient,
    ...(where.encounter === undefined ? {} : { encounter: where.encounter }),
    dateWritten: visit.date,
    prescriber: { extension: UNKNOWN },
    lensSpecification: [first, ...others],
  }
}

function lensOf(
  lens: SpectaclesWorn | Refraction,
  { eye, field }: { readonly eye: Eye; readonly field: GlassesField },
): VisionPrescriptionLensSpecification {
  const { sphere, cylinder, axis } = lens
  const addD = "addD" in lens ? lens.addD : undefined
  const prism = plain("prism" in lens ? lens.prism : undefined)
  const isWhole = axis !== undefined && Number.isInteger(axis)
  const specification: VisionPrescriptionLensSpecification = {
    product: {
      coding: [hl7("ex-visionprescriptionproduct", "lens"), field === "refraction" ? OLD : WORN],
      text: "Spectacle lens",
    },
    eye,
    ...present({
      sphere,
      cylinder,
      // R4 has whole degrees here, and an axis only beside a cylinder.
      axis: isWhole ? axis : undefined,
      add: addD,
      note: prism === undefined ? undefined : [{ text: prism }],
    }),
  }
  return withRemainder(specification, { whole: lens, native: nativeLens(record(specification)) })
}

export interface LensRead {
  readonly eye: Eye
  readonly field: GlassesField
  readonly value: unknown
  /** Whether we wrote it, so that it is known what the glasses were. */
  readonly isOurs: boolean
}

/** The lenses of a prescription that have a sphere. */
export const lensesRead = (prescription: Loose): readonly LensRead[] =>
  records(prescription.lensSpecification).flatMap((lens): readonly LensRead[] => {
    const eye = EYES.find((each) => each === lens.eye)
    const isWorn = hasCode(lens.product, WORN)
    const isOurs = isWorn || hasCode(lens.product, OLD)
    const value = withoutLoss(lens, nativeLens(lens))
    if (eye === undefined || typeof record(value).sphere !== "number") return []
    return [{ eye, field: isWorn ? "spectaclesWorn" : "refraction", value, isOurs }]
  })

const number = (value: unknown): number | undefined => (typeof value === "number" ? value : undefined)

function nativeLens(lens: Loose) {
  const [note] = records(lens.note)
  const figures = { sphere: number(lens.sphere), cylinder: number(lens.cylinder), axis: number(lens.axis) }
  if (!hasCode(lens.product, WORN)) return present(figures)
  const prism = typeof note?.text === "string" ? note.text : undefined
  return present({ ...figures, addD: number(lens.add), prism })
}
