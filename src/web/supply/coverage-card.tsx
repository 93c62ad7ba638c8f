import { useRef } from "react"
import { coverageStrip } from "../../chart/coverage-strip.js"
import { dateWords } from "../../chart/words.js"
import type { CalendarDate, Course } from "../../engine/course.js"
import { ADHERENCE_RULE } from "../../engine/supply/definition.js"
import { missedNightsTold } from "../../engine/supply/missed-nights.js"
import type { PrescriptionCoverage, SupplyReport } from "../../engine/supply/supply-report.js"
import { counted } from "../../engine/words.js"
import { percent } from "../format.js"
import { Drawing } from "../parts/drawing.js"
import { useWidth } from "../parts/use-width.js"

/** How many of the prescribed nights had a bottle in date: the share, the strip, the gaps, and what the share means. */
export function CoverageCard({ report, course }: { readonly report: SupplyReport; readonly course: Course }) {
  const { window, gaps, prescriptions } = report
  return (
    <section className="card" aria-labelledby="nights-covered">
      <h2 id="nights-covered">Nights covered</h2>
      {window === null ? (
        <p>No drops were prescribed before today.</p>
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
              <h3>Gaps</h3>
              <ul className="gaps">
                {gaps.map(({ from, to, nights: count }) => (
                  <li key={from}>
                    {spanWords({ from, to })}: {counted(count, "night")}
                  </li>
                ))}
              </ul>
              <p className="soft small">
                In a gap there was no drop, or one from a bottle past its date. The growth is judged as
                untreated there.
              </p>
            </>
          )}
          <p className="soft small">
            Proportion of days covered: {report.definition}. Here {ADHERENCE_RULE}. Bottles tell how many
            nights could have had a drop, not how many had one.
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
  if (share === null) return "Not known: no bottle is recorded"
  return `${percent(share)} of nights${isPoor ? ", poor coverage" : ""}`
}

function sentences(report: SupplyReport): readonly string[] {
  const { daysPrescribed, daysCovered, proportionOfDaysCovered, proportionWithDrop, nightsReportedMissed } =
    report
  const span = report.window === null ? "" : spanWords(report.window)
  const byBottles =
    proportionOfDaysCovered === null
      ? `${counted(daysPrescribed, "night")} of prescription, ${span}.`
      : `${daysCovered} of ${counted(daysPrescribed, "night")} had a bottle in date, ${span}: ${percent(proportionOfDaysCovered)}.`
  if (nightsReportedMissed === 0 || proportionWithDrop === null) return [byBottles]
  const told = counted(nightsReportedMissed, "missed night")
  return [byBottles, `The family told of ${told}: ${percent(proportionWithDrop)} with those taken off.`]
}

function Prescriptions({ prescriptions }: { readonly prescriptions: readonly PrescriptionCoverage[] }) {
  return (
    <div className="scroll">
      <table className="data">
        <caption className="unseen">Nights covered of each prescription</caption>
        <thead>
          <tr>
            <th scope="col">Prescription</th>
            <th scope="col">From</th>
            <th scope="col">Nights</th>
            <th scope="col">With a bottle in date</th>
            <th scope="col">Share</th>
          </tr>
        </thead>
        <tbody>
          {prescriptions.map((one) => (
            <tr key={`${one.treatment} ${one.from} ${one.eye}`}>
              <th scope="row">{one.prescription}</th>
              <td className="day">{dateWords(one.from)}</td>
              <td>{one.daysPrescribed}</td>
              <td>{one.proportionOfDaysCovered === null ? "no bottle on record" : one.daysCovered}</td>
              <td>
                {one.proportionOfDaysCovered === null ? "not known" : percent(one.proportionOfDaysCovered)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

const spanWords = ({ from, to }: { readonly from: CalendarDate; readonly to: CalendarDate }): string =>
  from === to ? dateWords(from) : `${dateWords(from)} to ${dateWords(to)}`
