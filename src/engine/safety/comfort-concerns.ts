import type { EyeExamination, SymptomKind, Visit } from "../course.js"
import { msg, say } from "../say.js"
import { capitalised, fixed, inDigits } from "../words.js"
import type { ComfortLimits } from "./comfort-limits.js"
import { type Compared, compared, SLACK } from "./compared.js"
import type { RaisedConcern } from "./raised-concern.js"

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

const SYMPTOMS: Readonly<Record<SymptomKind, string>> = {
  "light-sensitivity": msg("light sensitivity"),
  "near-blur": msg("near blur"),
  stinging: msg("stinging"),
  redness: msg("redness"),
  itching: msg("itching"),
  headache: msg("headache"),
  other: msg("other|symptom"),
}

/** Symptoms of any child from the grade that counts, beside what was there before the drops. */
export function symptomConcerns({ visit, before, limits }: Looked): readonly RaisedConcern[] {
  const asked = before.findLast(({ symptoms, date }) => symptoms !== undefined && date < visit.date)
  return (visit.symptoms ?? [])
    .filter(({ grade }) => grade >= limits.symptomGrade)
    .map(({ kind, grade }) => {
      const values = { symptom: capitalised(say(SYMPTOMS[kind])), grade, date: visit.date }
      const why = asked
        ? say("{symptom} grade {grade} of 3 on {date}; before the drops, on {day}, grade {earlier}.", {
            ...values,
            day: asked.date,
            earlier: asked.symptoms?.find((symptom) => symptom.kind === kind)?.grade ?? 0,
          })
        : say("{symptom} grade {grade} of 3 on {date}.", values)
      return { kind: "symptom", recordKind: kind, why, on: visit.date, duty: "CD-075" }
    })
}

function pupilConcern({ eye, now, on, before }: Compared<number>, limits: ComfortLimits) {
  if (!before) return []
  const widerMm = now - before.value
  if (widerMm < limits.pupilWideningMm - SLACK) return []
  const why = say(
    "{eye, select, right {Right photopic pupil} other {Left photopic pupil}} {now} mm on {on}, {wider} mm wider than {before} mm on {day} before the drops. The limit of comfort taken is {limit} mm (one small study, n = 12, known from a news summary only; its 3 mm is a difference between the eyes after drops in one eye); two measurements of one pupil may differ by {retest} mm.",
    {
      eye,
      now: fixed(now, 1),
      on,
      wider: fixed(widerMm, 1),
      before: fixed(before.value, 1),
      day: before.on,
      limit: inDigits(limits.pupilWideningMm),
      retest: inDigits(limits.pupilRetestMm),
    },
  )
  return [{ kind: "pupil", recordKind: "pupil", why, on, duty: "CD-077" }]
}

function accommodationConcern(
  { eye, now, on, before }: Compared<NonNullable<EyeExamination["accommodation"]>>,
  limits: ComfortLimits,
) {
  if (now.dioptres >= limits.residualAmplitudeD) return []
  const isComparable = before && now.method !== undefined && now.method === before.value.method
  const history = !before
    ? say("It was not measured before the drops.")
    : isComparable
      ? say("It was {before} D on {day} before the drops, by the same method.", {
          before: fixed(before.value.dioptres, 1),
          day: before.on,
        })
      : say("The one on {day} before the drops is not compared: the method is another or not stated.", {
          day: before.on,
        })
  const low = say(
    "{eye, select, right {Right amplitude of accommodation} other {Left amplitude of accommodation}} {now} D on {on}{method, select, push-up { by push-up} retinoscopy { by retinoscopy} other {, method not stated}}, below the {limit} D taken as the limit of comfort (one small study, n = 12, known from a news summary only).",
    {
      eye,
      now: fixed(now.dioptres, 1),
      on,
      method: now.method ?? "none",
      limit: inDigits(limits.residualAmplitudeD),
    },
  )
  return [
    { kind: "accommodation", recordKind: "accommodation", why: `${low} ${history}`, on, duty: "CD-077" },
  ]
}

function nearAcuityConcern({ eye, now, on, before }: Compared<number>, limits: ComfortLimits) {
  if (!before) return []
  const worse = now - before.value
  if (worse < limits.nearLossLogMAR - SLACK) return []
  const why = say(
    "{eye, select, right {Right near acuity} other {Left near acuity}} {now} logMAR on {on}, {worse} worse than {before} on {day} before the drops. A loss of {limit} or more is looked into (common practice, no source).",
    {
      eye,
      now: fixed(now),
      on,
      worse: fixed(worse),
      before: fixed(before.value),
      day: before.on,
      limit: inDigits(limits.nearLossLogMAR),
    },
  )
  return [{ kind: "near-acuity", recordKind: "near-acuity", why, on, duty: "CD-077" }]
}
