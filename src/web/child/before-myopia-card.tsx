import { say } from "../../engine/say.js"
import "./before-myopia.css"
import { beforeMyopia } from "../../engine/before-myopia/before-myopia.js"
import { beforeMyopiaInWords } from "../../engine/before-myopia/in-words.js"
import { beforeMyopiaEvidence } from "../../evidence/before-myopia.js"
import { evidence } from "../../evidence/index.js"
import { sentence } from "../format.js"
import type { CourseReading } from "../reading.js"

/** For a child who is not myopic and not treated: what was read that speaks of such children. Nothing for any other. */
export function BeforeMyopiaCard({ reading }: { readonly reading: CourseReading }) {
  const { course, today, protocol } = reading
  const answer = beforeMyopia({
    course,
    asOf: today,
    evidence: {
      onset: beforeMyopiaEvidence,
      emmetropic: evidence.emmetropic,
      myopiaCutOffD: evidence.growth.values.myopiaCutOffD.value,
    },
    protocol,
  })
  if ("refused" in answer) return null
  const words = beforeMyopiaInWords(answer)
  return (
    <section className="card answer before-myopia" aria-labelledby="before-myopia">
      <h2 id="before-myopia">{say("Before myopia")}</h2>
      <p className="middle">{words.first}</p>
      <div className="before-myopia-parts">
        <Part title={say("Length")} sentences={words.length} />
        <Part title={say("Refraction")} sentences={words.refraction} />
        <Part title={say("Parents")} sentences={words.parents} />
        <Part title={say("Reviews")} sentences={words.review} />
        <div>
          <h3>{say("Advice")}</h3>
          {words.advice.map(({ what, findings }) => (
            <details key={what}>
              <summary>{what}</summary>
              <ul className="small">
                {findings.map((finding) => (
                  <li key={finding}>{sentence(finding)}</li>
                ))}
              </ul>
            </details>
          ))}
        </div>
        <Part title={say("Not said")} sentences={words.notSaid} />
      </div>
    </section>
  )
}

function Part({ title, sentences }: { readonly title: string; readonly sentences: readonly string[] }) {
  if (sentences.length === 0) return null
  return (
    <div>
      <h3>{title}</h3>
      {sentences.map((text) => (
        <p key={text} className="small">
          {sentence(text)}
        </p>
      ))}
    </div>
  )
}
