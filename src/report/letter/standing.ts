import type { Duty } from "../../engine/assessment.js"
import { nextDuty } from "../../engine/protocol/duties.js"
import { seenHere } from "../../engine/protocol/measured.js"
import { realTreatments } from "../../engine/protocol/treatment-course.js"
import { RED_FLAG } from "../../engine/safety/raised-concern.js"
import { listed, say, shortDayInWords } from "../../engine/say.js"
import { prescriptionName } from "../../engine/treatment-name.js"
import { capitalised } from "../../engine/words.js"
import { datesInWords } from "../dates-in-words.js"
import type { Reading } from "../record/reading.js"
import { concernName, SYMPTOM_WORDS } from "../record/vocabulary.js"

/** What is in use and since when, one sentence each; else what ended last or is to begin. */
export const treatmentNow = (reading: Reading): readonly string[] => treatments(reading).map(capitalised)

function treatments({ course, today, inUse }: Reading): readonly string[] {
  const recorded = realTreatments(course)
  const planned = recorded
    .filter(({ from }) => from > today)
    .map((treatment) =>
      say("{treatment} is to begin on {day}.", {
        treatment: prescriptionName(treatment),
        day: shortDayInWords(treatment.from),
      }),
    )
  const using = inUse.map(({ to, ...treatment }) => {
    const values = { treatment: prescriptionName(treatment), day: shortDayInWords(treatment.from) }
    return to == null
      ? say("{treatment} since {day}.", values)
      : say("{treatment} since {day}, to end on {end}.", { ...values, end: shortDayInWords(to) })
  })
  if (using.length > 0) return [...using, ...planned]
  const ended = recorded
    .flatMap(({ to, ...treatment }) => (to != null && to <= today ? [{ ...treatment, to }] : []))
    .toSorted((a, b) => (a.to < b.to ? -1 : 1))
    .at(-1)
  const none =
    ended === undefined
      ? say("No treatment is in use.")
      : say("No treatment is in use; {treatment} ended on {day}.", {
          treatment: prescriptionName(ended),
          day: shortDayInWords(ended.to),
        })
  return [none, ...planned]
}

/** Most concerns that a letter of one page names. */
const NAMED = 4

/** What is open about safety, the oldest first; then when symptoms were last asked about, and what was told. */
export function tolerance(reading: Reading): readonly string[] {
  const open = reading.concerns.filter(({ isRedFlag }) => !isRedFlag)
  const named = open
    .slice(0, NAMED)
    .map(({ kind, since }) =>
      say("{concern} since {day}", { day: shortDayInWords(since), concern: concernName(kind) }),
    )
  const more = open.length - named.length
  return [
    open.length === 0
      ? say("Nothing is open; what was not measured or asked raises nothing.")
      : say("Open: {concerns}.", { concerns: listed(named) }),
    ...(more > 0
      ? [say("{more, plural, one {# more concern is open.} other {# more concerns are open.}}", { more })]
      : []),
    symptomsAsked(reading),
  ]
}

function symptomsAsked({ course, today }: Reading): string {
  const visit = course.visits
    .filter((one) => one.date <= today && seenHere(one) && one.symptoms !== undefined)
    .toSorted((a, b) => (a.date < b.date ? -1 : 1))
    .at(-1)
  if (!visit) return say("Symptoms have not been asked about here.")
  const told = (visit.symptoms ?? [])
    .filter(({ grade }) => grade > 0)
    .map(({ kind, grade }) =>
      say("{symptom} grade {grade} of 3", { symptom: say(SYMPTOM_WORDS[kind]), grade }),
    )
  const on = shortDayInWords(visit.date)
  return told.length === 0
    ? say("Symptoms asked about on {day}: none.", { day: on })
    : say("Symptoms told on {day}: {symptoms}.", { day: on, symptoms: listed(told) })
}

/** The next examination and decision with their windows, and the day treatment is to stop. */
export function planned({ duties, plannedStop, today }: Reading): readonly string[] {
  const next = (kind: string) => nextDuty(duties.filter((duty) => duty.kind === kind))
  const stop = plannedStop !== null && plannedStop > today ? plannedStop : null
  // Consents and bottles are between the practice and the family; the decision that a stop waits for is that stop.
  const said = [next("examination"), stop === null ? next("decision") : null].flatMap((duty) => duty ?? [])
  return [
    ...said.map(dutySaid),
    ...(stop === null ? [] : [say("Treatment is planned to stop on {day}.", { day: shortDayInWords(stop) })]),
    ...(said.length === 0 && stop === null ? [say("Nothing is planned.")] : []),
  ]
}

/** Its kind and its days; a protocol's own titles are for those who work by it. */
export function dutySaid({ kind, state, opens, due, closes }: Duty): string {
  const values = {
    kind,
    due: shortDayInWords(due),
    opens: shortDayInWords(opens),
    closes: shortDayInWords(closes),
  }
  if (state === "overdue") {
    return say(
      "{kind, select, examination {The next examination} other {The next decision}} was due on {due} and has not taken place yet.",
      values,
    )
  }
  return opens === closes
    ? say(
        "{kind, select, examination {The next examination} other {The next decision}} is due on {due}.",
        values,
      )
    : say(
        "{kind, select, examination {The next examination} other {The next decision}} is due on {due}, between {opens} and {closes}.",
        values,
      )
}

/** What is asked of the doctor: care for warning signs the same day, and nothing else. */
export function asked({ input }: Reading): readonly string[] {
  const { urgent } = input.rules.contacts
  return urgent === undefined
    ? [
        say(
          "Nothing but care on the same day for flashes, floaters, a curtain over the sight, eye pain or sudden loss of vision.",
        ),
      ]
    : [
        say(
          "Nothing but care on the same day for flashes, floaters, a curtain over the sight, eye pain or sudden loss of vision; we are reached at {urgent}.",
          { urgent },
        ),
      ]
}

/** Warning signs that nobody has closed yet, in full: they come before everything else. */
export const openRedFlags = ({ concerns }: Reading): readonly string[] =>
  concerns
    .filter(({ kind, isRedFlag }) => isRedFlag || kind === RED_FLAG)
    .map(({ what }) => datesInWords(what))
