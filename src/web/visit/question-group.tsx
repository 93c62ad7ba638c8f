import type { Answer } from "../../engine/course.js"
import type { Question, QuestionKind } from "../../engine/protocol/question.js"
import { msg, say } from "../../engine/say.js"
import { EMPTY_ANSWER, isAnswered } from "./answer-drafts.js"
import type { RowProps } from "./eye-row.js"
import { QuestionRow } from "./question-row.js"
import { RedFlagNotice } from "./red-flag-notice.js"

interface Group {
  readonly title: string
  /** What one press answers for all that is still open, and how that is said of all and of the rest. */
  readonly rest?: { readonly answer: Answer["answer"]; readonly all: string; readonly others: string }
}

const ALL_NO: Group["rest"] = { answer: "no", all: msg("All no"), others: msg("All others no") }

const GROUPS: Readonly<Record<QuestionKind, Group>> = {
  "red-flag": { title: msg("Signs that need care the same day"), rest: ALL_NO },
  history: { title: msg("History|of the child") },
  caution: { title: msg("Cautions before atropine"), rest: ALL_NO },
  "on-treatment": { title: msg("On the treatment") },
  lifestyle: { title: msg("Day and habits") },
  "eye-finding": { title: msg("Looked at") },
  advice: {
    title: msg("Told to the family"),
    rest: { answer: "yes", all: msg("All told"), others: msg("All others told") },
  },
}

type GroupProps = Pick<RowProps, "draft" | "onChange" | "answerFaults" | "onLeave"> & {
  readonly questions: readonly Question[]
  readonly urgent: string | undefined
  /** Whether each group says what it is; where a question stands beside its measurement it needs none. */
  readonly isHeaded: boolean
}

/** Questions of one place in the room, in groups of a kind. */
export function QuestionGroups({ questions, ...props }: GroupProps) {
  const kinds = [...new Set(questions.map(({ kind }) => kind))]
  return kinds.map((kind) => (
    <QuestionGroup
      key={kind}
      {...props}
      kind={kind}
      questions={questions.filter((question) => question.kind === kind)}
    />
  ))
}

function QuestionGroup({
  kind,
  questions,
  urgent,
  isHeaded,
  ...props
}: GroupProps & { readonly kind: QuestionKind }) {
  const { draft, onChange } = props
  const { title, rest } = GROUPS[kind]
  const open = questions.filter(({ id }) => !isAnswered(draft.answers[id] ?? EMPTY_ANSWER))
  const answerRest = (answer: Answer["answer"]) =>
    onChange({
      ...draft,
      answers: {
        ...draft.answers,
        ...Object.fromEntries(open.map(({ id }) => [id, { ...EMPTY_ANSWER, answer }])),
      },
    })
  return (
    <div className="question-group">
      {isHeaded && (
        <div className="question-group-head">
          <h3>{say(title)}</h3>
          {rest && questions.length > 1 && open.length > 0 && (
            <button type="button" className="small" onClick={() => answerRest(rest.answer)}>
              {say(open.length === questions.length ? rest.all : rest.others)}
            </button>
          )}
        </div>
      )}
      {questions.map((question) => (
        <QuestionRow key={question.id} {...props} question={question} />
      ))}
      {kind === "red-flag" && <RedFlagNotice answers={draft.answers} urgent={urgent} />}
    </div>
  )
}
