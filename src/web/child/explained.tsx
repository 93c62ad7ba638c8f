import { useState } from "react"
import { dateWords } from "../../chart/words.js"
import { seenHere } from "../../engine/protocol/measured.js"
import { say } from "../../engine/say.js"
import type { ChildView } from "../../server/contract/child.js"
import type { ExplanationBody } from "../../server/contract/entry.js"
import { failureInWords } from "../client.js"
import { newEntryId } from "../entry-id.js"
import { useRecord } from "../queries.js"
import type { CourseReading } from "../reading.js"

/** Whether the family was told what was found, and one press to record that it was told today. */
export function Explained({
  view,
  reading,
  onDone,
}: {
  readonly view: ChildView
  readonly reading: CourseReading
  readonly onDone: (message: string) => void
}) {
  const [id, setId] = useState(newEntryId)
  const { course, today } = reading
  const record = useRecord<ExplanationBody>(view.child.id, "explanations")
  const lastVisit = course.visits.findLast((visit) => visit.date <= today && seenHere(visit))?.date
  const last = (course.explanations ?? [])
    .map(({ date }) => date)
    .filter((date) => date <= today)
    .toSorted()
    .at(-1)
  if (lastVisit === undefined) return null
  const isOwed = last === undefined || last < lastVisit
  return (
    <p className="explained small">
      {isOwed ? (
        <>
          <span className="soft">
            {say("The visit of {day} is not marked as explained to the family.", {
              day: dateWords(lastVisit),
            })}
          </span>{" "}
          <button
            type="button"
            disabled={record.isPending}
            onClick={() =>
              record.mutate(
                { ...id, date: today },
                {
                  onSuccess: () => {
                    setId(newEntryId)
                    onDone(say("Recorded: explained to the family, {day}.", { day: dateWords(today) }))
                  },
                },
              )
            }
          >
            {say("Explained to the family")}
          </button>
        </>
      ) : (
        <span className="soft">{say("Explained to the family on {day}.", { day: dateWords(last) })}</span>
      )}
      <span role="alert">{record.error && ` ${failureInWords(record.error)}`}</span>
    </p>
  )
}
