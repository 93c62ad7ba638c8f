import { ageYears } from "../engine/calendar.js"
import type { CalendarDate } from "../engine/course.js"
import { say } from "../engine/say.js"
import type { CourseFigureInput, GrowthInterval } from "./course-figure-input.js"
import {
  dateAtAge,
  type EyePoint,
  lengthPoints,
  pupilPoints,
  refractionPoints,
  symptomPoints,
  treatmentSpans,
} from "./course-points.js"
import { dutyStateWords } from "./duty-state-words.js"
import { knownWords, symptomWords } from "./words.js"

/** Everything that belongs to one date: the one source of the read-out and of the table. */
export interface DateFacts {
  readonly date: CalendarDate
  readonly age: number
  readonly today: boolean
  readonly lengths: readonly EyePoint[]
  readonly refractions: readonly EyePoint[]
  readonly pupils: readonly EyePoint[]
  /** Growth of the interval that ends at this date. */
  readonly growth: GrowthInterval | null
  /** What began or ended, in words. */
  readonly treatments: readonly string[]
  readonly symptoms: readonly string[]
  readonly duties: readonly string[]
}

/** Half a day, in years: ages and dates that differ by less are the same day. */
const SAME_DAY = 0.5 / 365.25

/** The facts of the course in order of date; today is among them even when nothing else happened. */
export function courseFacts(input: CourseFigureInput): readonly DateFacts[] {
  const { born } = input.course.child
  const [lengths, refractions, pupils] = [lengthPoints(input), refractionPoints(input), pupilPoints(input)]
  const symptoms = symptomPoints(input)
  const treatments = treatmentSpans(input).flatMap(({ from, to, words }) => [
    { date: from, words: say("{treatment} from this day", { treatment: words }) },
    ...(to === null ? [] : [{ date: to, words: say("{treatment} ended", { treatment: words }) }]),
  ])
  const dates = new Set([
    input.today,
    ...input.course.visits.map(({ date }) => date),
    ...treatments.map(({ date }) => date),
    ...input.growthIntervals.map(({ toAge }) => dateAtAge({ born, age: toAge })),
    ...input.duties.map(({ due }) => due),
  ])
  return [...dates].sort().map((date) => {
    const age = ageYears({ born, on: date })
    const here = <T extends { readonly date: CalendarDate }>(items: readonly T[]) =>
      items.filter((item) => item.date === date)
    return {
      date,
      age,
      today: date === input.today,
      lengths: here(lengths),
      refractions: here(refractions),
      pupils: here(pupils),
      growth: input.growthIntervals.find(({ toAge }) => Math.abs(toAge - age) < SAME_DAY) ?? null,
      treatments: here(treatments).map(({ words }) => words),
      symptoms: here(symptoms).map(({ kind, grade }) =>
        say("{symptom} {grade}", { symptom: symptomWords(kind), grade }),
      ),
      duties: input.duties
        .filter(({ due }) => due === date)
        .map(({ step, state }) =>
          say("{step}: {state}", { step: knownWords(step), state: dutyStateWords(state) }),
        ),
    }
  })
}
