import { dateWords, knownWords } from "../../chart/words.js"
import { say } from "../../engine/say.js"
import { unansweredFinding } from "../../engine/today/unanswered-finding.js"
import { capitalised, sentence } from "../format.js"
import type { CourseReading } from "../reading.js"
import { dutyTiming, findingInWords, findingSentence, growthInWords, growthSentence } from "../words.js"

/** Which decision is owed by the protocol, and what the measurements say at this moment. */
export function DecisionOwed({ reading }: { readonly reading: CourseReading }) {
  const { duties, today, assessment, course } = reading
  const owed = duties.filter(
    ({ kind, state }) => kind === "decision" && (state === "open" || state === "overdue"),
  )
  const next = duties.find(({ kind, state }) => kind === "decision" && state === "upcoming")
  const { growth, finding } = assessment
  const unanswered = owed.length === 0 ? unansweredFinding({ course, today, assessment }) : null
  const grown = growthSentence(growth, course.child.sex) ?? growth.reasons.map(sentence).join(" ")
  return (
    <section className="card answer" aria-labelledby="decision-owed">
      <h2 id="decision-owed">{say("Decision owed")}</h2>
      {unanswered && (
        <div>
          <p className="middle">{capitalised(unanswered.what)}</p>
          <p>{say("No decision since the visit of {day}.", { day: dateWords(unanswered.since) })}</p>
        </div>
      )}
      {owed.length === 0 && !unanswered && (
        <p className="middle">
          {next
            ? say("None now; next: {step}, {timing}", {
                step: knownWords(next.step),
                timing: dutyTiming(next, today),
              })
            : say("None now")}
        </p>
      )}
      {owed.map((duty) => (
        <div key={`${duty.step} ${duty.due}`}>
          <p className="middle">{capitalised(knownWords(duty.step))}</p>
          <p className={duty.state === "overdue" ? "late" : undefined}>
            {capitalised(dutyTiming(duty, today))}.
          </p>
          {duty.needs.length > 0 && <p className="small">{sentence(duty.needs.join(", "))}</p>}
        </div>
      ))}
      <dl className="why-now">
        <div>
          <dt>{say("Growth")}</dt>
          <dd>
            <b>{growthInWords(growth.state)}.</b> {grown}
          </dd>
        </div>
        <div>
          <dt>{say("Treatment")}</dt>
          <dd>
            <b>{findingInWords(finding.state)}.</b> {findingSentence(finding)}
          </dd>
        </div>
      </dl>
    </section>
  )
}
