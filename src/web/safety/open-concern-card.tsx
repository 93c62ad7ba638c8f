import { useState } from "react"
import { dateWords } from "../../chart/words.js"
import type { Offer } from "../../engine/safety/offers.js"
import type { OpenConcern } from "../../engine/safety/open-concerns.js"
import { say } from "../../engine/say.js"
import type { ChildView } from "../../server/contract/child.js"
import { inWords, sentence } from "../format.js"
import { Said } from "../parts/said.js"
import { ConcernForm } from "./concern-form.js"
import { concernTitle, seriousnessInWords } from "./concern-words.js"
import { entryOfConcern } from "./recorded-entry.js"

interface OpenConcernCardProps {
  readonly view: ChildView
  readonly today: string
  readonly concern: OpenConcern
  /** Where care on the same day is to be had; undefined while the practice has not said. */
  readonly urgent: string | undefined
  readonly offers: readonly Offer[]
  readonly onDone: (message: string) => void
}

/** One concern with its figures, who looks after it, what can be considered, and the way to take it up or close it. */
export function OpenConcernCard({ view, today, concern, urgent, offers, onDone }: OpenConcernCardProps) {
  const [open, setOpen] = useState<"edit" | "close" | null>(null)
  const { kind, since, what, recorded, owner, isRedFlag } = concern
  const entryId = recorded ? entryOfConcern(view, recorded) : undefined
  const start = recorded ?? { opened: since, kind, what: inWords(what) }
  const name = concernTitle(kind)
  return (
    <article className={isRedFlag ? "concern red-flag" : "concern"} aria-label={name}>
      <h3>{name}</h3>
      <p>{sentence(what)}</p>
      {isRedFlag && urgent && (
        <p>
          <Said message="Urgent contact: {urgent}" values={{ urgent: <b>{urgent}</b> }} />
        </p>
      )}
      {recorded && recorded.what !== inWords(what) && (
        <p className="small">{say("Recorded: {what}", { what: sentence(recorded.what) })}</p>
      )}
      <p className="small">
        {recorded
          ? recordInWords(recorded, { since, owner })
          : say("Raised by the visit of {day}. Nobody has taken it up yet.", { day: dateWords(since) })}
      </p>
      {offers.length > 0 && (
        <details open={isRedFlag}>
          <summary>{say("What can be considered")}</summary>
          <ul className="offers">
            {offers.map((offer) => (
              <li key={offer.what}>
                <b>{sentence(offer.what)}</b>
                <ul>
                  {offer.words.map((words) => (
                    <li key={words}>{sentence(words)}</li>
                  ))}
                </ul>
                <span className="soft">{offer.grade}</span>
              </li>
            ))}
          </ul>
        </details>
      )}
      <div className="form-actions">
        {recorded ? (
          <>
            <button
              type="button"
              className="primary"
              disabled={!entryId}
              aria-label={say("Close with a note: {name}", { name })}
              onClick={() => setOpen("close")}
            >
              {say("Close with a note")}
            </button>
            <button
              type="button"
              disabled={!entryId}
              aria-label={say("Change owner or details: {name}", { name })}
              onClick={() => setOpen("edit")}
            >
              {say("Change owner or details")}
            </button>
          </>
        ) : (
          <button
            type="button"
            className="primary"
            aria-label={say("Take it up: {name}", { name })}
            onClick={() => setOpen("edit")}
          >
            {say("Take it up")}
          </button>
        )}
      </div>
      {open && (
        <ConcernForm
          childId={view.child.id}
          today={today}
          start={start}
          entryId={entryId}
          closing={open === "close"}
          onClose={() => setOpen(null)}
          onDone={onDone}
        />
      )}
    </article>
  )
}

/** Since when it is on record, who looks after it, and whether it is kept as an unwanted effect. */
function recordInWords(
  { adverseEvent, seriousness, relatedness }: NonNullable<OpenConcern["recorded"]>,
  { since, owner }: Pick<OpenConcern, "since" | "owner">,
): string {
  const values = { day: dateWords(since), owned: owner ? "yes" : "no", owner: owner ?? "" }
  if (!adverseEvent) {
    return say(
      "On record since {day}, {owned, select, yes {looked after by {owner}} other {nobody looks after it yet}}.",
      values,
    )
  }
  return say(
    "On record since {day}, {owned, select, yes {looked after by {owner}} other {nobody looks after it yet}}; an adverse event, {seriousness}, {relatedness, select, unlikely {unlikely from the treatment} possible {possible from the treatment} probable {probable from the treatment} other {cause not said}}.",
    {
      ...values,
      seriousness: seriousnessInWords(seriousness),
      relatedness: relatedness ?? "not-said",
    },
  )
}
