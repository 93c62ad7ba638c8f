import { Link } from "@tanstack/react-router"
import { dateWords, knownWords } from "../../chart/words.js"
import { say } from "../../engine/say.js"
import { unansweredFinding } from "../../engine/today/unanswered-finding.js"
import type { CourseReading } from "../reading.js"

/** What waits for a decision now: asked for by the protocol, or a finding nobody has answered; as on the list of the day. */
export function ToDecide({
  reading,
  childId,
}: {
  readonly reading: CourseReading
  readonly childId: string
}) {
  const asked = reading.duties.find(
    ({ kind, state }) => kind === "decision" && (state === "open" || state === "overdue"),
  )
  const unanswered = unansweredFinding(reading)
  if (!asked && !unanswered) return null
  return (
    <p>
      <b>{say("To decide now:")}</b>{" "}
      {asked
        ? `${knownWords(asked.step)}.`
        : say("no decision since the visit of {day}.", {
            day: dateWords(unanswered?.since ?? reading.today),
          })}{" "}
      <Link to="/children/$childId/$part" params={{ childId, part: "choices" }}>
        {say("Open choices")}
      </Link>
    </p>
  )
}
