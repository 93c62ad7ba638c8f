import { moneyInWords } from "../../engine/cost/money.js"
import type { Course } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { capitalised } from "../../engine/words.js"
import { day, NOTHING, recorded, text } from "./figures.js"
import { questionName, valueInWords } from "./question-names.js"
import { byDay, type RecordTable } from "./record-table.js"
import { ANSWER_WORDS, ASSENT_WORDS, FORM_WORDS, inWords, SYMPTOM_WORDS } from "./vocabulary.js"

/** What the family told, agreed to, was told and paid. */
export const toldTables = (course: Course): readonly RecordTable[] => [
  symptoms(course),
  answers(course),
  consents(course),
  wordings(course),
  explanations(course),
  payments(course),
]

const symptoms = ({ visits }: Course): RecordTable => ({
  title: say("Symptoms"),
  head: [say("Date"), say("Symptom"), say("Grade, 0 to 3")],
  rows: visits
    .toSorted(byDay(({ date }) => date))
    .flatMap(({ date, symptoms: told }) =>
      told === undefined
        ? []
        : told.length === 0
          ? [[day(date), say("asked about: none"), NOTHING]]
          : told.map(({ kind, grade }) => [
              day(date),
              capitalised(say(SYMPTOM_WORDS[kind])),
              recorded(grade),
            ]),
    ),
  figures: [2],
})

const answers = ({ visits }: Course): RecordTable => ({
  title: say("Questions and findings"),
  head: [say("Date"), say("Question or finding"), say("Answer"), say("Value|figure"), say("Note")],
  rows: visits
    .toSorted(byDay(({ date }) => date))
    .flatMap(({ date, answers: given = [] }) =>
      given.map(({ question, answer, value, note }) => [
        day(date),
        capitalised(questionName(question)),
        say(ANSWER_WORDS[answer]),
        value === undefined ? NOTHING : valueInWords(question, recorded(value)),
        text(note),
      ]),
    ),
})

const consents = ({ consents: given = [] }: Course): RecordTable => ({
  title: say("Consents"),
  head: [
    say("Date"),
    say("Covers"),
    say("Given by"),
    say("How|consent"),
    say("The child|assent"),
    say("Holds until"),
  ],
  rows: given
    .toSorted(byDay(({ date }) => date))
    .map(({ date, covers, by, form, assent, until }) => [
      day(date),
      capitalised(treatmentName(covers)),
      text([by?.name, by?.relation].filter((words) => words !== undefined).join(", ")),
      inWords(FORM_WORDS, form) ?? NOTHING,
      inWords(ASSENT_WORDS, assent) ?? NOTHING,
      day(until),
    ]),
})

const wordings = ({ consents: given = [] }: Course): RecordTable => ({
  title: say("Wordings that the consents were given to"),
  head: [say("Date"), say("Wording"), say("Version"), say("SHA-256 of the text shown")],
  rows: given
    .toSorted(byDay(({ date }) => date))
    .flatMap(({ date, wording }) =>
      wording === undefined ? [] : [[day(date), wording.id, wording.version, text(wording.sha256)]],
    ),
})

const explanations = ({ explanations: told = [] }: Course): RecordTable => ({
  title: say("Results explained to the family"),
  head: [say("Date"), say("Told to")],
  rows: told.toSorted(byDay(({ date }) => date)).map(({ date, to }) => [day(date), text(to)]),
})

const payments = ({ payments: made = [] }: Course): RecordTable => ({
  title: say("Payments"),
  head: [say("Date"), say("Amount"), say("For|payment")],
  rows: made
    .toSorted(byDay(({ date }) => date))
    .map(({ date, cents, currency, what }) => [day(date), moneyInWords(cents, currency), text(what)]),
  figures: [1],
})
