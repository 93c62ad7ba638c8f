import type { Answer, Visit } from "../../engine/course.js"
import type { Question } from "../../engine/protocol/question.js"
import { QUESTIONS, questionOf } from "../../engine/protocol/questions.js"
import { say, withDecimalSign } from "../../engine/say.js"
import { parseNumber } from "./readings.js"

/** The answer to one question as typed. */
export interface AnswerDraft {
  readonly answer: Answer["answer"] | null
  /** For a question answered by its value a dash says that it was left out. */
  readonly value: string
  readonly note: string
}

/** By the id of the question; one not touched is absent. */
export type AnswerDrafts = Readonly<Record<string, AnswerDraft>>

/** A value that cannot be read, at its question. */
export interface AnswerFault {
  readonly question: string
  readonly message: string
}

export const EMPTY_ANSWER: AnswerDraft = { answer: null, value: "", note: "" }
const LEFT_OUT = /^[-–−]$/

export const isAnswered = ({ answer, value }: AnswerDraft): boolean => answer !== null || value.trim() !== ""

/**
 * The answers that a draft gives, in the order of the room. Answers of the corrected visit to questions that this form
 * does not know are carried over.
 */
export function readAnswers(
  drafts: AnswerDrafts,
  base?: Visit,
): { readonly answers: readonly Answer[]; readonly faults: readonly AnswerFault[] } {
  const faults: AnswerFault[] = []
  const answers = QUESTIONS.flatMap((question): Answer[] => {
    const draft = drafts[question.id]
    if (!draft || !isAnswered(draft)) return []
    const read = readAnswer(question, draft)
    if (!("fault" in read)) return [read]
    faults.push({ question: question.id, message: read.fault })
    return []
  })
  const unknown = (base?.answers ?? []).filter(({ question }) => !questionOf(question))
  return { answers: [...answers, ...unknown], faults }
}

function readAnswer(question: Question, draft: AnswerDraft): Answer | { readonly fault: string } {
  const note = draft.note.trim()
  const noted = note === "" ? {} : { note }
  const text = draft.value.trim()
  if (question.byValue && LEFT_OUT.test(text)) return { question: question.id, answer: "not-done", ...noted }
  // A value stays typed, and is not said, when the answer is taken back to no.
  const isValued = question.value && text !== "" && (question.byValue || draft.answer === "yes")
  if (!isValued) return { question: question.id, answer: draft.answer ?? "not-done", ...noted }
  const { low, high, unit } = question.value
  const value = parseNumber(text)
  if (value === null || value < low || value > high)
    return {
      fault: say("must be a number from {low} to {high}, in {unit}, not {text}", {
        low,
        high,
        unit: say(unit),
        text,
      }),
    }
  const answer = question.byValue ? (value === 0 ? "no" : "yes") : (draft.answer ?? "yes")
  return { question: question.id, answer, value, ...noted }
}

/** The answers of a stored visit, for correcting it. */
export function answerDraftsOf({ answers = [] }: Visit): AnswerDrafts {
  return Object.fromEntries(
    answers.map(({ question, answer, value, note }): [string, AnswerDraft] => [
      question,
      {
        answer,
        value: value === undefined ? leftOut(question, answer) : withDecimalSign(String(value)),
        note: note ?? "",
      },
    ]),
  )
}

const leftOut = (question: string, answer: Answer["answer"]): string =>
  answer === "not-done" && questionOf(question)?.byValue ? "–" : ""
