import { dateWords } from "../../chart/words.js"
import { dayNumber } from "../../engine/calendar.js"
import type { CalendarDate, Course } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import type { NextBottle, SupplyReport } from "../../engine/supply/supply-report.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { capitalised, sentence } from "../format.js"
import { treatmentsAfter } from "../treatments-on.js"

/** When the bottles in hand end, and by when the next has to be asked for; then what is wrong with a bottle. */
export function NextBottleCard({
  report,
  course,
  today,
}: {
  readonly report: SupplyReport
  readonly course: Course
  readonly today: CalendarDate
}) {
  const { nextBottles, faults, bottles } = report
  const coming = treatmentsAfter(course, today).find(({ kind }) => kind === "atropine")
  return (
    <section className="card" aria-labelledby="next-bottle">
      <h2 id="next-bottle">{say("Next bottle")}</h2>
      {nextBottles.length === 0 && (
        <p className="soft">
          {coming
            ? sentence(
                say("{treatment} begins on {date}: its bottles have to be there by then", {
                  treatment: treatmentName(coming),
                  date: dateWords(coming.from),
                }),
              )
            : say("No bottle is owed: no drops go on past the bottles in hand.")}
        </p>
      )}
      {nextBottles.map((next) => (
        <div key={next.treatment}>
          <p>
            <b>{capitalised(next.treatment)}</b>{" "}
            <span className={next.state === "overdue" ? "late" : undefined}>{due(next, today)}</span>
          </p>
          <p className="soft small">{lead(next)}</p>
        </div>
      ))}
      {faults.length > 0 && (
        <>
          <h3>{say("To look at")}</h3>
          <ul className="bottle-faults">
            {faults.map(({ path, kind, why }) => {
              const index = Number(/\d+/.exec(path)?.[0])
              const bottle = bottles.find((one) => one.index === index)
              const date = bottle?.opened ?? bottle?.dispensed
              return (
                <li key={`${path} ${kind}`}>
                  {sentence(date ? say("Bottle of {date}: {fault}", { date, fault: why }) : why)}
                </li>
              )
            })}
          </ul>
        </>
      )}
    </section>
  )
}

function due({ state, due: last, orderBy }: NextBottle, today: CalendarDate): string {
  const days = dayNumber(today) - dayNumber(last)
  const needed = dateWords(last)
  if (state === "overdue")
    return say("{days, plural, one {# day} other {# days}} without a bottle, needed by {needed}.", {
      days,
      needed,
    })
  const asked = dateWords(orderBy)
  return orderBy < today
    ? say("needed by {needed}, was to be asked for by {asked}.", { needed, asked })
    : say("needed by {needed}, to be asked for by {asked}.", { needed, asked })
}

function lead({ lead: { days, from } }: NextBottle): string {
  return from.kind === "pharmacy"
    ? say("{pharmacy} takes {days, plural, one {# day} other {# days}} from order to family.", {
        pharmacy: from.name,
        days,
      })
    : say("By the protocol a bottle takes {days, plural, one {# day} other {# days}} from order to family.", {
        days,
      })
}
