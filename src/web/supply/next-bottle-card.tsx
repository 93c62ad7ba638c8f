import { dateWords } from "../../chart/words.js"
import { dayNumber } from "../../engine/calendar.js"
import type { CalendarDate, Course } from "../../engine/course.js"
import type { NextBottle, SupplyReport } from "../../engine/supply/supply-report.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { counted } from "../../engine/words.js"
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
      <h2 id="next-bottle">Next bottle</h2>
      {nextBottles.length === 0 && (
        <p className="soft">
          {coming
            ? sentence(
                `${treatmentName(coming)} begins on ${dateWords(coming.from)}: its bottles have to be there by then`,
              )
            : "No bottle is owed: no drops go on past the bottles in hand."}
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
          <h3>To look at</h3>
          <ul className="bottle-faults">
            {faults.map(({ path, kind, why }) => {
              const index = Number(/\d+/.exec(path)?.[0])
              const bottle = bottles.find((one) => one.index === index)
              const date = bottle?.opened ?? bottle?.dispensed
              return (
                <li key={`${path} ${kind}`}>
                  {date && `Bottle of ${dateWords(date)}: `}
                  {date ? sentence(why).replace(/^./, (letter) => letter.toLowerCase()) : sentence(why)}
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
  if (state === "overdue") return `${counted(days, "day")} without a bottle, needed by ${dateWords(last)}.`
  const ask =
    orderBy < today
      ? `was to be asked for by ${dateWords(orderBy)}`
      : `to be asked for by ${dateWords(orderBy)}`
  return `needed by ${dateWords(last)}, ${ask}.`
}

function lead({ lead: { days, from } }: NextBottle): string {
  const whose = from.kind === "pharmacy" ? `${from.name} takes` : "By the protocol a bottle takes"
  return `${whose} ${counted(days, "day")} from order to family.`
}
