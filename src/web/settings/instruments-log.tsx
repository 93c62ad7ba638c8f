import { useRef } from "react"
import { msg, say } from "../../engine/say.js"
import { outcomeInWords, refusalInWords, whatInWords } from "../../server/contract/instrument-words.js"
import type { InstrumentEvent, InstrumentsAnswer } from "../../server/contract/instruments.js"
import { instantInWords } from "../messages/messages-words.js"
import { PageLinks } from "../parts/page-links.js"
import { useSlashFocuses } from "../slash-focuses.js"
import type { AskedInstruments } from "./use-instruments.js"

const FILTERS = [
  [null, msg("Everything {count}")],
  ["received", msg("Received {count}")],
  ["refused", msg("Refused {count}")],
] as const

/** What came and what was refused since the start, the latest first. */
export function InstrumentsLog(props: {
  readonly answer: InstrumentsAnswer
  readonly asked: AskedInstruments
  readonly onAsk: (asked: AskedInstruments) => void
}) {
  const { answer, asked, onAsk } = props
  const box = useRef<HTMLInputElement>(null)
  useSlashFocuses(box)
  const { received, refused } = answer.counts
  const countOf = { all: received + refused, received, refused }
  return (
    <section className="card" aria-label={say("Received and refused")}>
      <h2>{say("Received and refused")}</h2>
      <p className="soft small">
        {say(
          "Since Lengthwise was started, the last 500 of each. What was recorded stays with the child for good.",
        )}
      </p>
      <search className="search">
        <label className="unseen" htmlFor="instrument-search">
          {say("Search by instrument, address, kind or reason")}
        </label>
        <input
          id="instrument-search"
          ref={box}
          type="search"
          autoComplete="off"
          placeholder={say("Instrument, address, kind or reason")}
          value={asked.search}
          onChange={(event) => onAsk({ ...asked, search: event.target.value, page: 1 })}
        />
        <fieldset className="pills" aria-label={say("Which")}>
          {FILTERS.map(([only, words]) => (
            <button
              key={only ?? "all"}
              type="button"
              aria-pressed={asked.only === only}
              onClick={() => onAsk({ ...asked, only, page: 1 })}
            >
              {say(words, { count: countOf[only ?? "all"] })}
            </button>
          ))}
        </fieldset>
      </search>
      {answer.events.length === 0 ? (
        <p className="soft">
          {asked.search || asked.only ? say("Nothing matches.") : say("Nothing came yet.")}
        </p>
      ) : (
        <Events events={answer.events} />
      )}
      <PageLinks
        page={answer.page}
        pages={Math.ceil(answer.total / answer.pageSize)}
        link={({ page, words }) => (
          <button type="button" className="link" onClick={() => onAsk({ ...asked, page })}>
            {words}
          </button>
        )}
      />
    </section>
  )
}

const Events = ({ events }: { readonly events: readonly InstrumentEvent[] }) => (
  <table className="instrument-table">
    <thead>
      <tr>
        <th scope="col">{say("When")}</th>
        <th scope="col">{say("Instrument")}</th>
        <th scope="col">{say("What")}</th>
        <th scope="col">{say("What became of it")}</th>
      </tr>
    </thead>
    <tbody>
      {events.map((event) => (
        <tr key={event.id}>
          <td>
            {instantInWords(event.at)}
            {event.times > 1 && (
              <span className="soft small">{say("{count} times in a row", { count: event.times })}</span>
            )}
          </td>
          <td className="instrument-who">
            {event.title || say("without a title")}
            <span className="soft small">{event.address}</span>
          </td>
          <td>{whatInWords(event)}</td>
          <td>
            {outcomeInWords(event)}
            <span className="soft small">{becauseInWords(event)}</span>
          </td>
        </tr>
      ))}
    </tbody>
  </table>
)

/** The reason in our words, and what the reader of the object said of it. */
function becauseInWords({ refusal, why }: InstrumentEvent): string {
  const because = refusalInWords({ refusal })
  if (refusal === "unknown-called-title" && why !== null)
    return say("It called us {title}, which is not our title.", { title: why })
  return [because, why].filter((part) => part !== null).join(" ")
}
