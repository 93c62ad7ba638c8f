import { type CalendarDate, EYES, type Eye, type EyeExamination, type Visit } from "../course.js"
import { correctedDistanceLogMAR } from "../optics/corrected-acuity.js"
import { msg, say } from "../say.js"
import { fixed, inDigits } from "../words.js"
import type { ComfortLimits } from "./comfort-limits.js"
import { type Compared, compared, SLACK } from "./compared.js"
import { inRow } from "./in-row.js"
import type { RaisedConcern } from "./raised-concern.js"

/**
 * Rules of which the evidence holds the principle or less: each is off until a clinician of the practice turns its duty
 * on, and then applies its figure, which was read as something else than a rule for referral. Its texts are said by whoever
 * shows them.
 */
export const SWITCHED_RULES = [
  {
    duty: "CD-118",
    what: msg("intraocular pressure"),
    figure: msg("21 mmHg or more, or more than 5 mmHg between the eyes"),
    why: msg(
      "21 mmHg is the entry limit of a trial, seen in a secondary list; 5 mmHg was read in an abstract",
    ),
  },
  {
    duty: "CD-119",
    what: msg("distance acuity"),
    figure: msg("worse than 0.20 logMAR"),
    why: msg(
      "0.20 logMAR is the entry limit of a trial, seen in a secondary list; a figure for a loss was not read",
    ),
  },
  {
    duty: "CD-097",
    what: msg("return to the values before the drops after a stop"),
    figure: msg(
      "pupil within 0.25 mm, amplitude within 2.8 D by the same method, near acuity within 0.2 logMAR",
    ),
    why: msg("no source was read for this check; the figures are errors of measurement and common practice"),
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
  const apart = read.length === 2 ? Math.abs(read[0]!.mmHg - read[1]!.mmHg) : 0
  const isHigh = read.some(({ mmHg }) => mmHg >= limits.pressureMmHg)
  const isApart = apart > limits.pressureDifferenceMmHg + SLACK
  if (!isHigh && !isApart) return []
  const why = pressureWhy({
    isHigh,
    isApart,
    on: visit.date,
    figures: inRow(read.map(pressureInWords)),
    limit: inDigits(limits.pressureMmHg),
    apart: inDigits(Number(apart.toFixed(1))),
    most: inDigits(limits.pressureDifferenceMmHg),
  })
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

/** @example pressureInWords({ eye: "right", mmHg: 22 }) // => "right 22 mmHg" */
export const pressureInWords = ({ eye, mmHg }: { readonly eye: Eye; readonly mmHg: number }): string =>
  say("{eye, select, right {right {mmHg} mmHg} other {left {mmHg} mmHg}}", { eye, mmHg: inDigits(mmHg) })

function pressureWhy({
  isHigh,
  isApart,
  ...values
}: Readonly<Record<"on" | "figures" | "limit" | "apart" | "most", string>> & {
  readonly isHigh: boolean
  readonly isApart: boolean
}): string {
  if (!isApart) {
    return say(
      "Intraocular pressure on {on}: {figures}; {limit} mmHg and more is looked into (entry limit of a trial, secondary).",
      values,
    )
  }
  return isHigh
    ? say(
        "Intraocular pressure on {on}: {figures}; {limit} mmHg and more is looked into (entry limit of a trial, secondary); the eyes differ by {apart} mmHg, and more than {most} is looked into (one study, n = 578, abstract).",
        values,
      )
    : say(
        "Intraocular pressure on {on}: {figures}; the eyes differ by {apart} mmHg, and more than {most} is looked into (one study, n = 578, abstract).",
        values,
      )
}

function distanceConcerns(visit: Visit, limits: ComfortLimits): readonly RaisedConcern[] {
  return EYES.flatMap((eye) => {
    const logMAR = correctedDistanceLogMAR(visit[eye])
    if (logMAR === undefined || logMAR <= limits.distanceLogMAR + SLACK) return []
    const why = say(
      "{eye, select, right {Right distance acuity} other {Left distance acuity}} {now} logMAR on {on}, worse than {limit} (entry limit of a trial, secondary), if it was taken with the best correction.",
      { eye, now: fixed(logMAR), on: visit.date, limit: fixed(limits.distanceLogMAR) },
    )
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
    ...compare((eye) => eye.pupil?.photopic)
      .filter(({ now, before: was }) => (was ? now - was.value : 0) - limits.pupilRetestMm > SLACK)
      .map((pupil) =>
        say(
          "{eye, select, right {Right photopic pupil} other {Left photopic pupil}} {now} mm on {on}, after the stop, has not come back to photopic pupil {before} mm of {day} before the drops (further than the error of measurement; no source for this check).",
          figuresOf(pupil, (mm) => fixed(mm, 1)),
        ),
      ),
    ...compare((eye) => eye.accommodation)
      .filter(({ now, before: was }) => {
        const isSame = was && now.method !== undefined && now.method === was.value.method
        return (isSame ? was.value.dioptres - now.dioptres : 0) - limits.amplitudeOverDayD > SLACK
      })
      .map((amplitude) =>
        say(
          "{eye, select, right {Right amplitude of accommodation} other {Left amplitude of accommodation}} {now} D on {on}, after the stop, has not come back to amplitude of accommodation {before} D of {day} before the drops (further than the error of measurement; no source for this check).",
          figuresOf(amplitude, ({ dioptres }) => fixed(dioptres, 1)),
        ),
      ),
    ...compare((eye) => eye.acuity?.nearLogMAR)
      .filter(({ now, before: was }) => (was ? now - was.value : 0) - limits.nearLossLogMAR > SLACK)
      .map((near) =>
        say(
          "{eye, select, right {Right near acuity} other {Left near acuity}} {now} logMAR on {on}, after the stop, has not come back to near acuity {before} logMAR of {day} before the drops (further than the error of measurement; no source for this check).",
          figuresOf(near, (logMAR) => fixed(logMAR)),
        ),
      ),
  ]
  return found.map((why) => ({ kind: "washout", recordKind: "washout", why, on: visit.date, duty: "CD-097" }))
}

/** Only what has a value before the drops is ever further from it than the error of measurement. */
const figuresOf = <T>({ eye, now, on, before }: Compared<T>, words: (value: T) => string) => ({
  eye,
  now: words(now),
  on,
  before: before === null ? "" : words(before.value),
  day: before?.on ?? "",
})
