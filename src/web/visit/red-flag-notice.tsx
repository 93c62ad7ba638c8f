import { QUESTIONS } from "../../engine/protocol/questions.js"
import { say } from "../../engine/say.js"
import type { AnswerDrafts } from "./answer-drafts.js"

/** The signs answered with yes, by name. */
export const signsIn = (answers: AnswerDrafts): readonly string[] =>
  QUESTIONS.filter(({ kind, id }) => kind === "red-flag" && answers[id]?.answer === "yes").map(
    ({ name }) => name,
  )

/** Said at once, in words, whatever else is entered. */
export function RedFlagNotice(props: {
  readonly answers: AnswerDrafts
  /** Where a family calls for same-day care, as the practice set it. */
  readonly urgent: string | undefined
}) {
  const signs = signsIn(props.answers)
  return (
    <div role="alert">
      {signs.length > 0 && (
        <p className="form-fault">
          <b>{say("Care the same day:")}</b> {signs.join(", ")}. Arrange it before the child leaves
          {props.urgent ? `: ${props.urgent}.` : "."}
        </p>
      )}
    </div>
  )
}
