import { Link } from "@tanstack/react-router"
import { fromWords } from "../../chart/words.js"
import { say } from "../../engine/say.js"
import type { ChildView } from "../../server/contract/child.js"
import type { CourseReading } from "../reading.js"
import type { Correcting } from "./correcting.js"

/** What is wrong with the day of a visit, or undefined. */
export function dateFault(
  date: string,
  { today, course }: CourseReading,
  correcting: Correcting | null,
): string | undefined {
  if (date === "") return say("the day of the visit is needed")
  if (date > today) return say("must not lie in the future")
  if (date < course.child.born) return say("must not lie before birth")
  const other = course.visits.find((visit) => visit.date === date && date !== correcting?.visit.date)
  if (!other) return undefined
  return other.from
    ? say("figures from {source} stand on this day already", { source: fromWords(other.from) })
    : say("this day has a visit already")
}

/** The way out when the day is taken; what is typed here is kept meanwhile. */
export function OtherVisit(props: {
  readonly view: ChildView
  readonly date: string
  readonly correcting: Correcting | null
}) {
  const { view, date, correcting } = props
  const entry = view.entries.find(
    (candidate) => candidate.kind === "visit" && candidate.date === date && candidate.supersededBy === null,
  )
  if (!entry || entry.id === correcting?.entryId) return null
  return (
    <Link to="/children/$childId/visit" params={{ childId: view.child.id }} search={{ corrects: entry.id }}>
      {say("correct that entry instead")}
    </Link>
  )
}
