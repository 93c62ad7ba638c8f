import type { ReactNode } from "react"
import { growthScale } from "../../chart/index.js"
import { eyeWords, fixed, rangeWords } from "../../chart/words.js"
import type { EyeAssessment } from "../../engine/assessment.js"
import { EYES } from "../../engine/course.js"
import { msg, say } from "../../engine/say.js"
import { centileInWords } from "../../engine/words.js"
import { sentence } from "../format.js"
import { Drawing } from "../parts/drawing.js"
import type { CourseReading } from "../reading.js"
import { WhyButton } from "../why/why-button.js"
import { certaintyInWords, growthInWords, growthSentence } from "../words.js"

/** Is the eye growing slowly enough? The state first and large, then its figures. */
export function GrowthCard({
  reading,
  toDecide,
  children,
}: {
  readonly reading: CourseReading
  /** What waits for a decision, right under the answer that calls for it. */
  readonly toDecide?: ReactNode
  /** What stands under the answer, such as whether the family was told. */
  readonly children?: ReactNode
}) {
  const { assessment, course } = reading
  const { growth, eyes } = assessment
  const scale = scaleOf(reading)
  const certainty = certaintyInWords(growth)
  const measured = EYES.filter((eye) => eyes[eye].length !== null)
  return (
    <section className="card answer" aria-labelledby="growth-question">
      <h2 id="growth-question">{say("Is the eye growing slowly enough?")}</h2>
      <p className="big">{growthInWords(growth.state)}</p>
      <p>{growthSentence(growth, course.child.sex) ?? growth.reasons.map(sentence).join(" ")}</p>
      {toDecide}
      {scale && <Drawing svg={scale} className="scale" />}
      {growth.mmPerYear !== null && <Reasons reasons={growth.reasons} />}
      {measured.length > 0 && (
        <table className="figures">
          <thead>
            <tr>
              <td />
              {measured.map((eye) => (
                <th key={eye} scope="col" className="number">
                  {eyeWords(eye)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {EYE_FIGURES.map(([label, figure]) => (
              <tr key={label}>
                <th scope="row">{say(label)}</th>
                {measured.map((eye) => (
                  <td key={eye} className="number">
                    {figure(eyes[eye])}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <p className="soft small">
        {certainty}
        {certainty && <span className="screen-only"> · </span>}
        <WhyButton about={say("How the growth state was found")} question="growth" reading={reading} />
      </p>
      {children}
    </section>
  )
}

export function Reasons({ reasons }: { readonly reasons: readonly string[] }) {
  return (
    <>
      {reasons.map((reason) => (
        <p key={reason} className="soft small">
          {sentence(reason)}
        </p>
      ))}
    </>
  )
}

const EYE_FIGURES: readonly (readonly [label: string, figure: (eye: EyeAssessment) => string])[] = [
  [msg("Length, mm"), ({ length }) => (length ? fixed(length.mm, 2) : "–")],
  [msg("Growth, mm per year"), ({ rate }) => (rate ? fixed(rate.mmPerYear, 2) : "–")],
  [
    msg("95 % interval"),
    ({ rate }) => (rate ? rangeWords({ low: rate.low95, high: rate.high95, digits: 2 }) : "–"),
  ],
  [
    msg("Smallest change told, mm"),
    ({ detectableChangeMm }) => (detectableChangeMm === null ? "–" : fixed(detectableChangeMm, 2)),
  ],
  [
    msg("Centile"),
    ({ position }) => ("refused" in position ? say("not given|centile") : centileInWords(position.centile)),
  ],
]

function scaleOf({ assessment, settings }: CourseReading): string | null {
  const { mmPerYear, low95, high95, naturalMmPerYear, emmetropicMmPerYear } = assessment.growth
  if (mmPerYear === null || low95 === undefined || high95 === undefined) return null
  if (naturalMmPerYear === undefined || emmetropicMmPerYear === undefined) return null
  return growthScale({
    mmPerYear,
    low95,
    high95,
    natural: naturalMmPerYear,
    emmetropic: emmetropicMmPerYear,
    cuts: settings.cuts,
  })
}
