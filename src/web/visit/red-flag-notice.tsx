import { QUESTIONS } from "../../engine/protocol/questions.js"
import { say } from "../../engine/say.js"
import { Said } from "../parts/said.js"
import type { AnswerDrafts } from "./answer-drafts.js"

/** The signs answered with yes, by name. */
export const signsIn = (answers: AnswerDrafts): readonly string[] =>
  QUESTIONS.filter(({ kind, id }) => kind === "red-flag" && answers[id]?.answer === "yes").map(({ name }) =>
    say(name),
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
          <Said
            message={
              props.urgent
                ? "{care} {signs}. Arrange it before the child leaves: {urgent}."
                : "{care} {signs}. Arrange it before the child leaves."
            }
            values={{
              care: <b>{say("Care the same day:")}</b>,
              signs: signs.join(", "),
              urgent: props.urgent ?? "",
            }}
          />
        </p>
      )}
    </div>
  )
}
