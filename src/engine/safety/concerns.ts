import type { Concern } from "../assessment.js"
import { type CalendarDate, type Course, EYES, type Eye, type EyeExamination, type Visit } from "../course.js"
import { seenHere } from "../protocol/measured.js"
import { standardProtocol } from "../protocol/standard.js"
import { currentTreatmentCourse } from "../protocol/treatment-course.js"
import { type ComfortLimits, usualComfortLimits } from "./comfort-limits.js"

const SMALL_STUDY = "one small study, n = 12, known from a news summary only"

/** A value at the latest visit beside the child's own value before the first drop. */
interface Compared<T> {
  readonly eye: Eye
  readonly now: T
  readonly on: CalendarDate
  readonly before: { readonly value: T; readonly on: CalendarDate } | null
}

/**
 * What the latest visit says about how the treatment is borne, each with its figures and dates.
 *
 * Symptoms of any child; pupil, accommodation and near acuity once atropine was begun, against the last measurement of the
 * same eye on or before the day it was begun. Empty is not proof of safety: what was not measured raises no concern.
 */
export function concerns({
  course,
  today,
  limits = usualComfortLimits,
}: {
  course: Course
  today: CalendarDate
  limits?: ComfortLimits
}): readonly Concern[] {
  const visits = course.visits
    .filter(({ date }) => date <= today)
    .toSorted((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
  const latest = visits.findLast(seenHere)
  if (!latest) return []
  const begun = dropsBegun({ course, today })
  const before = begun === undefined ? [] : visits.filter(({ date }) => date <= begun)
  const symptoms = symptomConcerns({ latest, before, limits })
  if (begun === undefined || latest.date <= begun) return symptoms
  const compare = <T>(value: (eye: EyeExamination) => T | undefined) => compared({ latest, before, value })
  return [
    ...symptoms,
    ...compare((eye) => eye.pupil?.photopic).flatMap((pupil) => pupilConcern(pupil, limits)),
    ...compare((eye) => eye.accommodation).flatMap((amplitude) => accommodationConcern(amplitude, limits)),
    ...compare((eye) => eye.acuity?.nearLogMAR).flatMap((near) => nearAcuityConcern(near, limits)),
  ]
}

/** First day of atropine in the current course. */
function dropsBegun({ course, today }: { course: Course; today: CalendarDate }): CalendarDate | undefined {
  const { longestPauseDays } = standardProtocol
  const current = currentTreatmentCourse({ course, today, longestPauseDays })
  const drops = current?.treatments.find(({ kind }) => kind === "atropine")
  return drops && drops.from <= today ? drops.from : undefined
}

function compared<T>({
  latest,
  before,
  value,
}: {
  latest: Visit
  before: readonly Visit[]
  value: (eye: EyeExamination) => T | undefined
}): readonly Compared<T>[] {
  const of = (visit: Visit, eye: Eye) => {
    const examination = visit[eye]
    return examination && value(examination)
  }
  return EYES.flatMap((eye) => {
    const now = of(latest, eye)
    if (now === undefined) return []
    const baseline = before.findLast((visit) => of(visit, eye) !== undefined)
    return [
      {
        eye,
        now,
        on: latest.date,
        before: baseline ? { value: of(baseline, eye)!, on: baseline.date } : null,
      },
    ]
  })
}

function symptomConcerns({
  latest,
  before,
  limits,
}: {
  latest: Visit
  before: readonly Visit[]
  limits: ComfortLimits
}): readonly Concern[] {
  const asked = before.findLast(({ symptoms, date }) => symptoms !== undefined && date < latest.date)
  return (latest.symptoms ?? [])
    .filter(({ grade }) => grade >= limits.symptomGrade)
    .map(({ kind, grade }) => {
      const earlier = asked?.symptoms?.find((symptom) => symptom.kind === kind)?.grade ?? 0
      const baseline = asked ? `; before the drops, on ${asked.date}, grade ${earlier}` : ""
      return {
        kind: "symptom",
        why: `${sentenceStart(kind.replaceAll("-", " "))} grade ${grade} of 3 on ${latest.date}${baseline}.`,
      }
    })
}

function pupilConcern({ eye, now, on, before }: Compared<number>, limits: ComfortLimits): readonly Concern[] {
  if (!before) return []
  const widerMm = now - before.value
  if (widerMm < limits.pupilWideningMm - SLACK) return []
  const why =
    `${sentenceStart(eye)} photopic pupil ${now.toFixed(1)} mm on ${on}, ${widerMm.toFixed(1)} mm wider than ` +
    `${before.value.toFixed(1)} mm on ${before.on} before the drops. The limit of comfort taken is ${limits.pupilWideningMm} mm ` +
    `(${SMALL_STUDY}); two measurements of one pupil may differ by ${limits.pupilRetestMm} mm.`
  return [{ kind: "pupil", why }]
}

function accommodationConcern(
  { eye, now, on, before }: Compared<NonNullable<EyeExamination["accommodation"]>>,
  limits: ComfortLimits,
): readonly Concern[] {
  if (now.dioptres >= limits.residualAmplitudeD) return []
  const isComparable = before && now.method !== undefined && now.method === before.value.method
  const history = !before
    ? "It was not measured before the drops."
    : isComparable
      ? `It was ${before.value.dioptres.toFixed(1)} D on ${before.on} before the drops, by the same method.`
      : `The one on ${before.on} before the drops is not compared: the method is another or not stated.`
  const why =
    `${sentenceStart(eye)} amplitude of accommodation ${now.dioptres.toFixed(1)} D on ${on}` +
    `${now.method ? ` by ${now.method}` : ", method not stated"}, below the ${limits.residualAmplitudeD} D taken as the ` +
    `limit of comfort (${SMALL_STUDY}). ${history}`
  return [{ kind: "accommodation", why }]
}

function nearAcuityConcern(
  { eye, now, on, before }: Compared<number>,
  limits: ComfortLimits,
): readonly Concern[] {
  if (!before) return []
  const worse = now - before.value
  if (worse < limits.nearLossLogMAR - SLACK) return []
  const why =
    `${sentenceStart(eye)} near acuity ${now.toFixed(2)} logMAR on ${on}, ${worse.toFixed(2)} worse than ` +
    `${before.value.toFixed(2)} on ${before.on} before the drops. A loss of ${limits.nearLossLogMAR} or more is looked into ` +
    `(common practice, no source).`
  return [{ kind: "near-acuity", why }]
}

/** Differences of decimals are off by a hair: 6.8 - 3.8 must count as 3. */
const SLACK = 1e-9

const sentenceStart = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)
