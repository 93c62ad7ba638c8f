import type { Refraction, Visit } from "../../engine/course.js"
import { sphericalEquivalent } from "../../engine/optics/spherical-equivalent.js"
import { say } from "../../engine/say.js"
import { NOTHING, recorded, recordedPower, text, yesOrNo } from "./figures.js"
import type { RecordTable } from "./record-table.js"
import { type Row, rowsOf } from "./rows-of-eyes.js"
import { inWords, REFRACTION_METHOD_WORDS } from "./vocabulary.js"

/** The refraction that the course counts with, further ones of the same day, and the glasses the child came with. */
export const refractionTables = (visits: readonly Visit[]): readonly RecordTable[] => [
  {
    title: say("Refraction|table"),
    head: refractionHead(),
    rows: rowsOf(visits, ({ refraction }) => (refraction === undefined ? [] : [refractionRow(refraction)])),
    figures: REFRACTION_FIGURES,
  },
  {
    title: say("Further refractions of the same day"),
    head: refractionHead(),
    rows: rowsOf(visits, ({ otherRefractions = [] }) => otherRefractions.map(refractionRow)),
    figures: REFRACTION_FIGURES,
  },
  glassesWorn(visits),
]

const refractionHead = (): readonly string[] => [
  say("Date"),
  say("Eye"),
  say("Sphere, D"),
  say("Cylinder, D"),
  say("Axis, °"),
  say("SER, D"),
  say("Vertex, mm"),
  say("Cycloplegia"),
  say("Method"),
  say("Instrument"),
]
const REFRACTION_FIGURES = [2, 3, 4, 5, 6]

const refractionRow = (refraction: Refraction): Row => [
  recordedPower(refraction.sphere),
  recordedPower(refraction.cylinder),
  recorded(refraction.axis),
  recordedPower(Number(sphericalEquivalent(refraction).toFixed(4))),
  recorded(refraction.vertexDistanceMm),
  yesOrNo(refraction.cycloplegic),
  inWords(REFRACTION_METHOD_WORDS, refraction.method) ?? NOTHING,
  text(refraction.device),
]

function glassesWorn(visits: readonly Visit[]): RecordTable {
  return {
    title: say("Glasses worn to the visit"),
    head: [
      say("Date"),
      say("Eye"),
      say("Sphere, D"),
      say("Cylinder, D"),
      say("Axis, °"),
      say("Addition, D"),
      say("Prism"),
    ],
    rows: rowsOf(visits, ({ spectaclesWorn: worn }) =>
      worn === undefined
        ? []
        : [
            [
              recordedPower(worn.sphere),
              recordedPower(worn.cylinder),
              recorded(worn.axis),
              recordedPower(worn.addD),
              text(worn.prism),
            ],
          ],
    ),
    figures: [2, 3, 4, 5],
  }
}
