import type { Dilation, Visit } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { NOTHING, recorded, text, yesOrNo } from "./figures.js"
import type { RecordTable } from "./record-table.js"
import { rowsOf } from "./rows-of-eyes.js"
import { EYE_DROP_WORDS, inWords, LENS_WORDS } from "./vocabulary.js"

/** What was found at the front of the eye: the cornea, the pupil with what widened it, the lens. */
export const frontTables = (visits: readonly Visit[]): readonly RecordTable[] => [
  cornea(visits),
  pupilAndLens(visits),
]

function cornea(visits: readonly Visit[]): RecordTable {
  return {
    title: say("Cornea"),
    head: [
      say("Date"),
      say("Eye"),
      say("Flat radius, mm"),
      say("Steep radius, mm"),
      say("Flat meridian, °"),
      say("Steep meridian, °"),
      say("Flat power, D"),
      say("Steep power, D"),
      say("Instrument"),
    ],
    rows: rowsOf(visits, ({ corneaRadius: found }) =>
      found === undefined
        ? []
        : [
            [
              recorded(found.flat, 2),
              recorded(found.steep, 2),
              recorded(found.flatAxis),
              recorded(found.steepAxis),
              recorded(found.flatD, 2),
              recorded(found.steepD, 2),
              text(found.device),
            ],
          ],
    ),
    figures: [2, 3, 4, 5, 6, 7],
  }
}

function pupilAndLens(visits: readonly Visit[]): RecordTable {
  return {
    title: say("Pupil and lens"),
    head: [
      say("Date"),
      say("Eye"),
      say("Pupil in daylight, mm"),
      say("Pupil in dim light, mm"),
      say("Pupil widened"),
      say("Pupil when widened, mm"),
      say("Drops given"),
      say("Lens of the eye"),
    ],
    rows: rowsOf(visits, ({ pupil, dilation, lensStatus }) =>
      pupil === undefined && dilation === undefined && lensStatus === undefined
        ? []
        : [
            [
              recorded(pupil?.photopic, 1),
              recorded(pupil?.mesopic, 1),
              yesOrNo(dilation?.dilated),
              recorded(dilation?.pupilMm, 1),
              dropsGiven(dilation),
              inWords(LENS_WORDS, lensStatus) ?? NOTHING,
            ],
          ],
    ),
    figures: [2, 3, 5],
  }
}

const dropsGiven = (dilation: Dilation | undefined): string =>
  text(
    dilation?.drops
      ?.map(({ drop, concentrationPercent }) =>
        concentrationPercent === undefined
          ? say(EYE_DROP_WORDS[drop])
          : `${say(EYE_DROP_WORDS[drop])} ${say("{percent} %", { percent: recorded(concentrationPercent) })}`,
      )
      .join("; "),
  )
