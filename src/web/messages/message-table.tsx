import { Link } from "@tanstack/react-router"
import { say, shortDayInWords } from "../../engine/say.js"
import type { MessageRow, MessagesAnswer } from "../../server/contract/messages.js"
import { PageLinks } from "../parts/page-links.js"
import type { MessagesSearch } from "./messages-search.js"
import { CHANNEL_WORDS, instantInWords, KIND_WORDS, STATE_WORDS } from "./messages-words.js"

/** The messages of one page, each opened for what it says and what can be done. */
export function MessageTable(props: {
  readonly answer: MessagesAnswer
  readonly asked: MessagesSearch
  readonly onOpen: (id: string) => void
}) {
  const { answer, asked, onOpen } = props
  return (
    <section className="card message-list" aria-label={say("Messages")}>
      <table>
        <thead>
          <tr>
            <th scope="col">{say("Child")}</th>
            <th scope="col">{say("What")}</th>
            <th scope="col">{say("To")}</th>
            <th scope="col">{say("State")}</th>
            <th scope="col">
              <span className="unseen">{say("Open")}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {answer.messages.map((message) => (
            <Row key={message.id} message={message} onOpen={onOpen} />
          ))}
        </tbody>
      </table>
      {answer.messages.length === 0 && (
        <p className="soft empty">
          {asked.search || asked.state
            ? say("No message matches.")
            : say("No message yet. What families are to be told is put here on its day.")}
        </p>
      )}
      <PageLinks
        page={answer.page}
        pages={Math.ceil(answer.total / answer.pageSize)}
        link={({ page, words }) => (
          <Link to="/messages" search={placeOf(asked, page)}>
            {words}
          </Link>
        )}
      />
    </section>
  )
}

function Row({ message, onOpen }: { readonly message: MessageRow; readonly onOpen: (id: string) => void }) {
  const { id, child, kind, channel, to, name, due, state, changedAt } = message
  const what = say(KIND_WORDS[kind])
  return (
    <tr>
      <th scope="row">
        <Link to="/children/$childId" params={{ childId: child.id }}>
          <bdi>{child.name}</bdi>
        </Link>
        {child.number && <span className="soft small">{child.number}</span>}
      </th>
      <td>
        {what}
        <span className="soft small">{shortDayInWords(due)}</span>
      </td>
      <td>
        <bdi>{name}</bdi>
        <span className="soft small">
          {say("{channel}: {address}", {
            channel: say(CHANNEL_WORDS[channel]),
            address: to.replace(/\n/g, ", "),
          })}
        </span>
      </td>
      <td>
        <span className={state === "unknown" || state === "failed" ? "late" : undefined}>
          {stateInWords(message)}
        </span>
        <span className="soft small">{instantInWords(changedAt)}</span>
      </td>
      <td>
        <button
          type="button"
          aria-label={say("Open: {what}, {child}", { what, child: child.name })}
          onClick={() => onOpen(id)}
        >
          {say("Open")}
        </button>
      </td>
    </tr>
  )
}

/** What is sent by SMS or post is handed over, not sent from here. */
export function stateInWords({
  state,
  list,
  problem,
}: Pick<MessageRow, "state" | "list" | "problem">): string {
  if (state === "sent" && list !== null) return say("Handed over")
  if (state === "waiting" && problem === "put-off") return say("Waiting, put off")
  return say(STATE_WORDS[state])
}

/** What was asked, on another page; the first needs no number in its address. */
function placeOf({ page: _, ...rest }: MessagesSearch, page: number): MessagesSearch {
  return page > 1 ? { ...rest, page } : rest
}
