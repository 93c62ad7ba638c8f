import { type CalendarDate, EYES, type EyeExamination, type Visit } from "../course.js"
import { capitalised } from "../words.js"
import type { ComfortLimits } from "./comfort-limits.js"
import { type Compared, compared, SLACK } from "./compared.js"
import type { RaisedConcern } from "./raised-concern.js"

/**
 * Rules of which the evidence holds the principle or less: each is off until a clinician of the practice turns its duty
 * on, and then applies its figure, which was read as something else than a rule for referral.
 */
export const SWITCHED_RULES = [
  {
    duty: "CD-118",
    what: "intraocular pressure",
    figure: "21 mmHg or more, or more than 5 mmHg between the eyes",
    why: "21 mmHg is the entry limit of a trial, seen in a secondary list; 5 mmHg was read in an abstract",
  },
  {
    duty: "CD-119",
    what: "distance acuity",
    figure: "worse than 0.20 logMAR",
    why: "0.20 logMAR is the entry limit of a trial, seen in a secondary list; a figure for a loss was not read",
  },
  {
    duty: "CD-097",
    what: "return to the values before the drops after a stop",
    figure: "pupil within 0.25 mm, amplitude within 2.8 D by the same method, near acuity within 0.2 logMAR",
    why: "no source was read for this check; the figures are errors of measurement and common practice",
  },
] as const

export type Switches = Readonly<Record<string, boolean>>

export const isOn = (switches: Switches, duty: (typeof SWITCHED_RULES)[number]["duty"]): boolean =>
  switches[duty] === true

interface Looked {
  readonly visit: Visit
  readonly before: readonly Visit[]
  /** First day without drops, when they have been stopped. */
  readonly stopped: CalendarDate | null
  readonly limits: ComfortLimits
  readonly switches: Switches
}

/** What the rules that the practice has turned on find at the visit. */
export function switchedConcerns({ visit, before, stopped, limits, switches }: Looked) {
  const isOff = stopped !== null && visit.date >= stopped
  return [
    ...(isOn(switches, "CD-118") ? pressureConcerns(visit, limits) : []),
    ...(isOn(switches, "CD-119") ? distanceConcerns(visit, limits) : []),
    ...(isOn(switches, "CD-097") && isOff ? washoutConcerns({ visit, before, limits }) : []),
  ]
}

function pressureConcerns(visit: Visit, limits: ComfortLimits): readonly RaisedConcern[] {
  const read = EYES.flatMap((eye) => {
    const mmHg = visit[eye]?.intraocularPressure?.mmHg
    return mmHg === undefined ? [] : [{ eye, mmHg }]
  })
  const figures = read.map(({ eye, mmHg }) => `${eye} ${mmHg} mmHg`).join(", ")
  const apart = read.length === 2 ? Math.abs(read[0]!.mmHg - read[1]!.mmHg) : 0
  const reasons = [
    ...(read.some(({ mmHg }) => mmHg >= limits.pressureMmHg)
      ? [`${limits.pressureMmHg} mmHg and more is looked into (entry limit of a trial, secondary)`]
      : []),
    ...(apart > limits.pressureDifferenceMmHg + SLACK
      ? [
          `the eyes differ by ${Number(apart.toFixed(1))} mmHg, and more than ${limits.pressureDifferenceMmHg} is looked into ` +
            "(one study, n = 578, abstract)",
        ]
      : []),
  ]
  if (reasons.length === 0) return []
  const why = `Intraocular pressure on ${visit.date}: ${figures}; ${reasons.join("; ")}.`
  return [
    {
      kind: "intraocular-pressure",
      recordKind: "intraocular-pressure",
      why,
      on: visit.date,
      duty: "CD-118",
    },
  ]
}

function distanceConcerns(visit: Visit, limits: ComfortLimits): readonly RaisedConcern[] {
  return EYES.flatMap((eye) => {
    const logMAR = visit[eye]?.acuity?.distanceLogMAR
    if (logMAR === undefined || logMAR <= limits.distanceLogMAR + SLACK) return []
    const why =
      `${capitalised(eye)} distance acuity ${logMAR.toFixed(2)} logMAR on ${visit.date}, worse than ` +
      `${limits.distanceLogMAR.toFixed(2)} (entry limit of a trial, secondary), if it was taken with the best correction.`
    return [{ kind: "distance-acuity", recordKind: "distance-acuity", why, on: visit.date, duty: "CD-119" }]
  })
}

function washoutConcerns({
  visit,
  before,
  limits,
}: Pick<Looked, "visit" | "before" | "limits">): readonly RaisedConcern[] {
  const compare = <T>(value: (eye: EyeExamination) => T | undefined) => compared({ visit, before, value })
  const found = [
    ...compare((eye) => eye.pupil?.photopic).flatMap((pupil) =>
      changed(pupil, {
        by: (pupil.before ? pupil.now - pupil.before.value : 0) - limits.pupilRetestMm,
        words: (value) => `photopic pupil ${value.toFixed(1)} mm`,
      }),
    ),
    ...compare((eye) => eye.accommodation).flatMap((amplitude) => {
      const { before: baseline, now } = amplitude
      const isSame = baseline && now.method !== undefined && now.method === baseline.value.method
      return changed(amplitude, {
        by: (isSame ? baseline.value.dioptres - now.dioptres : 0) - limits.amplitudeOverDayD,
        words: (value) => `amplitude of accommodation ${value.dioptres.toFixed(1)} D`,
      })
    }),
    ...compare((eye) => eye.acuity?.nearLogMAR).flatMap((near) =>
      changed(near, {
        by: (near.before ? near.now - near.before.value : 0) - limits.nearLossLogMAR,
        words: (value) => `near acuity ${value.toFixed(2)} logMAR`,
      }),
    ),
  ]
  return found.map((why) => ({ kind: "washout", recordKind: "washout", why, on: visit.date, duty: "CD-097" }))
}

function changed<T>(
  { eye, now, on, before }: Compared<T>,
  { by, words }: { readonly by: number; readonly words: (value: T) => string },
): readonly string[] {
  if (!before || by <= SLACK) return []
  return [
    `${capitalised(eye)} ${words(now)} on ${on}, after the stop, has not come back to ${words(before.value)} of ${before.on} ` +
      "before the drops (further than the error of measurement; no source for this check).",
  ]
}
