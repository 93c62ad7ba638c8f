import { assess } from "../../engine/assess.js"
import type { Assessment, Forecast } from "../../engine/assessment.js"
import { type BeforeMyopia, beforeMyopia } from "../../engine/before-myopia/before-myopia.js"
import { ageYears } from "../../engine/calendar.js"
import { type CalendarDate, type Course, EYES, type Eye, type Treatment } from "../../engine/course.js"
import { forecast } from "../../engine/forecast.js"
import { type Myopia, myopiaOf } from "../../engine/growth/myopia.js"
import { protocolFor } from "../../engine/protocol/choose-protocol.js"
import { type Decision, decisions } from "../../engine/protocol/decisions.js"
import { type Examination, examinations } from "../../engine/protocol/examinations.js"
import { situationOn } from "../../engine/protocol/situation.js"
import { isInUse, realTreatments } from "../../engine/protocol/treatment-course.js"
import { inDoubt } from "../../engine/response/doubtful-figures.js"
import { type OpenConcern, openConcerns } from "../../engine/safety/open-concerns.js"
import { type SupplyReport, supplyReport } from "../../engine/supply/supply-report.js"
import { unansweredFinding } from "../../engine/today/unanswered-finding.js"
import { beforeMyopiaEvidence } from "../../evidence/before-myopia.js"
import { evidence } from "../../evidence/index.js"
import type { DocumentInput } from "../document-input.js"

/** Forecasts for families end here. */
export const GROWN_UP_YEARS = 18

export interface MeasuredLength {
  readonly eye: Eye
  readonly date: CalendarDate
  readonly ageYears: number
  readonly mm: number
}

/** Everything that is told a family, asked of the engine once, as it is on the day. */
export interface FamilyReading {
  readonly input: DocumentInput
  readonly course: Course
  readonly today: CalendarDate
  readonly assessment: Assessment
  readonly forecast: Forecast
  readonly myopia: Myopia
  /** What is known of children who are not short-sighted; null for one who is, or was treated. */
  readonly beforeMyopia: BeforeMyopia | null
  /** A figure that the growth rests on is so unlikely that it is measured again first. */
  readonly isInDoubt: boolean
  /** Every length measured by today, oldest first. */
  readonly lengths: readonly MeasuredLength[]
  /** In use today. */
  readonly treatments: readonly Treatment[]
  /** Begun by today, whether or not they go on. */
  readonly everTreated: readonly Treatment[]
  readonly examinations: readonly Examination[]
  readonly decisions: readonly Decision[]
  readonly supply: SupplyReport
  readonly concerns: readonly OpenConcern[]
  /** The last visit showed something that nobody has decided upon yet. */
  readonly isDecisionOpen: boolean
}

const DOUBTFUL = ["eyes-exchanged", "implausible-change"]

export function familyReading(input: DocumentInput): FamilyReading {
  const { settings, rules, today } = input
  const { latitude } = input.practice
  const myopiaCutOffD = evidence.growth.values.myopiaCutOffD.value
  const course: Course =
    input.course.practice?.latitude === undefined && latitude !== undefined
      ? { ...input.course, practice: { latitude } }
      : input.course
  const protocol = protocolFor({ course, today, rules })
  const asked = { course, asOf: today, evidence, settings, protocol }
  const assessment = assess(asked)
  const situation = situationOn({
    course,
    protocol,
    today,
    wordings: rules.consentWordings,
    pharmacies: rules.pharmacies,
  })
  const before = beforeMyopia({
    course,
    asOf: today,
    evidence: { onset: beforeMyopiaEvidence, emmetropic: evidence.emmetropic, myopiaCutOffD },
    protocol,
  })
  const treated = realTreatments(course)
  const doubts = assessment.checks.filter(({ kind }) => DOUBTFUL.includes(kind))
  return {
    input,
    course,
    today,
    assessment,
    forecast: forecast({ ...asked, toAgeYears: GROWN_UP_YEARS }),
    myopia: myopiaOf(course, today, myopiaCutOffD),
    beforeMyopia: "refused" in before ? null : before,
    isInDoubt: inDoubt({ course }, doubts) !== null,
    lengths: lengthsOf(course, today),
    treatments: treated.filter((treatment) => isInUse(treatment, today)),
    everTreated: treated.filter(({ from }) => from <= today),
    examinations: examinations(situation),
    decisions: decisions(situation),
    supply: supplyReport({ course, asOf: today, protocol, pharmacies: rules.pharmacies }),
    concerns: openConcerns({ course, today, protocol, switches: rules.examinationSwitches }),
    isDecisionOpen: unansweredFinding({ course, today, assessment }) !== null,
  }
}

function lengthsOf({ visits, child: { born } }: Course, today: CalendarDate): readonly MeasuredLength[] {
  return visits
    .filter(({ date }) => date <= today)
    .toSorted((a, b) => (a.date < b.date ? -1 : 1))
    .flatMap((visit) =>
      EYES.flatMap((eye) => {
        const mm = visit[eye]?.axialLength?.mm
        const { date } = visit
        return mm === undefined ? [] : [{ eye, date, ageYears: ageYears({ born, on: date }), mm }]
      }),
    )
}

/** The last length of an eye. */
export const lastLength = (
  { lengths }: Pick<FamilyReading, "lengths">,
  eye: Eye,
): MeasuredLength | undefined => lengths.findLast((length) => length.eye === eye)

/** The eye that was longer when last measured. */
export function longerEye(reading: Pick<FamilyReading, "lengths">): MeasuredLength | undefined {
  const [first, ...rest] = EYES.flatMap((eye) => lastLength(reading, eye) ?? [])
  return rest.reduce((longest, next) => (longest && longest.mm >= next.mm ? longest : next), first)
}

type Means = "drops" | "glasses" | "lenses" | "several" | "none"

/** What is in use, as a family calls it. */
export function meansOf({ treatments }: Pick<FamilyReading, "treatments">): Means {
  const kinds = [
    ...new Set(
      treatments.map(({ kind }): Means => {
        if (kind === "atropine") return "drops"
        return kind.endsWith("spectacles") ? "glasses" : "lenses"
      }),
    ),
  ]
  return kinds.length > 1 ? "several" : (kinds[0] ?? "none")
}
