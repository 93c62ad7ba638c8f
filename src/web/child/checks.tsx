import { Link } from "@tanstack/react-router"
import type { Check } from "../../engine/assessment.js"
import { openConcerns } from "../../engine/safety/open-concerns.js"
import { say } from "../../engine/say.js"
import type { ChildView } from "../../server/contract/child.js"
import { capitalised, sentence } from "../format.js"
import type { CourseReading } from "../reading.js"
import { concernKindInWords } from "./kind-words.js"

/** Kinds of check that put an entered figure in doubt; the others say what was missing or left out. */
const DOUBTS: readonly string[] = ["eyes-exchanged", "implausible-change", "sign-changed"]

export const isDoubt = (check: Check): boolean => DOUBTS.includes(check.kind)

/** What is open about the child's safety, red flags first, above everything else on the page. */
export function ConcernList({
  childId,
  reading,
}: {
  readonly childId: string
  readonly reading: CourseReading
}) {
  const { course, today, protocol, rules } = reading
  const open = openConcerns({ course, today, protocol, switches: rules.examinationSwitches })
  if (open.length === 0) return null
  return (
    <section className="banner" aria-labelledby="concerns">
      <h2 id="concerns">
        {open.length === 1 ? say("Concern for the clinician") : say("Concerns for the clinician")}
      </h2>
      <ul>
        {open.map(({ kind, what, owner, isRedFlag }) => (
          <li key={`${kind} ${what}`}>
            <b>
              {isRedFlag ? say("Red flag, care on the same day") : capitalised(concernKindInWords(kind))}.
            </b>{" "}
            {sentence(what)}{" "}
            {owner && <span className="soft">{say("Looked after by {owner}.", { owner })}</span>}
          </li>
        ))}
      </ul>
      <p className="small">
        <Link to="/children/$childId/$part" params={{ childId, part: "safety" }}>
          {open.some(({ recorded }) => recorded === null)
            ? say("Take up or close under Safety")
            : say("Look after or close under Safety")}
        </Link>
      </p>
    </section>
  )
}

/** The entry of the visit that a check's path leads to, such as `visits[3].right.refraction`. */
function entryOf(path: string, view: ChildView): string | null {
  const index = /^visits\[(\d+)\]/.exec(path)?.[1]
  const date = index === undefined ? undefined : view.course.visits[Number(index)]?.date
  const entry = view.entries.find(
    (candidate) => candidate.kind === "visit" && candidate.date === date && candidate.supersededBy === null,
  )
  return entry?.id ?? null
}

/** What to look at before the answers are believed, or what they left out. */
export function CheckList({
  view,
  checks,
  show,
}: {
  readonly view: ChildView
  readonly checks: readonly Check[]
  readonly show: "doubts" | "notes"
}) {
  const shown = checks.filter((check) => isDoubt(check) === (show === "doubts"))
  if (shown.length === 0) return null
  return (
    <section className={show === "doubts" ? "banner" : "card answer"} aria-labelledby={`checks-${show}`}>
      <h2 id={`checks-${show}`}>
        {show === "doubts" ? say("Check these entries first") : say("Taken into account")}
      </h2>
      <ul className={show === "notes" ? "small" : undefined}>
        {shown.map(({ kind, path, why }) => {
          const entry = show === "doubts" ? entryOf(path, view) : null
          return (
            <li key={`${kind} ${path}`}>
              {sentence(why)}{" "}
              {entry && (
                <Link
                  to="/children/$childId/visit"
                  params={{ childId: view.child.id }}
                  search={{ corrects: entry }}
                >
                  {say("correct this visit")}
                </Link>
              )}
            </li>
          )
        })}
      </ul>
    </section>
  )
}
