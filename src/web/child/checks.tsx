import { Link } from "@tanstack/react-router"
import type { Check, Concern } from "../../engine/assessment.js"
import type { ChildView } from "../../server/contract/child.js"
import { capitalised, kindInWords, sentence } from "../format.js"

/** Kinds of check that put an entered figure in doubt; the others say what was missing or left out. */
const DOUBTS: readonly string[] = ["eyes-exchanged", "implausible-change", "sign-changed"]

export const isDoubt = (check: Check): boolean => DOUBTS.includes(check.kind)

/** Side effects and red flags, above everything else on the page. */
export function ConcernList({ concerns }: { readonly concerns: readonly Concern[] }) {
  if (concerns.length === 0) return null
  return (
    <section className="banner" aria-labelledby="concerns">
      <h2 id="concerns">{concerns.length === 1 ? "Concern" : "Concerns"} for the clinician</h2>
      <ul>
        {concerns.map(({ kind, why }) => (
          <li key={`${kind} ${why}`}>
            <b>{capitalised(kindInWords(kind))}.</b> {sentence(why)}
          </li>
        ))}
      </ul>
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
      <h2 id={`checks-${show}`}>{show === "doubts" ? "Check these entries first" : "Taken into account"}</h2>
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
                  correct this visit
                </Link>
              )}
            </li>
          )
        })}
      </ul>
    </section>
  )
}
