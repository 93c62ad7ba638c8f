import { useState } from "react"
import { dateWords } from "../../chart/words.js"
import type { CalendarDate, TreatmentChoice } from "../../engine/course.js"
import { measureName } from "../../engine/protocol/measured.js"
import type { Protocol } from "../../engine/protocol/protocol.js"
import { protocolTimeline } from "../../engine/protocol/protocol-timeline.js"
import { stepTitle } from "../../engine/protocol/titles.js"
import { msg, say } from "../../engine/say.js"
import { capitalised } from "../format.js"
import { Field } from "../parts/field.js"

const MONTHS = 24

const CHILDREN: readonly (readonly [words: string, treatment: TreatmentChoice | null])[] = [
  [msg("on drops"), { kind: "atropine" }],
  [msg("on defocus or lenslet spectacles"), { kind: "defocus-spectacles" }],
  [msg("on contact lenses"), { kind: "dual-focus-lens" }],
  [msg("on orthokeratology"), { kind: "orthokeratology" }],
  [msg("on no treatment"), null],
]

/** Who a protocol that ships is first shown for. */
const FIRST_SHOWN: Readonly<Record<string, number>> = { optical: 1, watchful: 4 }

/** The dates of the next two years of a protocol, for a child first seen today. */
export function ProtocolPreview({
  protocol,
  id,
  today,
}: {
  /** Null while the draft has faults. */
  readonly protocol: Protocol | null
  readonly id: string
  readonly today: CalendarDate
}) {
  const [which, setWhich] = useState(FIRST_SHOWN[id] ?? 0)
  const treatment = CHILDREN[which]?.[1] ?? null
  const timeline = protocol ? protocolTimeline({ protocol, start: today, treatment, months: MONTHS }) : null
  return (
    <section className="card protocol-preview" aria-label={say("The next two years")}>
      <h2>{say("The next two years")}</h2>
      <Field label={say("For a child who begins today")}>
        {(control) => (
          <select {...control} value={which} onChange={(event) => setWhich(Number(event.target.value))}>
            {CHILDREN.map(([words], index) => (
              <option key={words} value={index}>
                {say(words)}
              </option>
            ))}
          </select>
        )}
      </Field>
      {timeline === null && <p className="soft">{say("Shown once nothing is wrong with the steps.")}</p>}
      {timeline?.length === 0 && (
        <p className="field-caution">{say("Nothing is planned: such a child is never seen.")}</p>
      )}
      {timeline !== null && timeline.length > 0 && (
        <ol>
          {timeline.map(({ stepId, title, date, opens, closes, kind, measures }) => (
            <li key={`${stepId} ${date}`}>
              <strong>{dateWords(date)}</strong> {capitalised(stepTitle({ title }))}
              <span className="soft">
                {say("{what}; between {opens} and {closes}", {
                  what: kind === "decision" ? say("decide") : measures.map(measureName).join(", "),
                  opens: dateWords(opens),
                  closes: dateWords(closes),
                })}
              </span>
            </li>
          ))}
        </ol>
      )}
      {protocol && endsInTheOpen(protocol) && (
        <p className="field-caution">
          {say(
            "No step is counted from the last visit off treatment: a child who is only observed is not asked to come again.",
          )}
        </p>
      )}
    </section>
  )
}

const endsInTheOpen = ({ steps }: Protocol): boolean =>
  !steps.some(({ anchor }) => anchor === "last-visit-off-treatment")
