import { dateWords } from "../../chart/words.js"
import { EYES, type Visit } from "../../engine/course.js"
import { EYE_FIELDS, fieldName } from "../../engine/figure-names.js"
import { say } from "../../engine/say.js"
import { eyeFigureWords } from "../child/eye-figure-words.js"

export interface Beside {
  readonly date: string
  readonly recorded: Visit | null
  readonly offered: Visit
  readonly contradictions: readonly { readonly path: string }[]
}

/** The figures of a visit eye by eye, beside what is recorded on its day. */
export function FiguresBeside({
  visit,
  isCompared,
}: {
  readonly visit: Beside
  readonly isCompared: boolean
}) {
  const { date, recorded, offered, contradictions } = visit
  const rows = EYES.flatMap((eye) =>
    EYE_FIELDS.flatMap((field) => {
      const [was, now] = [eyeFigureWords(field, recorded?.[eye]), eyeFigureWords(field, offered[eye])]
      const isAgainst = contradictions.some(({ path }) => path === `${eye}.${field}`)
      return was === "" && now === "" ? [] : [{ key: `${eye}.${field}`, eye, field, was, now, isAgainst }]
    }),
  )
  const place = contradictions.some(({ path }) => path === "from")
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by itself, and the keyboard must reach it
    <section className="scroll beside" tabIndex={0} aria-label={dateWords(date)}>
      <table className="data">
        <caption>{dateWords(date)}</caption>
        <thead>
          <tr>
            <th scope="col">{say("Eye")}</th>
            <th scope="col">{say("Figure|column")}</th>
            <th scope="col">{say("In the file")}</th>
            {isCompared && <th scope="col">{say("Recorded here")}</th>}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, eye, field, was, now, isAgainst }) => (
            <tr key={key}>
              <th scope="row">{say("{eye, select, right {Right} other {Left}}", { eye })}</th>
              <td>{fieldName(field)}</td>
              <td>{now || "–"}</td>
              {isCompared && (
                <td className={isAgainst ? "against" : undefined}>
                  {was || "–"}
                  {isAgainst && <span className="soft small">{say("differs from the file")}</span>}
                </td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
      {place && (
        <p className="soft small">
          {say("Figures measured here and figures from elsewhere would stand in one visit.")}
        </p>
      )}
    </section>
  )
}
