import { say } from "../../engine/say.js"
import { percent } from "../format.js"
import type { CourseReading } from "../reading.js"
import { WhyButton } from "../why/why-button.js"
import { Reasons } from "./growth-card.js"

/** The chances of a long eye and of high myopia by 18, untreated and as treated now. */
export function ByEighteenCard({ reading }: { readonly reading: CourseReading }) {
  const { forecast } = reading
  const rows = [
    [say("26 mm or longer"), forecast.chance26mmBy18],
    [say("−6 D or more myopic"), forecast.chanceMinus6DBy18],
  ] as const
  return (
    <section className="card answer" aria-labelledby="by-eighteen">
      <h2 id="by-eighteen">{say("By 18 years")}</h2>
      {forecast.refused ? (
        <Reasons reasons={[forecast.refused]} />
      ) : (
        <table className="figures">
          <thead>
            <tr>
              <th scope="col">{say("Chance of")}</th>
              <th scope="col" className="number">
                {say("untreated")}
              </th>
              <th scope="col" className="number">
                {say("as now")}
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map(([label, chance]) => (
              <tr key={label}>
                <th scope="row">{label}</th>
                <td className="number">{chance ? percent(chance.untreated) : "–"}</td>
                <td className="number">{chance ? percent(chance.asTreated) : "–"}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <p className="soft small">
        <WhyButton about={say("How the chances by 18 were found")} question="forecast" reading={reading} />
      </p>
    </section>
  )
}
