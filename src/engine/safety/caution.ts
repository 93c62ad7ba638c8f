import type { CalendarDate, Course } from "../course.js"
import { msg } from "../say.js"

/** What the source says of a yes: not given, a specialist decides, or given with caution. */
export type CautionWeight = "contraindicated" | "specialist" | "caution"

/** One thing to know before drops are started, with what is known of it. */
export interface StartCaution {
  /** The question's id where it is one (`protocol/questions.ts`). */
  readonly id: string
  /** Such as "heart condition". */
  readonly name: string
  readonly state: "asked-no" | "asked-yes" | "not-asked"
  readonly weight: CautionWeight
  /** What the source says of a yes. */
  readonly says: string
  /** Id in `clinical/duties.json`; null where no source was read. */
  readonly duty: string | null
  /** How far the source was read, in words. */
  readonly grade: string
  /** Day of the answer or figure that `state` rests on. */
  readonly on: CalendarDate | null
  /** What was noted with it, or the figure. */
  readonly note: string | null
}

/** A caution as it stands in a table: its texts are said where it is asked for. */
export type CautionRule = Pick<StartCaution, "id" | "name" | "weight" | "says" | "duty" | "grade">

export const UK_TEXT = msg("verified: product text of 1 % drops, excerpt")

/** Answered with yes, drops are not given. */
export const CONTRAINDICATED: readonly CautionRule[] = [
  {
    id: "narrow-angle",
    name: msg("narrow angle or shallow chamber"),
    weight: "contraindicated",
    says: msg("atropine is not given with a narrow angle or closed-angle glaucoma"),
    duty: "CD-058",
    grade: UK_TEXT,
  },
  {
    id: "allergy-drops",
    name: msg("allergy to drops"),
    weight: "contraindicated",
    says: msg("atropine is not given with an allergy to any ingredient of the bottle, preservative included"),
    duty: "CD-058",
    grade: UK_TEXT,
  },
]

export const INFANT: CautionRule = {
  id: "under-3-months",
  name: msg("under 3 months of age"),
  weight: "contraindicated",
  says: msg("atropine is not used under 3 months of age"),
  duty: "CD-064",
  grade: msg("verified: product text of 1 % drops, secondary"),
}

export const INFANT_UNTIL_YEARS = 0.25

export type Known = Pick<StartCaution, "state" | "on" | "note">
export const UNKNOWN: Known = { state: "not-asked", on: null, note: null }

/** The last yes or no; "not done" is no answer and takes none away. */
export function answered({
  course,
  today,
  question,
}: {
  readonly course: Course
  readonly today: CalendarDate
  readonly question: string
}): Known {
  const answers = course.visits
    .filter(({ date }) => date <= today)
    .flatMap(({ date, answers = [] }) =>
      answers
        .filter((given) => given.question === question && given.answer !== "not-done")
        .map((given) => ({ ...given, date })),
    )
    .toSorted((a, b) => (a.date < b.date ? -1 : 1))
  const last = answers.at(-1)
  if (!last) return UNKNOWN
  return {
    state: last.answer === "yes" ? "asked-yes" : "asked-no",
    on: last.date,
    note: last.note ?? null,
  }
}
