import { useRef } from "react"
import { coverageStrip } from "../../chart/coverage-strip.js"
import { dateWords } from "../../chart/words.js"
import type { CalendarDate, Course } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { ADHERENCE_RULE } from "../../engine/supply/definition.js"
import { missedNightsTold } from "../../engine/supply/missed-nights.js"
import type { PrescriptionCoverage, SupplyReport } from "../../engine/supply/supply-report.js"
import { percent } from "../format.js"
import { Drawing } from "../parts/drawing.js"
import { useWidth } from "../parts/use-width.js"

/** How many of the prescribed nights had a bottle in date: the share, the strip, the gaps, and what the share means. */
export function CoverageCard({ report, course }: { readonly report: SupplyReport; readonly course: Course }) {
  const { window, gaps, prescriptions } = report
  return (
    <section className="card" aria-labelledby="nights-covered">
      <h2 id="nights-covered">{say("Nights covered")}</h2>
      {window === null ? (
        <p>{say("No drops were prescribed before today.")}</p>
      ) : (
        <>
          <p className="big">{heading(report)}</p>
          {sentences(report).map((words) => (
            <p key={words}>{words}</p>
          ))}
          <Strip report={report} course={course} />
          {prescriptions.length > 1 && <Prescriptions prescriptions={prescriptions} />}
          {gaps.length > 0 && (
            <>
              <h3>{say("Gaps")}</h3>
              <ul className="gaps">
                {gaps.map(({ from, to, nights: count }) => (
                  <li key={from}>
                    {say("{span}: {count, plural, one {# night} other {# nights}}", {
                      span: spanWords({ from, to }),
                      count,
                    })}
                  </li>
                ))}
              </ul>
              <p className="soft small">
                {say(
                  "In a gap there was no drop, or one from a bottle past its date. The growth is judged as untreated there.",
                )}
              </p>
            </>
          )}
          <p className="soft small">
            {say(
              "Proportion of days covered: {definition}. Here {rule}. Bottles tell how many nights could have had a drop, not how many had one.",
              { definition: report.definition, rule: say(ADHERENCE_RULE) },
            )}
          </p>
        </>
      )}
    </section>
  )
}

/** The nights one after the other, laid out anew when the page changes width. */
function Strip({ report, course }: { readonly report: SupplyReport; readonly course: Course }) {
  const box = useRef<HTMLDivElement>(null)
  const width = useWidth(box)
  const { asOf, nights, bottles, proportionOfDaysCovered } = report
  const input = {
    nights,
    bottles: bottles.flatMap(({ opened, dispensed, state }) => {
      const date = opened ?? dispensed
      const isShown = date !== undefined && state !== "not-counted"
      return isShown ? [{ date, isOpeningRecorded: opened !== undefined }] : []
    }),
    missed: missedNightsTold(course, asOf),
    proportion: proportionOfDaysCovered,
  }
  return (
    <div ref={box} className="coverage-strip">
      <Drawing svg={coverageStrip(input, { width })} />
    </div>
  )
}

function heading({ proportionOfDaysCovered, proportionWithDrop, isPoor }: SupplyReport): string {
  const share = proportionWithDrop ?? proportionOfDaysCovered
  if (share === null) return say("Not known: no bottle is recorded")
  return isPoor
    ? say("{share} of nights, poor coverage", { share: percent(share) })
    : say("{share} of nights", { share: percent(share) })
}

function sentences(report: SupplyReport): readonly string[] {
  const { daysPrescribed, daysCovered, proportionOfDaysCovered, proportionWithDrop, nightsReportedMissed } =
    report
  const span = report.window === null ? "" : spanWords(report.window)
  const byBottles =
    proportionOfDaysCovered === null
      ? say("{nights, plural, one {# night} other {# nights}} of prescription, {span}.", {
          nights: daysPrescribed,
          span,
        })
      : say(
          "{covered} of {nights, plural, one {# night} other {# nights}} had a bottle in date, {span}: {share}.",
          {
            covered: daysCovered,
            nights: daysPrescribed,
            span,
            share: percent(proportionOfDaysCovered),
          },
        )
  if (nightsReportedMissed === 0 || proportionWithDrop === null) return [byBottles]
  const told = say(
    "The family told of {nights, plural, one {# missed night} other {# missed nights}}: {share} with those taken off.",
    { nights: nightsReportedMissed, share: percent(proportionWithDrop) },
  )
  return [byBottles, told]
}

function Prescriptions({ prescriptions }: { readonly prescriptions: readonly PrescriptionCoverage[] }) {
  return (
    <div className="scroll">
      <table className="data">
        <caption className="unseen">{say("Nights covered of each prescription")}</caption>
        <thead>
          <tr>
            <th scope="col">{say("Prescription")}</th>
            <th scope="col">{say("From|day")}</th>
            <th scope="col">{say("Nights")}</th>
            <th scope="col">{say("With a bottle in date")}</th>
            <th scope="col">{say("Share|of nights")}</th>
          </tr>
        </thead>
        <tbody>
          {prescriptions.map((one) => (
            <tr key={`${one.treatment} ${one.from} ${one.eye}`}>
              <th scope="row">{one.prescription}</th>
              <td className="day">{dateWords(one.from)}</td>
              <td>{one.daysPrescribed}</td>
              <td>{one.proportionOfDaysCovered === null ? say("no bottle on record") : one.daysCovered}</td>
              <td>
                {one.proportionOfDaysCovered === null
                  ? say("not known")
                  : percent(one.proportionOfDaysCovered)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

const spanWords = ({ from, to }: { readonly from: CalendarDate; readonly to: CalendarDate }): string =>
  from === to ? dateWords(from) : say("{from} to {to}", { from: dateWords(from), to: dateWords(to) })
