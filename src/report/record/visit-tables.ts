import { type Course, EYES, type Eye, type EyeExamination, type Visit } from "../../engine/course.js"
import { sphericalEquivalent } from "../../engine/optics/spherical-equivalent.js"
import { say } from "../../engine/say.js"
import { ageWritten } from "./age.js"
import { day, NOTHING, recorded, recordedPower, text, yesOrNo } from "./figures.js"
import type { RecordTable } from "./record-table.js"
import {
  ACCOMMODATION_METHOD_WORDS,
  inWords,
  LENGTH_METHOD_WORDS,
  REFRACTION_METHOD_WORDS,
} from "./vocabulary.js"

/** Every visit and every figure of it, a table for each kind of figure, a row for each eye that has one. */
export function visitTables(course: Course): readonly RecordTable[] {
  const visits = inOrder(course.visits)
  return [visitList(course, visits), lengths(visits), refractions(visits), front(visits), functions(visits)]
}

const inOrder = (visits: readonly Visit[]): readonly Visit[] =>
  visits.toSorted((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))

function visitList({ child: { born } }: Course, visits: readonly Visit[]): RecordTable {
  return {
    title: say("Visits"),
    head: [say("Date"), say("Age"), say("Where the figures come from")],
    rows: visits.map(({ date, from }) => [
      day(date),
      ageWritten({ born, on: date }),
      from === undefined ? say("measured here") : from,
    ]),
  }
}

const eyeName = (eye: Eye): string => say("{eye, select, right {right eye} other {left eye}}", { eye })

/** A row for every eye of every visit of which there is something to write. */
function rowsOf(
  visits: readonly Visit[],
  cells: (eye: EyeExamination) => readonly string[] | null,
): readonly (readonly string[])[] {
  return visits.flatMap((visit) =>
    EYES.flatMap((side) => {
      const eye = visit[side]
      const found = eye === undefined ? null : cells(eye)
      return found === null ? [] : [[day(visit.date), eyeName(side), ...found]]
    }),
  )
}

function lengths(visits: readonly Visit[]): RecordTable {
  return {
    title: say("Axial length"),
    head: [say("Date"), say("Eye"), say("Length, mm"), say("Readings"), say("Method"), say("Instrument")],
    rows: rowsOf(visits, ({ axialLength: length }) =>
      length === undefined
        ? null
        : [
            recorded(length.mm, 2),
            recorded(length.readings),
            inWords(LENGTH_METHOD_WORDS, length.method) ?? NOTHING,
            text(length.device),
          ],
    ),
    figures: [2, 3],
  }
}

function refractions(visits: readonly Visit[]): RecordTable {
  return {
    title: say("Refraction|table"),
    head: [
      say("Date"),
      say("Eye"),
      say("Sphere, D"),
      say("Cylinder, D"),
      say("Axis, °"),
      say("SER, D"),
      say("Cycloplegia"),
      say("Method"),
    ],
    rows: rowsOf(visits, ({ refraction }) =>
      refraction === undefined
        ? null
        : [
            recordedPower(refraction.sphere),
            recordedPower(refraction.cylinder),
            recorded(refraction.axis),
            recordedPower(Number(sphericalEquivalent(refraction).toFixed(4))),
            yesOrNo(refraction.cycloplegic),
            inWords(REFRACTION_METHOD_WORDS, refraction.method) ?? NOTHING,
          ],
    ),
    figures: [2, 3, 4, 5],
  }
}

function front(visits: readonly Visit[]): RecordTable {
  return {
    title: say("Cornea and pupil"),
    head: [
      say("Date"),
      say("Eye"),
      say("Flat radius, mm"),
      say("Steep radius, mm"),
      say("Pupil in daylight, mm"),
      say("Pupil in dim light, mm"),
    ],
    rows: rowsOf(visits, ({ corneaRadius, pupil }) =>
      corneaRadius === undefined && pupil === undefined
        ? null
        : [
            recorded(corneaRadius?.flat, 2),
            recorded(corneaRadius?.steep, 2),
            recorded(pupil?.photopic, 1),
            recorded(pupil?.mesopic, 1),
          ],
    ),
    figures: [2, 3, 4, 5],
  }
}

function functions(visits: readonly Visit[]): RecordTable {
  return {
    title: say("Acuity, accommodation and pressure"),
    head: [
      say("Date"),
      say("Eye"),
      say("Distance, logMAR"),
      say("Near, logMAR"),
      say("Accommodation, D"),
      say("Method"),
      say("Pressure, mmHg"),
    ],
    rows: rowsOf(visits, ({ acuity, accommodation, intraocularPressure }) =>
      acuity === undefined && accommodation === undefined && intraocularPressure === undefined
        ? null
        : [
            recorded(acuity?.distanceLogMAR, 2),
            recorded(acuity?.nearLogMAR, 2),
            recorded(accommodation?.dioptres, 1),
            inWords(ACCOMMODATION_METHOD_WORDS, accommodation?.method) ?? NOTHING,
            recorded(intraocularPressure?.mmHg),
          ],
    ),
    figures: [2, 3, 4, 6],
  }
}
