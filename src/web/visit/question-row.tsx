import { type KeyboardEvent, useId } from "react"
import { flushSync } from "react-dom"
import type { Answer } from "../../engine/course.js"
import type { Question } from "../../engine/protocol/question.js"
import { say } from "../../engine/say.js"
import { type AnswerDraft, EMPTY_ANSWER } from "./answer-drafts.js"
import { focusNextEntry } from "./entry-walk.js"
import type { RowProps } from "./eye-row.js"

const ANSWER_KEYS: Readonly<Record<string, Answer["answer"]>> = {
  y: "yes",
  n: "no",
  "-": "not-done",
  "–": "not-done",
}

/** The letter that answers yes in the language of the page; y always does. */
export const yesKey = (): string => say("y|the key for yes")

const answerByKeyOf = (key: string): Answer["answer"] | undefined =>
  key === yesKey() ? "yes" : ANSWER_KEYS[key]

const answerLabels = (): readonly (readonly [answer: Answer["answer"], label: string, said: string])[] => [
  ["yes", say("yes"), say("yes")],
  ["no", say("no"), say("no")],
  ["not-done", "–", say("left out")],
]

interface QuestionRowProps extends Pick<RowProps, "draft" | "onChange" | "answerFaults" | "onLeave"> {
  readonly question: Question
}

/** One question with its answer by one key; a value or a note beside it where one is useful. */
export function QuestionRow({ question, draft, onChange, answerFaults, onLeave }: QuestionRowProps) {
  const id = useId()
  const answer = draft.answers[question.id] ?? EMPTY_ANSWER
  const change = (part: Partial<AnswerDraft>) =>
    onChange({ ...draft, answers: { ...draft.answers, [question.id]: { ...answer, ...part } } })
  const fault = answerFaults.find((candidate) => candidate.question === question.id)?.message
  const words = say(question.words)
  const unit = question.value && say(question.value.unit)
  const isYes = answer.answer === "yes"
  const hasValue = question.value && (question.byValue || isYes)
  const hasNote = answer.answer === "not-done" || (isYes && question.note !== undefined && !question.byValue)
  const answerByKey = (event: KeyboardEvent) => {
    const isChoice = event.target instanceof HTMLInputElement && event.target.type === "radio"
    if (!isChoice || event.ctrlKey || event.metaKey || event.altKey) return
    const chosen = answerByKeyOf(event.key.toLowerCase())
    if (!chosen) return
    event.preventDefault()
    // At once, so that a value or note which the answer opens is there to be walked to.
    flushSync(() => change({ answer: chosen }))
    focusNextEntry(event.target as HTMLElement)
  }
  return (
    <fieldset className="question-row" onKeyDown={answerByKey}>
      <legend className="unseen">{words}</legend>
      <span className="question-words" aria-hidden="true">
        {words}
      </span>
      {!question.byValue && (
        <div className="choices">
          {answerLabels().map(([value, label, said]) => (
            <label key={value} className="answer-choice">
              <input
                type="radio"
                name={id}
                aria-label={said}
                checked={answer.answer === value}
                data-entry={value === "yes" ? question.id : undefined}
                onChange={() => change({ answer: value })}
              />
              <span aria-hidden="true">{label}</span>
            </label>
          ))}
        </div>
      )}
      {hasValue && (
        <label className="question-value">
          <input
            aria-label={`${words} ${unit}`}
            aria-invalid={fault !== undefined || undefined}
            aria-describedby={fault && `${id}-fault`}
            data-entry={question.id}
            autoComplete="off"
            inputMode="decimal"
            value={answer.value}
            onBlur={() => onLeave(question.id)}
            onChange={(event) => change({ value: event.target.value })}
          />
          <span className="soft small" aria-hidden="true">
            {unit}
          </span>
        </label>
      )}
      {hasNote && (
        <input
          className="question-note"
          aria-label={say("Note: {question}", { question: say(question.name) })}
          placeholder={isYes ? question.note && say(question.note) : say("why it was left out")}
          data-entry={isYes ? question.id : undefined}
          autoComplete="off"
          value={answer.note}
          onChange={(event) => change({ note: event.target.value })}
        />
      )}
      {fault && (
        <p className="field-fault" id={`${id}-fault`}>
          {fault}
        </p>
      )}
    </fieldset>
  )
}
