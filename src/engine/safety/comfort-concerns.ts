import type { EyeExamination, Visit } from "../course.js"
import { capitalised } from "../words.js"
import type { ComfortLimits } from "./comfort-limits.js"
import { type Compared, compared, SLACK } from "./compared.js"
import type { RaisedConcern } from "./raised-concern.js"

const SMALL_STUDY = "one small study, n = 12, known from a news summary only"
const BETWEEN_EYES = "its 3 mm is a difference between the eyes after drops in one eye"

interface Looked {
  readonly visit: Visit
  readonly before: readonly Visit[]
  readonly limits: ComfortLimits
}

/** Pupil, accommodation and near acuity under the drops, against the same eye's last values before them. */
export function comfortConcerns({ visit, before, limits }: Looked): readonly RaisedConcern[] {
  const compare = <T>(value: (eye: EyeExamination) => T | undefined) => compared({ visit, before, value })
  return [
    ...compare((eye) => eye.pupil?.photopic).flatMap((pupil) => pupilConcern(pupil, limits)),
    ...compare((eye) => eye.accommodation).flatMap((amplitude) => accommodationConcern(amplitude, limits)),
    ...compare((eye) => eye.acuity?.nearLogMAR).flatMap((near) => nearAcuityConcern(near, limits)),
  ]
}

/** Symptoms of any child from the grade that counts, beside what was there before the drops. */
export function symptomConcerns({ visit, before, limits }: Looked): readonly RaisedConcern[] {
  const asked = before.findLast(({ symptoms, date }) => symptoms !== undefined && date < visit.date)
  return (visit.symptoms ?? [])
    .filter(({ grade }) => grade >= limits.symptomGrade)
    .map(({ kind, grade }) => {
      const earlier = asked?.symptoms?.find((symptom) => symptom.kind === kind)?.grade ?? 0
      const baseline = asked ? `; before the drops, on ${asked.date}, grade ${earlier}` : ""
      return {
        kind: "symptom",
        recordKind: kind,
        why: `${capitalised(kind.replaceAll("-", " "))} grade ${grade} of 3 on ${visit.date}${baseline}.`,
        on: visit.date,
        duty: "CD-075",
      }
    })
}

function pupilConcern({ eye, now, on, before }: Compared<number>, limits: ComfortLimits) {
  if (!before) return []
  const widerMm = now - before.value
  if (widerMm < limits.pupilWideningMm - SLACK) return []
  const why =
    `${capitalised(eye)} photopic pupil ${now.toFixed(1)} mm on ${on}, ${widerMm.toFixed(1)} mm wider than ` +
    `${before.value.toFixed(1)} mm on ${before.on} before the drops. The limit of comfort taken is ${limits.pupilWideningMm} mm ` +
    `(${SMALL_STUDY}; ${BETWEEN_EYES}); two measurements of one pupil may differ by ${limits.pupilRetestMm} mm.`
  return [{ kind: "pupil", recordKind: "pupil", why, on, duty: "CD-077" }]
}

function accommodationConcern(
  { eye, now, on, before }: Compared<NonNullable<EyeExamination["accommodation"]>>,
  limits: ComfortLimits,
) {
  if (now.dioptres >= limits.residualAmplitudeD) return []
  const isComparable = before && now.method !== undefined && now.method === before.value.method
  const history = !before
    ? "It was not measured before the drops."
    : isComparable
      ? `It was ${before.value.dioptres.toFixed(1)} D on ${before.on} before the drops, by the same method.`
      : `The one on ${before.on} before the drops is not compared: the method is another or not stated.`
  const why =
    `${capitalised(eye)} amplitude of accommodation ${now.dioptres.toFixed(1)} D on ${on}` +
    `${now.method ? ` by ${now.method}` : ", method not stated"}, below the ${limits.residualAmplitudeD} D taken as the ` +
    `limit of comfort (${SMALL_STUDY}). ${history}`
  return [{ kind: "accommodation", recordKind: "accommodation", why, on, duty: "CD-077" }]
}

function nearAcuityConcern({ eye, now, on, before }: Compared<number>, limits: ComfortLimits) {
  if (!before) return []
  const worse = now - before.value
  if (worse < limits.nearLossLogMAR - SLACK) return []
  const why =
    `${capitalised(eye)} near acuity ${now.toFixed(2)} logMAR on ${on}, ${worse.toFixed(2)} worse than ` +
    `${before.value.toFixed(2)} on ${before.on} before the drops. A loss of ${limits.nearLossLogMAR} or more is looked into ` +
    `(common practice, no source).`
  return [{ kind: "near-acuity", recordKind: "near-acuity", why, on, duty: "CD-077" }]
}
