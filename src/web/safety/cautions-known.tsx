import { Link } from "@tanstack/react-router"
import { dateWords } from "../../chart/words.js"
import type { TreatmentChoice } from "../../engine/course.js"
import { isInUse, realTreatments } from "../../engine/protocol/treatment-course.js"
import type { StartCaution } from "../../engine/safety/caution.js"
import { startCautions } from "../../engine/safety/start-cautions.js"
import { capitalised } from "../format.js"
import type { CourseReading } from "../reading.js"

const ATROPINE: TreatmentChoice = { kind: "atropine" }
const ORDER: readonly StartCaution["state"][] = ["asked-yes", "not-asked", "asked-no"]

/** Every caution of the evidence before drops: answered, when, and what the source says of a yes. */
export function CautionsKnown({
  childId,
  reading,
}: {
  readonly childId: string
  readonly reading: CourseReading
}) {
  const { course, today } = reading
  const isOnDrops = realTreatments(course).some(
    (treatment) => treatment.kind === "atropine" && isInUse(treatment, today),
  )
  const cautions = startCautions({ course, today, treatment: ATROPINE }).toSorted(
    (a, b) => ORDER.indexOf(a.state) - ORDER.indexOf(b.state),
  )
  const missing = cautions.filter(({ state }) => state === "not-asked").length
  return (
    <section className="card" aria-labelledby="cautions-known">
      <h2 id="cautions-known">{isOnDrops ? "Cautions of the drops in use" : "Before drops are started"}</h2>
      <p>
        {missing === 0 ? (
          `All ${cautions.length} are answered.`
        ) : (
          <>
            <b className="caution">
              {missing} of {cautions.length} not asked yet.
            </b>{" "}
            They are answered{" "}
            <Link to="/children/$childId/visit" params={{ childId }} search={{}}>
              with a visit
            </Link>
            .
          </>
        )}
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by itself, and the keyboard must reach it */}
      <section className="scroll" tabIndex={0} aria-label="Cautions, one by one">
        <table className="cautions-known">
          <thead>
            <tr>
              <th scope="col">Caution</th>
              <th scope="col">Answer</th>
              <th scope="col">What the source says</th>
            </tr>
          </thead>
          <tbody>
            {cautions.map((caution) => (
              <tr key={caution.id}>
                <th scope="row">{capitalised(caution.name)}</th>
                <td className="answer-given">
                  <Answer caution={caution} />
                </td>
                <td className={caution.state === "asked-yes" ? undefined : "soft"}>
                  <b>{WEIGHTS[caution.weight]}</b>: {caution.says} ({caution.duty && `${caution.duty}, `}
                  {caution.grade}).
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <p className="soft small">
        The warnings are those of 1 % drops, 20 to 100 times stronger than 0.05 and 0.01 %: a list on the safe
        side.
      </p>
    </section>
  )
}

const WEIGHTS: Readonly<Record<StartCaution["weight"], string>> = {
  contraindicated: "Not given",
  specialist: "Specialist",
  caution: "Caution",
}

function Answer({ caution: { id, state, on, note } }: { readonly caution: StartCaution }) {
  if (state === "not-asked") {
    const how = id === "raised-pressure" ? "not measured yet" : "not asked yet"
    return <span className="caution">{how}</span>
  }
  return (
    <>
      {state === "asked-yes" ? <b>yes</b> : "no"}
      {on && <span className="soft">, {dateWords(on)}</span>}
      {note && (
        <>
          <br />
          <span className="soft">{note}</span>
        </>
      )}
    </>
  )
}
