import { say } from "../../engine/say.js"
import type { InboxItemAnswer } from "../../server/contract/inbox.js"
import { instantInWords } from "../messages/messages-words.js"

type Event = InboxItemAnswer["events"][number]

/** What happened to the object, by whom and when, oldest first. */
export function ItemHistory({ events }: Pick<InboxItemAnswer, "events">) {
  return (
    <section className="card" aria-label={say("History")}>
      <h2>{say("History")}</h2>
      <ol className="inbox-history">
        {events.map((event, place) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the list only grows at its end
          <li key={place}>
            <time dateTime={event.at} className="soft">
              {instantInWords(event.at)}
            </time>
            <span>{eventWords(event, place === 0)}</span>
            {event.reason && (
              <span className="soft small">{say("Reason: {reason}", { reason: event.reason })}</span>
            )}
          </li>
        ))}
      </ol>
    </section>
  )
}

function eventWords({ state, by }: Event, isFirst: boolean): string {
  const who = { known: by === null ? "no" : "yes", person: by ?? "" }
  if (isFirst)
    return state === "taken"
      ? say("Received, and recorded without anybody's doing, since everything agreed.")
      : say("Received; it waited.")
  switch (state) {
    case "taken":
      return say("Put under a child{known, select, yes { by {person}} other {}}.", who)
    case "set-aside":
      return say("Set aside{known, select, yes { by {person}} other {}}.", who)
    case "waiting":
      return say("Taken back{known, select, yes { by {person}} other {}}; it waits again.", who)
  }
}
