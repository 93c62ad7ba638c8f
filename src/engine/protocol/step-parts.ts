import type { Measure, ProtocolStep } from "./protocol.js"

/** The pieces that the protocols that ship are put together from. Every figure is common practice without a source. */

export const GROWTH: readonly Measure[] = ["axial-length", "cycloplegic-refraction", "symptoms"]
const SAFETY_ON_ATROPINE: readonly Measure[] = ["photopic-pupil", "accommodation", "near-acuity"]
const PUPIL_AND_ACCOMMODATION: readonly Measure[] = ["photopic-pupil", "accommodation"]

/** Half a year between reviews, each with a month before and after. */
export const HALF_YEARLY = { windowDaysBefore: 30, windowDaysAfter: 30 } as const

type Defaults = "kind" | "measures" | "measuresOnAtropine" | "inForce" | "restartsOnChange"
type StepOf = Omit<ProtocolStep, Defaults> & Partial<ProtocolStep>
export type Beginning = "start" | "restart"

export const examination = (step: StepOf): ProtocolStep => ({
  kind: "examination",
  measures: GROWTH,
  measuresOnAtropine: [],
  inForce: [],
  restartsOnChange: false,
  ...step,
})

export const decision = (step: StepOf): ProtocolStep =>
  examination({ ...step, kind: "decision", measures: [] })

export const baseline = (): ProtocolStep =>
  examination({
    id: "baseline",
    title: "baseline",
    anchor: "before-start",
    offsetMonths: 0,
    windowDaysBefore: 90,
    windowDaysAfter: 30,
    measuresOnAtropine: SAFETY_ON_ATROPINE,
  })

export const monthCheck = (anchor: Beginning): ProtocolStep =>
  examination({
    id: `${anchor}-check-1`,
    title: "1-month check",
    anchor,
    offsetMonths: 1,
    windowDaysBefore: 10,
    windowDaysAfter: 20,
    measures: ["symptoms"],
    measuresOnAtropine: ["photopic-pupil", "near-acuity"],
    inForce: ["consent", "supply"],
    restartsOnChange: true,
  })

export const review = (anchor: Beginning, offsetMonths: number): ProtocolStep =>
  examination({
    id: `${anchor}-review-${offsetMonths}`,
    title: `${offsetMonths}-month review`,
    anchor,
    offsetMonths,
    ...HALF_YEARLY,
    measuresOnAtropine: PUPIL_AND_ACCOMMODATION,
    inForce: ["consent", "supply"],
  })

/** Whether a first course ends here. */
export const stopAt = (offsetMonths: number): ProtocolStep =>
  decision({
    id: `start-stop-${offsetMonths}`,
    title: `decision to stop at ${offsetMonths} months`,
    anchor: "start",
    offsetMonths,
    ...HALF_YEARLY,
    decides: "stop",
  })

/** Whether a later course ends after its year. */
export const stopAfterAnotherYear = (): ProtocolStep =>
  decision({
    id: "restart-stop-12",
    title: "decision to stop after 12 more months",
    anchor: "restart",
    offsetMonths: 12,
    ...HALF_YEARLY,
    decides: "stop",
  })

/** The check after the stop, the decision it leads to, and who goes on being seen when no date lies ahead. */
export const afterStopAndBeyond = (): readonly ProtocolStep[] => [
  examination({
    id: "after-stop-6",
    title: "check 6 months after the stop",
    anchor: "stop",
    offsetMonths: 6,
    ...HALF_YEARLY,
  }),
  decision({
    id: "after-stop-restart",
    title: "decision on 12 more months",
    anchor: "stop",
    offsetMonths: 6,
    ...HALF_YEARLY,
    decides: "restart",
  }),
  goingOn(),
  observation(),
]

export const goingOn = (): ProtocolStep =>
  examination({
    id: "going-on",
    title: "review while treatment goes on",
    anchor: "last-visit-on-treatment",
    offsetMonths: 6,
    ...HALF_YEARLY,
    measuresOnAtropine: PUPIL_AND_ACCOMMODATION,
    inForce: ["consent", "supply"],
  })

export const observation = (): ProtocolStep =>
  examination({
    id: "observation",
    title: "observation",
    anchor: "last-visit-off-treatment",
    offsetMonths: 6,
    ...HALF_YEARLY,
  })

/** What a protocol counts in days. */
export const SPANS = {
  // Shorter than the 6 months to the check after the stop, so that a restart decided at that check is a new course.
  longestPauseDays: 150,
  consentLeadDays: 30,
  bottleLeadDays: 14,
  bottleDaysAfterOpening: 30,
} as const
