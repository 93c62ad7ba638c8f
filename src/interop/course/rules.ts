import { calendarDate, type DayNumber } from "../../engine/calendar.js"
import { type CalendarDate, EYES } from "../../engine/course.js"
import type { Problem } from "../../engine/problem.js"
import { say, withDecimalSign } from "../../engine/say.js"
import { dayOf, type Loose, record, records } from "./loose.js"
import { problem } from "./problem.js"
import { programmeProblems } from "./rules-programme.js"

/**
 * Rules of the course file that join two fields. They read the file as it came, before it is known to be sound, so that
 * a fault in one field does not hide a fault between two others: whatever is not readable is passed over here, because
 * the schema has already said so.
 */
export function ruleProblems(
  file: unknown,
  { today }: { readonly today?: CalendarDate | undefined },
): readonly Problem[] {
  const course = record(file)
  return [
    ...datesOutOfLife(course, today),
    ...visitsOnOneDay(course),
    ...cylindersWithoutAxis(course),
    ...treatmentsEndingEarly(course),
    ...treatmentsOverlapping(course),
    ...atropineWithoutStrength(course),
    ...bottlesOpenedEarly(course),
    ...programmeProblems(course),
  ]
}

interface Dated {
  readonly path: string
  readonly value: unknown
  readonly day: DayNumber
  readonly ahead: Ahead
}

/**
 * How far after today a date may lie: not at all for what has happened, a year for a start that is planned, any
 * distance for a planned end and for the limit printed on a bottle. The year is ours, against slips of the pen.
 */
type Ahead = "not" | "a-year" | "any"
const DAYS_AHEAD: Readonly<Record<Ahead, number>> = { not: 0, "a-year": 366, any: Number.POSITIVE_INFINITY }

function dated(course: Loose): readonly Dated[] {
  const fields: readonly (readonly [list: string, field: string, ahead: Ahead])[] = [
    ["visits", "date", "not"],
    ["treatments", "from", "a-year"],
    ["treatments", "to", "any"],
    ["supplies", "dispensed", "not"],
    ["supplies", "opened", "not"],
    ["supplies", "beyondUse", "any"],
    ["consents", "date", "not"],
    ["consents", "until", "any"],
    ["missedNights", "from", "not"],
    ["missedNights", "to", "not"],
    ["decisions", "date", "not"],
    ["concerns", "opened", "not"],
    ["concerns", "closed", "not"],
    ["orders", "date", "not"],
    ["orders", "confirmed", "not"],
    ["orders", "received", "not"],
    ["orders", "cancelled", "not"],
    ["explanations", "date", "not"],
    ["payments", "date", "not"],
  ]
  return fields.flatMap(([list, field, ahead]) =>
    records(course[list]).flatMap((item, index) => {
      const day = dayOf(item[field])
      return day === null ? [] : [{ path: `${list}[${index}].${field}`, value: item[field], day, ahead }]
    }),
  )
}

function datesOutOfLife(course: Loose, today: CalendarDate | undefined): readonly Problem[] {
  const born = record(course.child).born
  const bornDay = dayOf(born)
  const lastDay = today === undefined ? null : dayOf(today)
  const birth: readonly Dated[] =
    bornDay === null ? [] : [{ path: "child.born", value: born, day: bornDay, ahead: "not" }]
  return [...birth, ...dated(course)].flatMap(({ path, value, day, ahead }) => [
    ...(bornDay !== null && day < bornDay
      ? [
          problem({
            path,
            value,
            allowed: say("on or after the day of birth ({born})", { born: String(born) }),
          }),
        ]
      : []),
    ...(lastDay !== null && day > lastDay + DAYS_AHEAD[ahead]
      ? [
          problem({
            path,
            value,
            allowed: say("a day up to {day}", { day: calendarDate(lastDay + DAYS_AHEAD[ahead]) }),
          }),
        ]
      : []),
  ])
}

function visitsOnOneDay(course: Loose): readonly Problem[] {
  const first = new Map<DayNumber, number>()
  return records(course.visits).flatMap((visit, index) => {
    const day = dayOf(visit.date)
    if (day === null) return []
    const earlier = first.get(day)
    if (earlier === undefined) {
      first.set(day, index)
      return []
    }
    return [
      problem({
        path: `visits[${index}].date`,
        value: visit.date,
        allowed: say("a day without another visit ({other} has this one)", { other: `visits[${earlier}]` }),
      }),
    ]
  })
}

function cylindersWithoutAxis(course: Loose): readonly Problem[] {
  return records(course.visits).flatMap((visit, index) =>
    EYES.flatMap((eye) =>
      prescriptionsOf(record(visit[eye])).flatMap(([place, { cylinder, axis }]) => {
        if (typeof cylinder !== "number" || cylinder === 0 || (axis !== undefined && axis !== null)) return []
        return [
          problem({
            path: `visits[${index}].${eye}.${place}.axis`,
            value: axis,
            allowed: say("a number from 0 to 180 degrees, since the cylinder is {cylinder} D", {
              cylinder: withDecimalSign(String(cylinder)),
            }),
          }),
        ]
      }),
    ),
  )
}

const prescriptionsOf = (eye: Loose): readonly (readonly [place: string, prescription: Loose])[] => [
  ["refraction", record(eye.refraction)],
  ["spectaclesWorn", record(eye.spectaclesWorn)],
  ...records(eye.otherRefractions).map((other, index) => [`otherRefractions[${index}]`, other] as const),
]

interface Span {
  readonly index: number
  readonly kind: unknown
  /** Absent for both. */
  readonly eye: unknown
  readonly from: DayNumber
  readonly to: DayNumber
  readonly toText: unknown
}

function spans(course: Loose): readonly Span[] {
  return records(course.treatments).flatMap((treatment, index) => {
    const from = dayOf(treatment.from)
    const toText = treatment.to
    const to = toText === undefined || toText === null ? Number.POSITIVE_INFINITY : dayOf(toText)
    return from === null || to === null
      ? []
      : [{ index, kind: treatment.kind, eye: treatment.eye ?? undefined, from, to, toText }]
  })
}

function treatmentsEndingEarly(course: Loose): readonly Problem[] {
  return spans(course)
    .filter(({ from, to }) => to <= from)
    .map(({ index, toText }) =>
      problem({
        path: `treatments[${index}].to`,
        value: toText,
        allowed: say("after the day it starts ({from})", {
          from: String(records(course.treatments)[index]?.from),
        }),
      }),
    )
}

function treatmentsOverlapping(course: Loose): readonly Problem[] {
  const sound = spans(course)
    .filter(({ from, to }) => to > from)
    .toSorted((a, b) => a.from - b.from || a.index - b.index)
  return sound.flatMap((later, place) => {
    const earlier = sound
      .slice(0, place)
      .find(
        ({ kind, eye, to }) =>
          typeof kind === "string" && kind === later.kind && shareAnEye(eye, later.eye) && later.from < to,
      )
    if (earlier === undefined) return []
    const other = `treatments[${earlier.index}]`
    return [
      problem({
        path: `treatments[${later.index}].from`,
        value: records(course.treatments)[later.index]?.from,
        allowed:
          earlier.to === Number.POSITIVE_INFINITY
            ? say("on or after the end of {other}, which is of the same kind and has no end", { other })
            : say("on or after the end of {other}, which is of the same kind and ends {end}", {
                other,
                end: String(earlier.toText),
              }),
      }),
    ]
  })
}

const shareAnEye = (a: unknown, b: unknown) => a === undefined || b === undefined || a === b

function atropineWithoutStrength(course: Loose): readonly Problem[] {
  return records(course.treatments).flatMap(({ kind, concentrationPercent }, index) =>
    kind === "atropine" && (concentrationPercent === undefined || concentrationPercent === null)
      ? [
          problem({
            path: `treatments[${index}].concentrationPercent`,
            value: concentrationPercent,
            allowed: say("a number above 0 and up to 1.5 % w/v, since the treatment is atropine"),
          }),
        ]
      : [],
  )
}

function bottlesOpenedEarly(course: Loose): readonly Problem[] {
  return records(course.supplies).flatMap(({ dispensed, opened }, index) => {
    const [dispensedDay, openedDay] = [dayOf(dispensed), dayOf(opened)]
    if (dispensedDay === null || openedDay === null || openedDay >= dispensedDay) return []
    return [
      problem({
        path: `supplies[${index}].opened`,
        value: opened,
        allowed: say("on or after the day it was dispensed ({dispensed})", { dispensed: String(dispensed) }),
      }),
    ]
  })
}
