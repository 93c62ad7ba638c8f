import { Link } from "@tanstack/react-router"
import { dateWords, knownWords } from "../../chart/words.js"
import type { Duty } from "../../engine/assessment.js"
import { nextDuty } from "../../engine/protocol/duties.js"
import { msg, say } from "../../engine/say.js"
import { capitalised, sentence } from "../format.js"
import type { CourseReading } from "../reading.js"
import { WhyButton } from "../why/why-button.js"
import { dutyTiming } from "../words.js"
import { CHILD_PARTS } from "./child-parts.js"

/** How many duties after the next one are named. */
const AFTER_THAT = 3

/** What is owed to the child next, by when, and what it needs; then what follows. */
export function DutyCard({
  reading,
  childId,
}: {
  readonly reading: CourseReading
  readonly childId: string
}) {
  const { duties, today } = reading
  const next = nextDuty(duties)
  const later = duties.filter((duty) => duty !== next && isOwed(duty)).slice(0, AFTER_THAT)
  return (
    <section className="card answer" aria-labelledby="next-duty">
      <h2 id="next-duty">{say("Next duty")}</h2>
      {next ? (
        <>
          <p className="middle">{capitalised(knownWords(next.step))}</p>
          <p className={next.state === "overdue" ? "late" : undefined}>
            {capitalised(dutyTiming(next, today))}.
          </p>
          <DutyLink duty={next} childId={childId} />
          {next.needs.length > 0 && (
            <p className="small">{sentence(say("needs: {needs}", { needs: next.needs.join(", ") }))}</p>
          )}
        </>
      ) : (
        <p>{say("Nothing is owed.")}</p>
      )}
      {later.length > 0 && (
        <ul className="plain small">
          {later.map((duty) => (
            <li key={`${duty.kind} ${duty.step} ${duty.due}`}>
              <span className={duty.state === "overdue" ? "late" : "soft"}>
                {duty.state === "overdue"
                  ? say("late, {day}", { day: dateWords(duty.due) })
                  : dateWords(duty.due)}
              </span>{" "}
              {knownWords(duty.step)}
            </li>
          ))}
        </ul>
      )}
      <p className="soft small">
        {say("By the protocol “{title}”: {source}", {
          title: knownWords(reading.protocol.title),
          source: knownWords(reading.protocol.source),
        })}{" "}
        · <WhyButton about={say("How the next duty was found")} question="duties" reading={reading} />
      </p>
    </section>
  )
}

/** The part of the child's page where a duty is done; an examination is done in the visit form. */
const PLACES: Readonly<Record<string, readonly [part: string, label: string]>> = {
  consent: ["consent", msg("Go to consent")],
  bottle: ["supply", msg("Go to supply")],
  decision: ["choices", msg("Go to choices")],
}

function DutyLink({ duty, childId }: { readonly duty: Duty; readonly childId: string }) {
  if (duty.kind === "examination" && duty.state !== "upcoming")
    return (
      <p className="small">
        <Link to="/children/$childId/visit" params={{ childId }} search={{}}>
          {say("Go to the visit")}
        </Link>
      </p>
    )
  const [part, label = ""] = PLACES[duty.kind] ?? []
  if (part === undefined || !Object.hasOwn(CHILD_PARTS, part)) return null
  return (
    <p className="small">
      <Link to="/children/$childId/$part" params={{ childId, part }}>
        {say(label)}
      </Link>
    </p>
  )
}

function isOwed({ state }: Duty): boolean {
  return state === "open" || state === "overdue" || state === "upcoming"
}
