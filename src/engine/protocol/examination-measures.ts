import type { EyeExamination } from "../course.js"
import { msg } from "../say.js"
import type { Measure } from "./protocol.js"
import { at, type Owed, type RoomPlace } from "./question.js"

/** What an examination may measure: what a protocol can name, and what a duty of the evidence asks for besides. */
export type ExaminationMeasure = Measure | "mesopic-pupil" | "intraocular-pressure"

export interface MeasureOwed {
  readonly measure: ExaminationMeasure
  readonly place: RoomPlace
  /** To be said. */
  readonly name: string
  /** The duties that ask for it, beside the protocol. */
  readonly owed: readonly Owed[]
}

const onDrops = (duty: string): Owed => ({
  duty,
  status: "verified",
  stages: at.treated,
  only: "on-atropine",
})
const baseline = (duty: string): Owed => ({ duty, status: "verified", stages: at.baseline })
/** Whether what the drops changed has come back. */
const cameBack: Owed = { duty: "CD-097", status: "unverified", stages: ["washout"] }
const afterStop: Owed = { duty: "CD-094", status: "partly", stages: ["washout"] }

/** Every measure in the order of the room. What can only be had before drops comes before them. */
export const EXAMINATION_MEASURES: readonly MeasureOwed[] = [
  {
    measure: "symptoms",
    place: "arrival",
    name: msg("symptoms"),
    owed: [
      { duty: "CD-033", status: "verified", stages: at.every },
      { duty: "CD-075", status: "verified", stages: at.every },
    ],
  },
  {
    measure: "distance-acuity",
    place: "distance-acuity",
    name: msg("distance acuity"),
    owed: [{ duty: "CD-013", status: "verified", stages: at.every }],
  },
  {
    measure: "near-acuity",
    place: "near-acuity",
    name: msg("near acuity"),
    owed: [baseline("CD-014"), onDrops("CD-014"), onDrops("CD-077"), cameBack],
  },
  {
    measure: "photopic-pupil",
    place: "pupil",
    name: msg("photopic pupil"),
    owed: [baseline("CD-026"), onDrops("CD-026"), onDrops("CD-077"), cameBack],
  },
  {
    measure: "mesopic-pupil",
    place: "pupil",
    name: msg("mesopic pupil"),
    owed: [baseline("CD-026"), onDrops("CD-026")],
  },
  {
    measure: "accommodation",
    place: "accommodation",
    name: msg("amplitude of accommodation"),
    owed: [baseline("CD-025"), onDrops("CD-025"), onDrops("CD-077"), cameBack],
  },
  {
    measure: "axial-length",
    place: "length",
    name: msg("axial length"),
    owed: [
      { duty: "CD-018", status: "verified", stages: ["baseline", "review"] },
      { duty: "CD-074", status: "verified", stages: ["review"] },
      afterStop,
    ],
  },
  { measure: "cornea-radius", place: "cornea", name: msg("corneal radius"), owed: [baseline("CD-023")] },
  {
    measure: "intraocular-pressure",
    place: "pressure",
    name: msg("intraocular pressure"),
    owed: [
      { duty: "CD-028", status: "partly", stages: at.baseline },
      { duty: "CD-028", status: "partly", stages: ["review"], only: "on-atropine" },
    ],
  },
  { measure: "refraction", place: "refraction", name: msg("refraction"), owed: [] },
  {
    measure: "cycloplegic-refraction",
    place: "refraction",
    name: msg("refraction with cycloplegia"),
    owed: [{ duty: "CD-015", status: "partly", stages: at.baseline }, afterStop],
  },
]

/** Whether an eye has what a duty asks for and no protocol names. */
export const hasExtraMeasure = {
  "mesopic-pupil": (eye: EyeExamination) => eye.pupil?.mesopic !== undefined,
  "intraocular-pressure": (eye: EyeExamination) => eye.intraocularPressure !== undefined,
} as const
