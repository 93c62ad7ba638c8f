import { type KeyboardEvent, useId } from "react"
import { flushSync } from "react-dom"
import type { Question } from "../../engine/protocol/question.js"
import { type AnswerDraft, EMPTY_ANSWER } from "./answer-drafts.js"
import { focusNextEntry } from "./entry-walk.js"
import type { RowProps } from "./eye-row.js"

const ANSWER_KEYS = { y: "yes", n: "no", "-": "not-done", "–": "not-done" } as const
const ANSWER_LABELS = [
  ["yes", "yes", "yes"],
  ["no", "no", "no"],
  ["not-done", "–", "left out"],
] as const

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
  const isYes = answer.answer === "yes"
  const hasValue = question.value && (question.byValue || isYes)
  const hasNote = answer.answer === "not-done" || (isYes && question.note !== undefined && !question.byValue)
  const answerByKey = (event: KeyboardEvent) => {
    const isChoice = event.target instanceof HTMLInputElement && event.target.type === "radio"
    if (!isChoice || event.ctrlKey || event.metaKey || event.altKey) return
    const chosen = ANSWER_KEYS[event.key.toLowerCase() as keyof typeof ANSWER_KEYS]
    if (!chosen) return
    event.preventDefault()
    // At once, so that a value or note which the answer opens is there to be walked to.
    flushSync(() => change({ answer: chosen }))
    focusNextEntry(event.target as HTMLElement)
  }
  return (
    <fieldset className="question-row" onKeyDown={answerByKey}>
      <legend className="unseen">{question.words}</legend>
      <span className="question-words" aria-hidden="true">
        {question.words}
      </span>
      {!question.byValue && (
        <div className="choices">
          {ANSWER_LABELS.map(([value, label, said]) => (
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
            aria-label={`${question.words} ${question.value?.unit}`}
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
            {question.value?.unit}
          </span>
        </label>
      )}
      {hasNote && (
        <input
          className="question-note"
          aria-label={`Note: ${question.name}`}
          placeholder={isYes ? question.note : "why it was left out"}
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
