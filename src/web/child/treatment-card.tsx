import { useMemo, useState } from "react"
import { answerScale } from "../../chart/index.js"
import { dateWords, knownWords } from "../../chart/words.js"
import type { Chance } from "../../engine/assessment.js"
import { say } from "../../engine/say.js"
import { isPluralName, treatmentName } from "../../engine/treatment-name.js"
import { capitalised, monthAndYear, percent, sentence } from "../format.js"
import { Drawing } from "../parts/drawing.js"
import type { CourseReading } from "../reading.js"
import { treatmentsAfter, treatmentsOn } from "../treatments-on.js"
import { WhyButton } from "../why/why-button.js"
import {
  afterStopInWords,
  earliestAnswerSentence,
  findingInWords,
  findingSentence,
  leanInWords,
} from "../words.js"
import { Reasons } from "./growth-card.js"
import { assessedAsIfTreated, POSSIBLE_TREATMENTS, USUAL_TREATMENT } from "./possible-treatment.js"

/** Is it the treatment? Apart from the first question, and often not to be told in one child. */
export function TreatmentCard({ reading }: { readonly reading: CourseReading }) {
  const { assessment, course } = reading
  const { finding, chances, afterStop } = assessment
  const untreated = finding.state === "no-treatment"
  const treatment = finding.treatment ?? say("the treatment")
  const ended = !untreated && treatmentsOn(course, reading.today).length === 0
  const settled = earliestAnswerSentence(finding)
  const open = finding.state === "cannot-tell-yet"
  return (
    <section className="card answer" aria-labelledby="treatment-question">
      <h2 id="treatment-question">{ended ? say("Was it the treatment?") : say("Is it the treatment?")}</h2>
      <p className="big">{findingInWords(finding.state)}</p>
      {untreated ? (
        !assessment.refused && <BeforeTreatment reading={reading} />
      ) : (
        <>
          <p>
            {ended &&
              `${say("{number, select, many {{treatment} have} other {{treatment} has}} ended.", {
                treatment: capitalised(treatment),
                number: isPluralName(treatment) ? "many" : "one",
              })} `}
            {findingSentence(finding)}
          </p>
          <Drawing svg={answerScale(finding)} className="scale" />
          <Reasons reasons={finding.reasons} />
          {afterStop && (
            <>
              <p>
                <b>{say("After the stop:")}</b> {afterStopInWords(afterStop.state)}.
              </p>
              <Reasons reasons={[afterStop.why]} />
            </>
          )}
          {open && chances.length > 0 && (
            <>
              <ChancesTable chances={chances} />
              {settled && <p className="small">{settled}</p>}
            </>
          )}
        </>
      )}
      <p className="soft small">
        {finding.lean && open && (
          <>
            {leanInWords(finding.lean)}
            <span className="screen-only"> · </span>
          </>
        )}
        <WhyButton
          about={say("How the answer about the treatment was found")}
          question="finding"
          reading={reading}
        />
      </p>
    </section>
  )
}

function ChancesTable({ chances }: { readonly chances: readonly Chance[] }) {
  return (
    <table className="figures">
      <caption className="unseen">
        {say("Chance of an answer about the treatment by each planned review")}
      </caption>
      <thead>
        <tr>
          <th scope="col">{say("Chance of an answer by")}</th>
          <th scope="col" className="number">
            {say("if it works")}
          </th>
          <th scope="col" className="number">
            {say("if not")}
          </th>
        </tr>
      </thead>
      <tbody>
        {chances.map((chance) => (
          <tr key={`${chance.review} ${chance.step}`}>
            <th scope="row">
              {knownWords(chance.step)}, {monthAndYear(chance.review)}
            </th>
            <td className="number">{percent(chance.ifItWorks)}</td>
            <td className="number">{percent(chance.ifNot)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** What a family should know before anyone starts: whether it could ever be told that the treatment works. */
function BeforeTreatment({ reading }: { readonly reading: CourseReading }) {
  const [index, setIndex] = useState(USUAL_TREATMENT)
  const treatment = POSSIBLE_TREATMENTS[index]
  const possible = useMemo(
    () => (treatment ? assessedAsIfTreated(reading.course, treatment, reading) : null),
    [reading, treatment],
  )
  if (!treatment || !possible) return null
  const coming = treatmentsAfter(reading.course, reading.today)
  return (
    <>
      {coming.map((planned) => (
        <p key={treatmentName(planned)}>
          {sentence(
            say("{number, select, many {{treatment} begin} other {{treatment} begins}} on {day}", {
              treatment: treatmentName(planned),
              number: isPluralName(treatmentName(planned)) ? "many" : "one",
              day: dateWords(planned.from),
            }),
          )}
        </p>
      ))}
      <p>
        <label htmlFor="possible-treatment">{say("If it began today with")} </label>
        <select
          id="possible-treatment"
          value={index}
          onChange={(event) => setIndex(Number(event.target.value))}
        >
          {POSSIBLE_TREATMENTS.map((option, i) => (
            <option key={treatmentName(option)} value={i}>
              {treatmentName(option)}
            </option>
          ))}
        </select>
      </p>
      {possible.chances.length > 0 ? (
        <>
          <ChancesTable chances={possible.chances} />
          <p className="small">
            {possible.finding.earliestAnswer === null
              ? say(
                  "No planned review would reach even odds of an answer. Earlier glasses and lengths from before the start raise the chance.",
                )
              : say("An answer would be at least as likely as not by {month}.", {
                  month: monthAndYear(possible.finding.earliestAnswer),
                })}
          </p>
        </>
      ) : (
        <Reasons reasons={possible.finding.reasons} />
      )}
    </>
  )
}
