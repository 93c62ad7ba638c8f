import { Link } from "@tanstack/react-router"
import { useMemo } from "react"
import { comfortFigure } from "../../chart/comfort-figure.js"
import { dateWords, fixed } from "../../chart/words.js"
import { EYES } from "../../engine/course.js"
import { type ComfortLine, comfortCourse } from "../../engine/safety/comfort-course.js"
import { SWITCHED_RULES } from "../../engine/safety/switched-concerns.js"
import { say } from "../../engine/say.js"
import { signed } from "../format.js"
import { Drawing } from "../parts/drawing.js"
import type { CourseReading } from "../reading.js"

/** Pupil, accommodation, acuity and pressure against the child's own values before the drops. */
export function ComfortSection({ reading }: { readonly reading: CourseReading }) {
  const { course, today, protocol, rules } = reading
  const comfort = useMemo(() => comfortCourse({ course, today, protocol }), [course, today, protocol])
  const svg = useMemo(() => comfortFigure(comfort, { width: 720 }), [comfort])
  const off = SWITCHED_RULES.filter(({ duty }) => rules.examinationSwitches[duty] !== true)
  return (
    <section className="card" aria-labelledby="comfort">
      <h2 id="comfort">{say("Against the child’s own values before the drops")}</h2>
      {comfort.lines.length === 0 ? (
        <p>{say("No pupil, accommodation, acuity or pressure is recorded yet.")}</p>
      ) : (
        <>
          {comfort.begun === null && (
            <p>{say("No drops were begun: there is nothing to compare with yet.")}</p>
          )}
          {svg && <Drawing svg={svg} className="comfort-figure" />}
          <ComfortTable lines={comfort.lines} />
          <p className="soft small">
            {say(
              "Dotted: the last value before the drops. In brackets: the change against it, for the same eye; accommodation within one stated method only. The light a pupil was measured in is not recorded: daylight is compared with daylight.",
            )}
          </p>
        </>
      )}
      {off.length > 0 && (
        <details>
          <summary className="small">
            {say("Not watched here: {what}", { what: off.map(({ what }) => say(what)).join("; ") })}
          </summary>
          <ul className="offers">
            {off.map(({ duty, what, figure, why }) => (
              <li key={duty}>
                {say("{duty}, {what}: {figure}. Off until the practice turns it on: {why}.", {
                  duty,
                  what: say(what),
                  figure: say(figure),
                  why: say(why),
                })}
              </li>
            ))}
          </ul>
          <p className="small">
            <Link to="/settings/$part" params={{ part: "examinations" }}>
              {say("Turn them on or off")}
            </Link>
          </p>
        </details>
      )}
    </section>
  )
}

function ComfortTable({ lines }: { readonly lines: readonly ComfortLine[] }) {
  const dates = [...new Set(lines.flatMap(({ points }) => points.map(({ date }) => date)))].toSorted()
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by itself, and the keyboard must reach it
    <section className="scroll" tabIndex={0} aria-label={say("Values by visit")}>
      <table className="data">
        <thead>
          <tr>
            <th scope="col">{say("Visit")}</th>
            {lines.map(({ measure, title, unit }) => (
              <th scope="col" key={measure}>
                {say("{title}, {unit}", { title, unit })}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {dates.toReversed().map((date) => (
            <tr key={date}>
              <th scope="row" className="day">
                {dateWords(date)}
              </th>
              {lines.map((line) => (
                <ValuesCell key={line.measure} values={valuesInWords(line, date)} />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

function ValuesCell({ values }: { readonly values: readonly string[] }) {
  if (values.length === 0) return <td>–</td>
  return (
    <td>
      {values.map((value) => (
        <div key={value}>{value}</div>
      ))}
    </td>
  )
}

/** "right 4.1 (+0.3)" and "left 4.0 (+0.2)", those that were measured. */
function valuesInWords({ points, digits }: ComfortLine, date: string): readonly string[] {
  return EYES.flatMap((eye) => {
    const point = points.find((candidate) => candidate.date === date && candidate.eye === eye)
    if (!point) return []
    const value = fixed(point.value, digits)
    if (point.change === null)
      return [say("{eye, select, right {right {value}} other {left {value}}}", { eye, value })]
    const change = signed(point.change, digits)
    return [
      say("{eye, select, right {right {value} ({change})} other {left {value} ({change})}}", {
        eye,
        value,
        change,
      }),
    ]
  })
}
