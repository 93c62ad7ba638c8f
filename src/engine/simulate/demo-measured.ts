import type { Evidence } from "../../evidence/types.js"
import { ageYears, yearsBetween } from "../calendar.js"
import type { Course, Eye, EyeExamination, Refraction } from "../course.js"
import { EYES } from "../course.js"
import { treatmentColumns } from "../growth/treatment-columns.js"
import { treatmentName } from "../treatment-name.js"
import type { Scenario } from "./demo-scenarios.js"
import type { Random } from "./random.js"
import { type VirtualChild, virtualChild } from "./virtual-child.js"

/** Invented, and only plausible: how length and curvature go together in a made-up child. */
const LONGER_PER_DIOPTRE_MM = 0.35
const LONGER_PER_RADIUS_MM = 2.2
const USUAL_RADIUS_MM = 7.8
const DIOPTRES_PER_EYE_MM = 2
/** Invented children grow more evenly than the model allows for, so that a figure shows its story and not its luck. */
const DEMO_WOBBLE_MM_PER_SQRT_YEAR = 0.05
/** Children of one story differ a little in pace. */
const PACE_SPREAD = 0.1

/** Fills a plan from the growth model and writes the figures as instruments print them, slips of the hand included. */
export function demoMeasured({
  plan,
  scenario,
  evidence,
  random,
}: {
  readonly plan: Course
  readonly scenario: Scenario
  readonly evidence: Evidence
  readonly random: Random
}): Course {
  const radiusMm = USUAL_RADIUS_MM + 0.2 * random.normal()
  const child = virtualChild({
    plan,
    evidence: calmer(evidence),
    random,
    fixed: {
      pace: scenario.pace * Math.exp(PACE_SPREAD * random.normal()),
      withheld: withheldOf({ plan, scenario, evidence }),
    },
    startMm: startMm({ plan, scenario, evidence, radiusMm }) + 0.15 * random.normal(),
    startD: scenario.firstD,
  })
  const printed = EYES.map((eye) => printedEye({ eye, child, scenario, radiusMm, random }))
  const visits = child.course.visits.map((visit, index) => ({
    ...visit,
    ...Object.fromEntries(EYES.map((eye, e) => [eye, printed[e]?.[index]])),
  }))
  return slipped({ ...child.course, visits }, scenario)
}

/** True effects by the model's own names; a combination is left to the model's prior. */
function withheldOf(input: { plan: Course; scenario: Scenario; evidence: Evidence }): Record<string, number> {
  const asOf = input.plan.visits.at(-1)?.date ?? input.plan.child.born
  const columns = treatmentColumns({ course: input.plan, asOf, parameters: input.evidence.growth })
  const known = columns.flatMap(({ key }) => {
    const planned = input.scenario.treatments.find((treatment) => treatmentName(treatment) === key)
    return planned ? [[key, planned.withholds] as const] : []
  })
  return Object.fromEntries(known)
}

/** The emmetropic eye of that age, longer by its myopia and its curvature. */
function startMm({
  plan,
  scenario,
  evidence,
  radiusMm,
}: {
  plan: Course
  scenario: Scenario
  evidence: Evidence
  radiusMm: number
}): number {
  const { asymptoteMm, spanMm, ratePerYear } = evidence.emmetropic
  const first = plan.visits[0]?.date ?? plan.child.born
  const age = ageYears({ born: plan.child.born, on: first })
  return (
    asymptoteMm -
    spanMm * Math.exp(-ratePerYear * age) -
    LONGER_PER_DIOPTRE_MM * scenario.firstD +
    LONGER_PER_RADIUS_MM * (radiusMm - USUAL_RADIUS_MM)
  )
}

function printedEye({
  eye,
  child,
  scenario,
  radiusMm,
  random,
}: {
  eye: Eye
  child: VirtualChild
  scenario: Scenario
  radiusMm: number
  random: Random
}): readonly (EyeExamination | undefined)[] {
  const { course, trueMm, truth } = child
  const longerMm = (eye === "left" ? 1 : -1) * (scenario.leftLongerMm / 2)
  const middle = ((trueMm.right[0] ?? 0) + (trueMm.left[0] ?? 0)) / 2
  const offsetD = -DIOPTRES_PER_EYE_MM * ((trueMm[eye][0] ?? 0) + longerMm - middle)
  const astigmatism = { quarters: Math.floor(4 * random.uniform() ** 2), axis: axisNear(eye, random) }
  const toricMm = 0.06 + 0.05 * astigmatism.quarters
  const flatMm = radiusMm + toricMm / 2 + 0.01 * random.normal()
  return course.visits.map((visit, index) => {
    const exam = visit[eye]
    if (!exam) return undefined
    const extraMm = extraAt(visit.date, course, scenario)
    const mm = (exam.axialLength?.mm ?? 0) + longerMm + extraMm
    const equivalentD = (exam.refraction?.sphere ?? 0) + offsetD - truth.dioptresPerMm * extraMm
    return {
      ...exam,
      ...(exam.axialLength ? { axialLength: { ...exam.axialLength, mm: hundredths(mm) } } : {}),
      ...(exam.refraction
        ? { refraction: prescription({ asked: exam.refraction, equivalentD, astigmatism, random }) }
        : {}),
      ...(exam.axialLength && visit.from === undefined && isYearly(course, index)
        ? {
            corneaRadius: {
              flat: hundredths(flatMm + 0.01 * random.normal()),
              steep: hundredths(flatMm - toricMm + 0.01 * random.normal()),
            },
          }
        : {}),
    }
  })
}

/** Curvature is measured at the first examination and every other one after it. */
function isYearly({ visits }: Course, index: number): boolean {
  const measured = visits.flatMap((visit, i) => (EYES.some((eye) => visit[eye]?.axialLength) ? [i] : []))
  return measured.indexOf(index) % 2 === 0
}

function extraAt(date: string, course: Course, { extraAfterStopMm }: Scenario): number {
  const stop = course.treatments?.at(-1)?.to
  if (extraAfterStopMm === 0 || !stop || date <= stop) return 0
  return extraAfterStopMm * Math.min(1, yearsBetween({ from: stop, to: date }))
}

/** With the rule more often than not, and mirrored between the eyes. */
function axisNear(eye: Eye, random: Random): number {
  const tilt = Math.round(10 * random.normal())
  return inCircle(eye === "right" ? 180 + tilt : 180 - tilt)
}

function prescription({
  asked,
  equivalentD,
  astigmatism,
  random,
}: {
  asked: Refraction
  equivalentD: number
  astigmatism: { readonly quarters: number; readonly axis: number }
  random: Random
}): Refraction {
  const change = random.uniform() < 0.15 ? random.pick([-1, 1]) : 0
  const quarters = Math.max(0, astigmatism.quarters + (astigmatism.quarters > 0 ? change : 0))
  const cylinder = -0.25 * quarters
  // Adding 0 turns -0 into 0.
  const sphere = Math.round(4 * (equivalentD - cylinder / 2)) / 4 + 0
  if (quarters === 0) return { ...asked, sphere }
  const printed = asked.method === "autorefraction" ? 1 : 5
  const axis = inCircle(printed * Math.round((astigmatism.axis + 4 * random.normal()) / printed))
  return { ...asked, sphere, cylinder, axis }
}

/** The two slips of the hand that the checks are there for, both at the last full visit. */
function slipped(course: Course, { story }: Scenario): Course {
  const last = course.visits.findLastIndex((visit) => visit.right?.axialLength)
  const visits = course.visits.map((visit, index) => {
    const { right, left } = visit
    if (index !== last || !right || !left) return visit
    if (story === "exchanged-eyes") {
      return {
        ...visit,
        right: { ...right, axialLength: left.axialLength },
        left: { ...left, axialLength: right.axialLength },
      }
    }
    if (story === "lost-sign" && right.refraction) {
      const sphere = Math.abs(right.refraction.sphere)
      return { ...visit, right: { ...right, refraction: { ...right.refraction, sphere } } }
    }
    return visit
  })
  return { ...course, visits }
}

const inCircle = (axis: number): number => ((((axis - 1) % 180) + 180) % 180) + 1
const hundredths = (value: number): number => Math.round(100 * value) / 100

function calmer(evidence: Evidence): Evidence {
  const { growth } = evidence
  const wobbleMmPerSqrtYear = { ...growth.values.wobbleMmPerSqrtYear, value: DEMO_WOBBLE_MM_PER_SQRT_YEAR }
  return { ...evidence, growth: { ...growth, values: { ...growth.values, wobbleMmPerSqrtYear } } }
}
