import "./safety.css"
import { useMemo, useState } from "react"
import { dateWords } from "../../chart/words.js"
import { offersFor } from "../../engine/safety/offers.js"
import { openConcerns } from "../../engine/safety/open-concerns.js"
import { say } from "../../engine/say.js"
import { duties } from "../../evidence/clinical.js"
import { evidence } from "../../evidence/index.js"
import { adverseEffects } from "../../evidence/treatments.js"
import type { ChildPartProps } from "../child/child-part-props.js"
import { sentence } from "../format.js"
import { Said } from "../parts/said.js"
import { AdverseEventsCard } from "./adverse-events-card.js"
import { CautionsKnown } from "./cautions-known.js"
import { ComfortSection } from "./comfort-section.js"
import { ConcernForm } from "./concern-form.js"
import { concernTitle, KINDS_BY_HAND } from "./concern-words.js"
import { Emergency } from "./emergency.js"
import { OpenConcernCard } from "./open-concern-card.js"

const SAFETY_EVIDENCE = { adverseEffects, duties, effects: evidence.growth.effects }

/** A child's safety: what is open, red flags first; how the eyes bear the drops; what was asked; whom to call. */
export function SafetyPart({ view, reading, onDone }: ChildPartProps) {
  const { course, today, protocol, rules } = reading
  const [adding, setAdding] = useState(false)
  const open = useMemo(
    () =>
      openConcerns({ course, today, protocol, switches: rules.examinationSwitches }).map((concern) => ({
        concern,
        offers: offersFor({ concern, course, today, evidence: SAFETY_EVIDENCE }),
      })),
    [course, today, protocol, rules],
  )
  const closed = (course.concerns ?? []).filter(
    (concern) => concern.closed !== undefined && concern.closed <= today,
  )
  return (
    <div className="safety">
      <div>
        <h2>{headingOf(open.length)}</h2>
        {open.length === 0 && (
          <p className="soft">
            {say("What was not measured or asked raises nothing: this is no proof of safety.")}
          </p>
        )}
        {open.map(({ concern, offers }) => (
          <OpenConcernCard
            key={`${concern.kind} ${concern.since} ${concern.what}`}
            view={view}
            today={today}
            concern={concern}
            offers={offers}
            urgent={rules.contacts.urgent}
            onDone={onDone}
          />
        ))}
        <div className="form-actions">
          <button type="button" onClick={() => setAdding(true)}>
            {say("Record another concern")}
          </button>
        </div>
        <ComfortSection reading={reading} />
        <CautionsKnown childId={view.child.id} reading={reading} />
      </div>
      <div>
        <Emergency reading={reading} />
        <AdverseEventsCard view={view} reading={reading} />
        <section className="card" aria-labelledby="closed-concerns">
          <h2 id="closed-concerns">{say("Closed concerns")}</h2>
          {closed.length === 0 ? (
            <p>{say("None yet.")}</p>
          ) : (
            <ul className="plain small">
              {closed.toReversed().map((concern) => (
                <li key={`${concern.opened} ${concern.kind} ${concern.what}`}>
                  <Said
                    message="{kind}, {from} to {to}. {outcome}"
                    values={{
                      kind: <b>{concernTitle(concern.kind)}</b>,
                      from: dateWords(concern.opened),
                      to: dateWords(concern.closed ?? today),
                      outcome: sentence(concern.outcome ?? ""),
                    }}
                  />
                </li>
              ))}
            </ul>
          )}
        </section>
      </div>
      {adding && (
        <ConcernForm
          childId={view.child.id}
          today={today}
          start={{ opened: today, kind: KINDS_BY_HAND[0], what: "" }}
          byHand
          onClose={() => setAdding(false)}
          onDone={onDone}
        />
      )}
    </div>
  )
}

const headingOf = (count: number): string =>
  say("{count, plural, =0 {Nothing is open} =1 {One open concern} other {# open concerns}}", { count })
