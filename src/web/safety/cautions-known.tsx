import { Link } from "@tanstack/react-router"
import { dateWords } from "../../chart/words.js"
import type { TreatmentChoice } from "../../engine/course.js"
import { isInUse, realTreatments } from "../../engine/protocol/treatment-course.js"
import type { StartCaution } from "../../engine/safety/caution.js"
import { startCautions } from "../../engine/safety/start-cautions.js"
import { msg, say } from "../../engine/say.js"
import { inDigits } from "../../engine/words.js"
import { capitalised } from "../format.js"
import { Said } from "../parts/said.js"
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
      <h2 id="cautions-known">
        {isOnDrops ? say("Cautions of the drops in use") : say("Before drops are started")}
      </h2>
      <p>
        {missing === 0 ? (
          say("All {count} are answered.", { count: cautions.length })
        ) : (
          <Said
            message="{missing} They are answered {link}."
            values={{
              missing: (
                <b className="caution">
                  {say("{missing} of {count} not asked yet.", { missing, count: cautions.length })}
                </b>
              ),
              link: (
                <Link to="/children/$childId/visit" params={{ childId }} search={{}}>
                  {say("with a visit")}
                </Link>
              ),
            }}
          />
        )}
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by itself, and the keyboard must reach it */}
      <section className="scroll" tabIndex={0} aria-label={say("Cautions, one by one")}>
        <table className="cautions-known">
          <thead>
            <tr>
              <th scope="col">{say("Caution")}</th>
              <th scope="col">{say("Answer")}</th>
              <th scope="col">{say("What the source says")}</th>
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
                  <Said
                    message={
                      caution.duty ? "{weight}: {says} ({duty}, {grade})." : "{weight}: {says} ({grade})."
                    }
                    values={{
                      weight: <b>{say(WEIGHTS[caution.weight])}</b>,
                      says: caution.says,
                      duty: caution.duty ?? "",
                      grade: caution.grade,
                    }}
                  />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <p className="soft small">
        {say(
          "The warnings are those of 1 % drops, 20 to 100 times stronger than {strong} and {weak} %: a list on the safe side.",
          { strong: inDigits(0.05), weak: inDigits(0.01) },
        )}
      </p>
    </section>
  )
}

const WEIGHTS: Readonly<Record<StartCaution["weight"], string>> = {
  contraindicated: msg("Not given"),
  specialist: msg("Specialist"),
  caution: msg("Caution"),
}

function Answer({ caution: { id, state, on, note } }: { readonly caution: StartCaution }) {
  if (state === "not-asked") {
    const how = id === "raised-pressure" ? say("not measured yet") : say("not asked yet")
    return <span className="caution">{how}</span>
  }
  return (
    <>
      {state === "asked-yes" ? <b>{say("yes")}</b> : say("no")}
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
