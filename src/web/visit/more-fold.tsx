import { type ReactNode, useId, useState } from "react"
import { EXAMINATION_MEASURES } from "../../engine/protocol/examination-measures.js"
import { QUESTIONS } from "../../engine/protocol/questions.js"
import { say } from "../../engine/say.js"
import { isAnswered } from "./answer-drafts.js"
import type { RowProps } from "./eye-row.js"
import { keepMoreOpen, keptMoreOpen } from "./kept-draft.js"
import { MEASURE_FIELDS } from "./measure-row.js"

interface MoreFoldProps extends Pick<RowProps, "draft" | "faults" | "answerFaults"> {
  /** Measures and questions that stand above the fold. */
  readonly owed: ReadonlySet<string>
  readonly children: ReactNode
}

/** What this examination does not owe; opened once it stays open on this computer, and what is filled is in view. */
export function MoreFold({ draft, faults, answerFaults, owed, children }: MoreFoldProps) {
  const id = useId()
  const isFilled = hasMore(draft, owed)
  const [wanted, setWanted] = useState(() => keptMoreOpen() || isFilled)
  const isFaulty =
    faults.some(({ field }) => folded(owed).some(({ fields }) => fields.includes(field))) ||
    answerFaults.some(({ question }) => !owed.has(question))
  const open = wanted || isFaulty
  const rest = folded(owed).map(({ name }) => name)
  const toggle = () => {
    setWanted(!open)
    keepMoreOpen(!open)
  }
  return (
    <div className="more">
      <button type="button" className="link" aria-expanded={open} aria-controls={id} onClick={toggle}>
        {open ? say("Less") : say("More")}
      </button>{" "}
      {!open && (
        <span className="soft small">
          {isFilled ? say("with entries that are not shown") : inShort(rest)}
        </span>
      )}
      <div id={id}>{open && children}</div>
    </div>
  )
}

/** Whether anything is entered that this examination does not owe. */
function hasMore(draft: RowProps["draft"], owed: ReadonlySet<string>): boolean {
  const typed = folded(owed).some(({ fields }) =>
    fields.some((field) => draft.right[field].trim() !== "" || draft.left[field].trim() !== ""),
  )
  const answered = Object.entries(draft.answers).some(([id, answer]) => !owed.has(id) && isAnswered(answer))
  return typed || answered || (!owed.has("symptoms") && Object.keys(draft.symptoms).length > 0)
}

/** The measures below the fold, with the fields they are typed in; both refractions are one row. */
function folded(owed: ReadonlySet<string>) {
  return EXAMINATION_MEASURES.filter(({ measure }) => measure !== "refraction" && !owed.has(measure)).map(
    ({ measure, name }) => ({
      name: say(name),
      fields: measure === "symptoms" ? [] : [MEASURE_FIELDS[measure]],
    }),
  )
}

const NAMED = 3

function inShort(names: readonly string[]): string {
  const first = names.slice(0, NAMED).join(", ")
  if (names.length === 0) return say("not owed today: questions, {count} in all", { count: QUESTIONS.length })
  return names.length > NAMED
    ? say("not owed today: {first} and more", { first })
    : say("not owed today: {first}, and questions", { first })
}
