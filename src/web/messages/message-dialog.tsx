import { useState } from "react"
import { say } from "../../engine/say.js"
import type { MessageAnswer } from "../../server/contract/messages.js"
import { failureInWords } from "../client.js"
import { Dialog } from "../parts/dialog.js"
import { Waiting } from "../parts/waiting.js"
import { stateInWords } from "./message-table.js"
import { instantInWords, KIND_WORDS, problemInWords } from "./messages-words.js"
import { useMessage, useMoveMessage } from "./use-messages.js"

/** One message: what it says, what happened to it, and what a person can do about it. */
export function MessageDialog(props: {
  readonly id: string
  readonly onClose: () => void
  readonly onDone: (message: string) => void
}) {
  const { data, error } = useMessage(props.id)
  return (
    <Dialog title={data ? say(KIND_WORDS[data.kind]) : say("Message")} onClose={props.onClose} wide>
      {error && <p className="form-fault">{failureInWords(error)}</p>}
      {!data && !error && <Waiting for={say("the message")} />}
      {data && <Opened message={data} onClose={props.onClose} onDone={props.onDone} />}
    </Dialog>
  )
}

function Opened(props: {
  readonly message: MessageAnswer
  readonly onClose: () => void
  readonly onDone: (message: string) => void
}) {
  const { message } = props
  const { child, name, to, subject, text, language, channel, events, problem, reply, nextAttemptAt } = message
  return (
    <div className="form">
      <dl className="facts">
        <dt>{say("Child")}</dt>
        <dd>
          <bdi>{child.name}</bdi>
        </dd>
        <dt>{say("To")}</dt>
        <dd>
          <bdi>{name}</bdi>, <bdi className="address">{to}</bdi>
        </dd>
        <dt>{say("State")}</dt>
        <dd>
          {stateInWords(message)}
          {problem && <span className="soft small">{problemInWords(problem)}</span>}
          {reply && (problem === "put-off" || problem === "refused") && (
            <span className="soft small">{say("The mail server said: {reply}", { reply })}</span>
          )}
          {nextAttemptAt && (
            <span className="soft small">
              {say("Next attempt: {when}", { when: instantInWords(nextAttemptAt) })}
            </span>
          )}
        </dd>
      </dl>
      <div className="message-text" lang={language}>
        {channel !== "sms" && <p className="message-subject">{subject}</p>}
        {text.split("\n\n").map((paragraph) => (
          <p key={paragraph}>{paragraph}</p>
        ))}
      </div>
      <Actions {...props} />
      <details>
        <summary>{say("What happened to it")}</summary>
        <ol className="message-events">
          {events.map((event) => (
            <li key={`${event.at} ${event.state} ${event.problem}`}>
              {instantInWords(event.at)} · {stateInWords({ ...event, list: null })}
              {event.by && <> · {event.by}</>}
              {event.problem && <span className="soft small">{problemInWords(event.problem)}</span>}
            </li>
          ))}
        </ol>
      </details>
    </div>
  )
}

/** What can be done depends on the state; calling off asks first, since the family then hears nothing. */
function Actions(props: {
  readonly message: MessageAnswer
  readonly onClose: () => void
  readonly onDone: (message: string) => void
}) {
  const { id, state, child } = props.message
  const [asking, setAsking] = useState(false)
  const move = useMoveMessage(id)
  const doing = (asked: Parameters<typeof move.mutate>[0], said: string) => () =>
    move.mutate(asked, {
      onSuccess: () => {
        props.onDone(said)
        props.onClose()
      },
    })
  return (
    <>
      <div role="alert">{move.error && <p className="form-fault">{failureInWords(move.error)}</p>}</div>
      {state === "unknown" && (
        <div className="form-actions">
          <button
            type="button"
            className="primary"
            disabled={move.isPending}
            onClick={doing({ to: "resolution", was: "sent" }, say("Noted: the message was sent."))}
          >
            {say("It was sent")}
          </button>
          <button
            type="button"
            disabled={move.isPending}
            onClick={doing({ to: "resolution", was: "not-sent" }, say("The message waits to be sent again."))}
          >
            {say("Send again")}
          </button>
          <span className="soft small">
            {say(
              "Ask the family or look into the mailbox it was sent from. Sent again, it may arrive twice.",
            )}
          </span>
        </div>
      )}
      {(state === "failed" || state === "cancelled") && (
        <div className="form-actions">
          <button
            type="button"
            disabled={move.isPending}
            onClick={doing({ to: "retry" }, say("The message waits to be sent again."))}
          >
            {say("Try again")}
          </button>
        </div>
      )}
      {(state === "waiting" || state === "failed") && !asking && (
        <div className="form-actions">
          <button type="button" onClick={() => setAsking(true)}>
            {say("Call off …")}
          </button>
        </div>
      )}
      {asking && (
        <div className="form-actions">
          <span>
            {say("Call this message off? The family of {child} is then not told.", { child: child.name })}
          </span>
          <button
            type="button"
            className="primary"
            disabled={move.isPending}
            onClick={doing({ to: "cancel" }, say("The message is called off."))}
          >
            {say("Call off")}
          </button>
          <button type="button" onClick={() => setAsking(false)}>
            {say("Keep it")}
          </button>
        </div>
      )}
    </>
  )
}
