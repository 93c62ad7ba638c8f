import type { Answer } from "../../engine/course.js"
import type { Question, QuestionKind } from "../../engine/protocol/question.js"
import { EMPTY_ANSWER, isAnswered } from "./answer-drafts.js"
import type { RowProps } from "./eye-row.js"
import { QuestionRow } from "./question-row.js"
import { RedFlagNotice } from "./red-flag-notice.js"

interface Group {
  readonly title: string
  /** What one press answers for all that is still open, and how that is said. */
  readonly rest?: readonly [answer: Answer["answer"], word: string]
}

const GROUPS: Readonly<Record<QuestionKind, Group>> = {
  "red-flag": { title: "Signs that need care the same day", rest: ["no", "no"] },
  history: { title: "History" },
  caution: { title: "Cautions before atropine", rest: ["no", "no"] },
  "on-treatment": { title: "On the treatment" },
  lifestyle: { title: "Day and habits" },
  "eye-finding": { title: "Looked at" },
  advice: { title: "Told to the family", rest: ["yes", "told"] },
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
          <h3>{title}</h3>
          {rest && questions.length > 1 && open.length > 0 && (
            <button type="button" className="small" onClick={() => answerRest(rest[0])}>
              {open.length === questions.length ? "All" : "All others"} {rest[1]}
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
