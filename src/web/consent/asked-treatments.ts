import { dateWords } from "../../chart/words.js"
import { type AskedAbout, askedAbout } from "../../engine/consent/asked-about.js"
import type { CalendarDate, Course, TreatmentChoice } from "../../engine/course.js"
import { say } from "../../engine/say.js"

export interface AskedTreatment {
  readonly treatment: TreatmentChoice
  readonly words: string
}

/** The treatments a consent is likely wanted for, each with how it comes to be asked about. */
export const askedTreatments = (asked: {
  readonly course: Pick<Course, "treatments" | "decisions">
  readonly today: CalendarDate
}): readonly AskedTreatment[] =>
  askedAbout(asked).map((each) => ({ treatment: each.treatment, words: becauseInWords(each) }))

function becauseInWords({ because, date }: AskedAbout): string {
  switch (because) {
    case "in-use":
      return say("in use")
    case "planned":
      return say("planned from {date}", { date: dateWords(date) })
    case "decided":
      return say("decided on {date}", { date: dateWords(date) })
    default:
      return because satisfies never
  }
}
