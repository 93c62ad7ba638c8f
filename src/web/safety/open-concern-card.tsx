import { useState } from "react"
import { dateWords } from "../../chart/words.js"
import type { Offer } from "../../engine/safety/offers.js"
import type { OpenConcern } from "../../engine/safety/open-concerns.js"
import type { ChildView } from "../../server/contract/child.js"
import { inWords, sentence } from "../format.js"
import { ConcernForm } from "./concern-form.js"
import { concernTitle } from "./concern-words.js"
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
          Urgent contact: <b>{urgent}</b>
        </p>
      )}
      {recorded && recorded.what !== inWords(what) && (
        <p className="small">Recorded: {sentence(recorded.what)}</p>
      )}
      <p className="small">
        {recorded ? (
          <>
            On record since {dateWords(since)},{" "}
            {owner ? `looked after by ${owner}` : "nobody looks after it yet"}
            {recorded.adverseEvent && `; an adverse event, ${adverseInWords(recorded)}`}.
          </>
        ) : (
          <>Raised by the visit of {dateWords(since)}. Nobody has taken it up yet.</>
        )}
      </p>
      {offers.length > 0 && (
        <details open={isRedFlag}>
          <summary>What can be considered</summary>
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
              aria-label={`Close with a note: ${name}`}
              onClick={() => setOpen("close")}
            >
              Close with a note
            </button>
            <button
              type="button"
              disabled={!entryId}
              aria-label={`Change owner or details: ${name}`}
              onClick={() => setOpen("edit")}
            >
              Change owner or details
            </button>
          </>
        ) : (
          <button
            type="button"
            className="primary"
            aria-label={`Take it up: ${name}`}
            onClick={() => setOpen("edit")}
          >
            Take it up
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

const adverseInWords = ({ seriousness, relatedness }: NonNullable<OpenConcern["recorded"]>): string =>
  [
    seriousness ?? "seriousness not said",
    relatedness ? `${relatedness} from the treatment` : "cause not said",
  ].join(", ")
