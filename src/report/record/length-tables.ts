import type { Visit } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { NOTHING, recorded, text, yesOrNo } from "./figures.js"
import type { RecordTable } from "./record-table.js"
import { rowsOf } from "./rows-of-eyes.js"
import { inWords, LENGTH_METHOD_WORDS } from "./vocabulary.js"

/** The lengths that the course counts with, and every single reading that an instrument sent for them. */
export const lengthTables = (visits: readonly Visit[]): readonly RecordTable[] => [
  lengths(visits),
  readings(visits),
]

function lengths(visits: readonly Visit[]): RecordTable {
  return {
    title: say("Axial length"),
    head: [
      say("Date"),
      say("Eye"),
      say("Length, mm"),
      say("Readings"),
      say("Signal to noise"),
      say("Spread (SD), mm"),
      say("Method"),
      say("Instrument"),
    ],
    rows: rowsOf(visits, ({ axialLength: length }) =>
      length === undefined
        ? []
        : [
            [
              recorded(length.mm, 2),
              recorded(length.readings),
              recorded(length.signalToNoise),
              recorded(length.sdMm),
              inWords(LENGTH_METHOD_WORDS, length.method) ?? NOTHING,
              text(length.device),
            ],
          ],
    ),
    figures: [2, 3, 4, 5],
  }
}

function readings(visits: readonly Visit[]): RecordTable {
  return {
    title: say("Every reading of the length"),
    head: [
      say("Date"),
      say("Eye"),
      say("Reading"),
      say("Length, mm"),
      say("Signal to noise"),
      say("Marks set by hand"),
    ],
    rows: rowsOf(visits, ({ axialLength }) =>
      (axialLength?.each ?? []).map(({ mm, signalToNoise, byHand }, index) => [
        recorded(index + 1),
        recorded(mm, 2),
        recorded(signalToNoise),
        yesOrNo(byHand),
      ]),
    ),
    figures: [2, 3, 4],
  }
}
