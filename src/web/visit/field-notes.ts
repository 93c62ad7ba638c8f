import { dateWords, fixed, rangeWords } from "../../chart/words.js"
import { ageYears } from "../../engine/calendar.js"
import type { CalendarDate, Course, Eye, EyeExamination, Visit } from "../../engine/course.js"
import { forecast } from "../../engine/forecast.js"
import { lengthSdMm } from "../../engine/growth/observations.js"
import { snellenFromLogMAR } from "../../engine/optics/acuity.js"
import { corneaRadiusRatio } from "../../engine/optics/cornea-radius-ratio.js"
import { sphericalEquivalent } from "../../engine/optics/spherical-equivalent.js"
import { say } from "../../engine/say.js"
import { logMAR } from "../../engine/units.js"
import { evidence } from "../../evidence/index.js"
import { signed } from "../format.js"
import type { CourseReading } from "../reading.js"
import { parseReadings } from "./readings.js"
import type { EyeField, VisitDraft } from "./visit-draft.js"

/** Two-sided normal quantiles of the forecast's 5 to 95 % and of the 95 % said on the page. */
const Z90 = 1.6449
const Z95 = 1.96

/** A spread of readings beyond this many SDs of one reading is worth a look (six SDs: our own cut). */
const WIDE_SPREAD_SDS = 6

/** What is said under a field: plain notes, and what deserves a second look. */
export interface FieldNote {
  readonly text: string
  readonly caution?: boolean
}

interface NoteInput {
  readonly draft: VisitDraft
  readonly visit: Visit
  readonly eye: Eye
  readonly reading: CourseReading
}

/** Change since last time and what was expected, for each field that holds something that can be read. */
export function fieldNotes(input: NoteInput): Readonly<Partial<Record<EyeField, readonly FieldNote[]>>> {
  const examination = input.visit[input.eye]
  if (!examination) return {}
  return {
    length: lengthNotes(input, examination),
    refraction: refractionNotes(input, examination),
    pupil: changeNote(input, examination, { pick: (eye) => eye.pupil?.photopic, digits: 1 }),
    accommodation: changeNote(input, examination, {
      pick: (eye) =>
        (eye.accommodation?.method ?? input.draft.accommodationMethod) === input.draft.accommodationMethod
          ? eye.accommodation?.dioptres
          : undefined,
      digits: 1,
    }),
    acuityFar: acuityNotes(input, examination, (eye) => eye.acuity?.distanceLogMAR),
    acuityNear: acuityNotes(input, examination, (eye) => eye.acuity?.nearLogMAR),
    cornea: corneaNotes(examination),
    pressure: changeNote(input, examination, { pick: (eye) => eye.intraocularPressure?.mmHg, digits: 0 }),
    pupilDim: [
      ...changeNote(input, examination, { pick: (eye) => eye.pupil?.mesopic, digits: 1 }),
      ...narrowerInTheDark(examination),
    ],
  }
}

function lengthNotes(input: NoteInput, examination: EyeExamination): readonly FieldNote[] {
  const length = examination.axialLength
  if (!length) return []
  const typed = parseReadings(input.draft[input.eye].length)
  const notes: FieldNote[] = []
  if (typed.kind === "readings" && typed.count > 1) {
    const widest = WIDE_SPREAD_SDS * evidence.growth.values.opticalReadingSdMm.value
    const wide = length.method !== "ultrasound" && typed.spread > widest
    const told = { mean: fixed(typed.mean, 2), count: typed.count, spread: fixed(typed.spread, 2) }
    notes.push({
      text: wide
        ? say("{mean} from {count} readings, spread {spread}: the readings disagree", told)
        : say("{mean} from {count} readings, spread {spread}", told),
      caution: wide,
    })
  }
  const before = lastBefore(input, (eye) => eye.axialLength?.mm)
  if (!before) return [...notes, { text: say("first length of this eye") }]
  const change = { change: signed(length.mm - before.value, 2), day: dateWords(before.date) }
  const expected = expectedLength(input, length)
  if (expected) {
    const [low, high] = [expected.low - before.value, expected.high - before.value]
    const told = { ...change, range: rangeWords({ low, high, digits: 2 }) }
    const outside = length.mm < expected.low || length.mm > expected.high
    notes.push({
      text: outside
        ? say("{change} since {day}, expected {range}: outside the expected", told)
        : say("{change} since {day}, expected {range}", told),
      caution: outside,
    })
  } else notes.push({ text: say("{change} since {day}", change) })
  const device = lastBefore(input, (eye) => eye.axialLength?.device)
  if (device && length.device && device.value !== length.device) {
    notes.push({
      text: say("another device than {device} of last time: a change of device costs certainty", {
        device: device.value,
      }),
      caution: true,
    })
  }
  return notes
}

/** 95 % range of a length measured on the draft's day, from the child's figures before it; null where none can be said. */
export function expectedLength(
  { visit, eye, reading }: Pick<NoteInput, "visit" | "eye" | "reading">,
  length: NonNullable<EyeExamination["axialLength"]>,
): { readonly low: number; readonly high: number } | null {
  const course = courseBefore(reading.course, visit.date)
  const age = ageYears({ born: course.child.born, on: visit.date })
  const ahead = forecast({
    course,
    asOf: visit.date,
    evidence,
    settings: reading.settings,
    toAgeYears: Math.min(age, evidence.growth.values.oldestAgeYears.value),
  }).eyes[eye]?.asTreated
  const [p5, p50, p95] = [ahead?.p5[0], ahead?.p50[0], ahead?.p95[0]]
  if (p5 === undefined || p50 === undefined || p95 === undefined) return null
  const half = Z95 * Math.hypot((p95 - p5) / (2 * Z90), lengthSdMm(length, evidence.growth))
  return { low: p50 - half, high: p50 + half }
}

function refractionNotes(input: NoteInput, examination: EyeExamination): readonly FieldNote[] {
  const { refraction } = examination
  if (!refraction) return []
  const now = sphericalEquivalent(refraction)
  const before = lastBefore(input, (eye) =>
    eye.refraction ? sphericalEquivalent(eye.refraction) : undefined,
  )
  const power = signed(now, 2)
  const unanswered = input.draft.cycloplegic === null
  return [
    {
      text: before
        ? say("{power} D spherical equivalent · {change} since {day}", {
            power,
            change: signed(now - before.value, 2),
            day: dateWords(before.date),
          })
        : say("{power} D spherical equivalent", { power }),
    },
    ...(unanswered ? [{ text: say("with or without cycloplegia?"), caution: true }] : []),
  ]
}

/** The ratio stands beside the radii it comes from; without a length, what it waits for. */
function corneaNotes({ axialLength, corneaRadius }: EyeExamination): readonly FieldNote[] {
  if (!corneaRadius) return []
  const radii = { flat: fixed(corneaRadius.flat, 2), steep: fixed(corneaRadius.steep, 2) }
  if (!axialLength)
    return [{ text: say("flat {flat}, steep {steep} · AL/CR once the length is entered", radii) }]
  const ratio = fixed(corneaRadiusRatio({ axialLengthMm: axialLength.mm, corneaRadius }), 2)
  return [{ text: say("flat {flat}, steep {steep} · AL/CR {ratio}", { ...radii, ratio }) }]
}

function narrowerInTheDark({ pupil }: EyeExamination): readonly FieldNote[] {
  if (pupil?.photopic === undefined || pupil.mesopic === undefined) return []
  if (pupil.mesopic >= pupil.photopic) return []
  return [{ text: say("smaller than in bright light: are the two exchanged?"), caution: true }]
}

function changeNote(
  input: NoteInput,
  examination: EyeExamination,
  { pick, digits }: { readonly pick: (eye: EyeExamination) => number | undefined; readonly digits: number },
): readonly FieldNote[] {
  const now = pick(examination)
  const before = lastBefore(input, pick)
  if (now === undefined || !before) return []
  const change = signed(now - before.value, digits)
  return [{ text: say("{change} since {day}", { change, day: dateWords(before.date) }) }]
}

function acuityNotes(
  input: NoteInput,
  examination: EyeExamination,
  pick: (eye: EyeExamination) => number | undefined,
): readonly FieldNote[] {
  const now = pick(examination)
  if (now === undefined) return []
  const shown = `${fixed(now, 2)} logMAR, ${snellenFromLogMAR({ logMAR: logMAR(now), numerator: 20 })}`
  const before = lastBefore(input, pick)
  if (!before) return [{ text: shown }]
  const told = { acuity: shown, day: dateWords(before.date) }
  if (Math.abs(now - before.value) < 0.005) return [{ text: say("{acuity} · unchanged since {day}", told) }]
  const change = signed(now - before.value, 2)
  return [{ text: say("{acuity} · {change} since {day}", { ...told, change }) }]
}

/** The latest figure of an eye before the day of the draft. */
function lastBefore<Value>(
  { reading, visit, eye }: NoteInput,
  pick: (eye: EyeExamination) => Value | undefined,
): { readonly value: Value; readonly date: CalendarDate } | null {
  const earlier = courseBefore(reading.course, visit.date).visits.toSorted((a, b) =>
    b.date.localeCompare(a.date),
  )
  for (const { date, [eye]: examination } of earlier) {
    const value = examination && pick(examination)
    if (value !== undefined) return { value, date }
  }
  return null
}

function courseBefore(course: Course, date: CalendarDate): Course {
  return { ...course, visits: course.visits.filter((visit) => visit.date < date) }
}
