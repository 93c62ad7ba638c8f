import type { Measure, Protocol, ProtocolStep } from "./protocol.js"

const SAFETY_ON_ATROPINE: readonly Measure[] = ["photopic-pupil", "accommodation", "near-acuity"]
const GROWTH: readonly Measure[] = ["axial-length", "cycloplegic-refraction", "symptoms"]

type Defaults = "kind" | "measures" | "measuresOnAtropine" | "inForce" | "restartsOnChange"
type StepOf = Omit<ProtocolStep, Defaults> & Partial<ProtocolStep>

const examination = (step: StepOf): ProtocolStep => ({
  kind: "examination",
  measures: GROWTH,
  measuresOnAtropine: [],
  inForce: [],
  restartsOnChange: false,
  ...step,
})

const check = (anchor: "start" | "restart"): ProtocolStep =>
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

const review = (anchor: "start" | "restart", offsetMonths: number): ProtocolStep =>
  examination({
    id: `${anchor}-review-${offsetMonths}`,
    title: `${offsetMonths}-month review`,
    anchor,
    offsetMonths,
    windowDaysBefore: 30,
    windowDaysAfter: 30,
    measuresOnAtropine: ["photopic-pupil", "accommodation"],
    inForce: ["consent", "supply"],
  })

const decision = (step: StepOf): ProtocolStep => examination({ ...step, kind: "decision", measures: [] })

/**
 * The protocol that ships: baseline, 1 month, every 6 months to 24, stop, 6 months after, 12 more months if growth returns.
 * Every interval, window and list here is common practice without a source, and a practice setting.
 */
export const standardProtocol: Protocol = {
  id: "standard",
  title: "Standard protocol",
  version: "1",
  source: "common practice, no source",
  // Shorter than the 6 months to the check after the stop, so that a restart decided at that check is a new course.
  longestPauseDays: 150,
  consentLeadDays: 30,
  bottleLeadDays: 14,
  bottleDaysAfterOpening: 30,
  steps: [
    examination({
      id: "baseline",
      title: "baseline",
      anchor: "before-start",
      offsetMonths: 0,
      windowDaysBefore: 90,
      windowDaysAfter: 30,
      measuresOnAtropine: SAFETY_ON_ATROPINE,
    }),
    check("start"),
    review("start", 6),
    review("start", 12),
    review("start", 18),
    review("start", 24),
    decision({
      id: "start-stop-24",
      title: "decision to stop at 24 months",
      anchor: "start",
      offsetMonths: 24,
      windowDaysBefore: 30,
      windowDaysAfter: 30,
      decides: "stop",
    }),
    check("restart"),
    review("restart", 6),
    review("restart", 12),
    decision({
      id: "restart-stop-12",
      title: "decision to stop after 12 more months",
      anchor: "restart",
      offsetMonths: 12,
      windowDaysBefore: 30,
      windowDaysAfter: 30,
      decides: "stop",
    }),
    examination({
      id: "after-stop-6",
      title: "check 6 months after the stop",
      anchor: "stop",
      offsetMonths: 6,
      windowDaysBefore: 30,
      windowDaysAfter: 30,
    }),
    decision({
      id: "after-stop-restart",
      title: "decision on 12 more months",
      anchor: "stop",
      offsetMonths: 6,
      windowDaysBefore: 30,
      windowDaysAfter: 30,
      decides: "restart",
    }),
    examination({
      id: "going-on",
      title: "review while treatment goes on",
      anchor: "last-visit-on-treatment",
      offsetMonths: 6,
      windowDaysBefore: 30,
      windowDaysAfter: 30,
      measuresOnAtropine: ["photopic-pupil", "accommodation"],
      inForce: ["consent", "supply"],
    }),
    examination({
      id: "observation",
      title: "observation",
      anchor: "last-visit-off-treatment",
      offsetMonths: 6,
      windowDaysBefore: 30,
      windowDaysAfter: 30,
    }),
  ],
}
