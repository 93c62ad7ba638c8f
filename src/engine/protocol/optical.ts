import type { TreatmentKind } from "../course.js"
import type { Measure, Protocol, ProtocolStep } from "./protocol.js"
import {
  afterStopAndBeyond,
  type Beginning,
  baseline,
  examination,
  monthCheck,
  review,
  SPANS,
  stopAfterAnotherYear,
  stopAt,
} from "./step-parts.js"

const SPECTACLES: readonly TreatmentKind[] = ["defocus-spectacles", "lenslet-spectacles"]
const LENSES_BY_DAY: readonly TreatmentKind[] = ["dual-focus-lens", "multifocal-lens"]
const LENSES: readonly TreatmentKind[] = [...LENSES_BY_DAY, "orthokeratology"]
/** Treatments without drops. */
export const OPTICAL: readonly TreatmentKind[] = [...SPECTACLES, ...LENSES]

const SEEING: readonly Measure[] = ["distance-acuity", "symptoms"]

const lensCheck = (
  anchor: Beginning,
  step: Pick<
    ProtocolStep,
    "id" | "title" | "offsetDays" | "windowDaysBefore" | "windowDaysAfter" | "onlyFor"
  >,
): ProtocolStep =>
  examination({
    ...step,
    id: `${anchor}-${step.id}`,
    anchor,
    offsetMonths: 0,
    measures: SEEING,
    inForce: ["consent"],
    restartsOnChange: true,
  })

const checks = (anchor: Beginning): readonly ProtocolStep[] => [
  lensCheck(anchor, {
    id: "check-first-night",
    title: "check after the first night",
    offsetDays: 1,
    windowDaysBefore: 0,
    windowDaysAfter: 2,
    onlyFor: ["orthokeratology"],
  }),
  lensCheck(anchor, {
    id: "check-week-1",
    title: "1-week check",
    offsetDays: 7,
    windowDaysBefore: 3,
    windowDaysAfter: 7,
    onlyFor: LENSES,
  }),
  { ...monthCheck(anchor), measures: SEEING, inForce: ["consent"], onlyFor: [...OPTICAL, "atropine"] },
]

/** A cornea shaped overnight hides the refraction, so that under orthokeratology the length alone is followed. */
const reviews = (anchor: Beginning, months: number): readonly ProtocolStep[] => [
  { ...review(anchor, months), onlyFor: [...SPECTACLES, ...LENSES_BY_DAY, "atropine"] },
  overnight({ ...review(anchor, months), id: `${anchor}-review-${months}-overnight` }),
]

const overnight = (step: ProtocolStep): ProtocolStep => ({
  ...step,
  measures: ["axial-length", ...SEEING],
  onlyFor: ["orthokeratology"],
})

const beyond: readonly ProtocolStep[] = afterStopAndBeyond().flatMap((step) =>
  step.id === "going-on"
    ? [
        { ...step, onlyFor: [...SPECTACLES, ...LENSES_BY_DAY, "atropine"] },
        overnight({ ...step, id: "going-on-overnight" }),
      ]
    : [step],
)

/**
 * For spectacles, contact lenses and orthokeratology: the steps of the standard protocol without pupil and accommodation
 * (they come back by themselves where drops are added), and earlier checks of lenses worn on the eye.
 */
export const opticalProtocol: Protocol = {
  id: "optical",
  title: "Optical treatments",
  version: "1",
  source: "common practice, no source",
  ...SPANS,
  steps: [
    baseline(),
    ...checks("start"),
    ...[6, 12, 18, 24].flatMap((months) => reviews("start", months)),
    stopAt(24),
    ...checks("restart"),
    ...[6, 12].flatMap((months) => reviews("restart", months)),
    stopAfterAnotherYear(),
    ...beyond,
  ],
}
