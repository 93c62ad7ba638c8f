import type { Concern } from "../assessment.js"
import type { CalendarDate } from "../course.js"

/** A concern with what raised it: its day, what tells it from others of its kind, the duty of the evidence behind it. */
export interface RaisedConcern extends Concern {
  /** Day of the visit that raised it. */
  readonly on: CalendarDate
  /** The kind a record of it is kept under: the symptom for symptoms, else the kind itself. */
  readonly recordKind: string
  /** Id in `clinical/duties.json`, such as CD-077. */
  readonly duty: string
}

export const RED_FLAG = "red-flag"
