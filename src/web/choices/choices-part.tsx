import { say } from "../../engine/say.js"
import "./choices.css"
import { useMemo, useState } from "react"
import { choices } from "../../engine/choices/choices.js"
import { choicesTable, notAskedAbout } from "../../engine/choices/choices-table.js"
import { evidence } from "../../evidence/index.js"
import * as treatmentEvidence from "../../evidence/treatments.js"
import type { ChildPartProps } from "../child/child-part-props.js"
import { sentence } from "../format.js"
import { ChoicesTable } from "./choices-table.js"
import { ChoicesWhy } from "./choices-why.js"
import { DecideForm } from "./decide-form.js"
import { DecisionOwed } from "./decision-owed.js"
import { OptionsShown } from "./options-shown.js"

/** The options side by side for this child, and the decision with its reason. Nothing is chosen in advance. */
export function ChoicesPart({ view, reading, onDone }: ChildPartProps) {
  const [withStrong, setWithStrong] = useState(false)
  const [hidden, setHidden] = useState<ReadonlySet<string>>(new Set())
  const [decided, setDecided] = useState(0)
  const all = useMemo(() => {
    const { course, today, settings, rules } = reading
    return choices({
      course,
      asOf: today,
      evidence,
      treatmentEvidence,
      settings,
      rules,
      withStrong,
    })
  }, [reading, withStrong])
  const shown = useMemo(
    () => ({ ...all, options: all.options.filter(({ id }) => !hidden.has(id)) }),
    [all, hidden],
  )
  const rows = useMemo(() => choicesTable(shown), [shown])
  const notAsked = notAskedAbout(shown)
  return (
    <div className="choices-part">
      <DecisionOwed reading={reading} />
      <section className="card" aria-labelledby="options">
        <div className="choices-head">
          <h2 id="options">{say("Options side by side")}</h2>
          {all.refused === undefined && (
            <OptionsShown
              options={all.options}
              hidden={hidden}
              onHidden={setHidden}
              withStrong={withStrong}
              onWithStrong={setWithStrong}
            />
          )}
          <ChoicesWhy reading={reading} choices={all} />
        </div>
        {all.refused === undefined ? (
          <>
            <p className="soft small">
              {say(
                "In a fixed order; none is recommended here. The clinician and the family decide. Not a medical device.",
              )}
            </p>
            <ChoicesTable options={shown.options} rows={rows} />
            {notAsked.length > 0 && (
              <details className="small">
                <summary>
                  {say("Cautions not asked about yet before drops: {count}", { count: notAsked.length })}
                </summary>
                <p>{sentence(notAsked.join(", "))}</p>
              </details>
            )}
            <details className="small">
              <summary>{say("What these figures take for granted")}</summary>
              <ul>
                {all.assumptions.map((assumption) => (
                  <li key={assumption}>{sentence(assumption)}</li>
                ))}
              </ul>
            </details>
          </>
        ) : (
          <p>
            {say("No figures are given.")} {sentence(all.refused)}
          </p>
        )}
      </section>
      <DecideForm
        key={decided}
        view={view}
        reading={reading}
        shown={shown}
        rows={rows}
        onDone={(message) => {
          setDecided(decided + 1)
          onDone(message)
        }}
      />
    </div>
  )
}
