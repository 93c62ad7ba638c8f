import type { Course, Visit } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { ageWritten } from "./age.js"
import { day, NOTHING, recorded, text } from "./figures.js"
import { frontTables } from "./front-tables.js"
import { lengthTables } from "./length-tables.js"
import type { RecordTable } from "./record-table.js"
import { refractionTables } from "./refraction-tables.js"
import { rowsOf } from "./rows-of-eyes.js"
import {
  ACCOMMODATION_METHOD_WORDS,
  ACUITY_CORRECTION_WORDS,
  inWords,
  SOURCE_KIND_WORDS,
} from "./vocabulary.js"

/** Every visit and every figure of it, a table for each kind of figure, a row for each eye that has one. */
export function visitTables(course: Course): readonly RecordTable[] {
  const visits = inOrder(course.visits)
  return [
    visitList(course, visits),
    ...lengthTables(visits),
    ...refractionTables(visits),
    ...frontTables(visits),
    functions(visits),
    sources(visits),
  ]
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

function functions(visits: readonly Visit[]): RecordTable {
  return {
    title: say("Acuity, accommodation and pressure"),
    head: [
      say("Date"),
      say("Eye"),
      say("Distance, logMAR"),
      say("Distance seen with"),
      say("Near, logMAR"),
      say("Accommodation, D"),
      say("Method"),
      say("Pressure, mmHg"),
    ],
    rows: rowsOf(visits, ({ acuity, accommodation, intraocularPressure }) =>
      acuity === undefined && accommodation === undefined && intraocularPressure === undefined
        ? []
        : [
            [
              recorded(acuity?.distanceLogMAR, 2),
              inWords(ACUITY_CORRECTION_WORDS, acuity?.distanceCorrection) ?? NOTHING,
              recorded(acuity?.nearLogMAR, 2),
              recorded(accommodation?.dioptres, 1),
              inWords(ACCOMMODATION_METHOD_WORDS, accommodation?.method) ?? NOTHING,
              recorded(intraocularPressure?.mmHg),
            ],
          ],
    ),
    figures: [2, 4, 5, 7],
  }
}

/** Files that figures were taken from, each by what tells it from all others. */
function sources(visits: readonly Visit[]): RecordTable {
  return {
    title: say("Files the figures were taken from"),
    head: [say("Date"), say("Kind|source"), say("Identifier"), say("Instrument")],
    rows: visits.flatMap(({ date, sources: files = [] }) =>
      files.map(({ kind, id, device }) => [
        day(date),
        inWords(SOURCE_KIND_WORDS, kind) ?? NOTHING,
        text(id),
        text(device),
      ]),
    ),
  }
}
