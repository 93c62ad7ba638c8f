import type { PracticeSettings } from "../engine/assessment.js"
import type { CalendarDate, Course, TreatmentChoice } from "../engine/course.js"
import type { PracticeRules } from "../engine/practice-rules.js"
import type { Language } from "../engine/say.js"
import type { Letterhead } from "./document.js"

/** A screen has room for more than two sides; on a phone figures are drawn narrow, so that their words keep their size. */
export const READ_ON = ["paper", "screen", "phone"] as const
export type ReadOn = (typeof READ_ON)[number]

/** All that any document is made from. Whoever asks reads the record, the clock and the papers; this is only values. */
export interface DocumentInput {
  readonly course: Course
  /** The child's name as the family writes it; null where a course file has none. */
  readonly childName: string | null
  /** The practice's own number for the child. */
  readonly childNumber?: string | null | undefined
  readonly practice: { readonly name: string; readonly latitude?: number | undefined }
  readonly settings: PracticeSettings
  readonly rules: PracticeRules
  readonly today: CalendarDate
  readonly language: Language
  readonly letterhead: Letterhead
  /** The practice's template of this document in this language; the order that ships when absent. */
  readonly template?: { readonly text: string } | undefined
  /** Who signs, orders or sends: as it is printed. */
  readonly author?: string | undefined
  /** Whom a letter goes to, line by line. */
  readonly addressee?: readonly string[] | undefined
  /** For a consent or an estimate: the treatment asked about; the one in use or planned when absent. */
  readonly treatment?: TreatmentChoice | undefined
  /** For an order: which of the course's orders, from 0; the latest when absent. */
  readonly orderIndex?: number | undefined
  /** For a report of an unwanted effect: which of the course's concerns, from 0; the latest when absent. */
  readonly concernIndex?: number | undefined
  /** Months that an estimate covers. */
  readonly months?: number | undefined
  /** Where it is read; paper when absent. */
  readonly readOn?: ReadOn | undefined
  /** Where the family reads its page, for the QR code. */
  readonly familyLink?: string | undefined
}
