import { EYES, type Eye, type EyeExamination, type Visit } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { day } from "./figures.js"

export const eyeName = (eye: Eye): string => say("{eye, select, right {right eye} other {left eye}}", { eye })

export type Row = readonly string[]

/** As many rows as there is something to write of every eye of every visit, each with its date and eye in front. */
export function rowsOf(
  visits: readonly Visit[],
  cells: (eye: EyeExamination) => readonly Row[],
): readonly Row[] {
  return visits.flatMap((visit) =>
    EYES.flatMap((side) => {
      const eye = visit[side]
      return eye === undefined ? [] : cells(eye).map((found) => [day(visit.date), eyeName(side), ...found])
    }),
  )
}
