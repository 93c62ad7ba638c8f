import { useState } from "react"
import { say } from "../../engine/say.js"
import type { MessagesAnswer } from "../../server/contract/messages.js"
import { failureInWords } from "../client.js"
import { useHandOver, useTakeBack } from "./use-messages.js"

/** What goes by SMS or post leaves as a list for whoever sends it; a list taken by mistake is taken back. */
export function HandOver(props: {
  readonly answer: MessagesAnswer
  readonly onDone: (message: string) => void
}) {
  const { sms, post } = props.answer.toHandOver
  const handOver = useHandOver()
  const takeBack = useTakeBack()
  const [last, setLast] = useState<{ readonly list: string; readonly count: number } | null>(null)
  const failure = handOver.error ?? takeBack.error
  const exported = (channel: "sms" | "post") =>
    handOver.mutate(channel, {
      onSuccess: ({ list, count }) => {
        if (list === null) return props.onDone(say("Nothing is left to hand over."))
        setLast({ list, count })
        props.onDone(
          say("{count, plural, one {# message} other {# messages}} handed over. Download the list below.", {
            count,
          }),
        )
      },
    })
  return (
    <section className="card handing-over" aria-labelledby="hand-over">
      <h2 id="hand-over">{say("SMS and post")}</h2>
      <p className="soft small">
        {say(
          "Lengthwise sends neither: it gives a list to whoever does, and counts what is on it as handed over.",
        )}
      </p>
      <div className="form-actions">
        <button type="button" disabled={sms === 0 || handOver.isPending} onClick={() => exported("sms")}>
          {say("Export {count} SMS", { count: sms })}
        </button>
        <button type="button" disabled={post === 0 || handOver.isPending} onClick={() => exported("post")}>
          {say("Export {count, plural, one {# letter} other {# letters}}", { count: post })}
        </button>
      </div>
      {last && (
        <div className="form-actions handed-over">
          <a className="button primary" href={`/api/messages/lists/${last.list}`} download>
            {say("Download the list")}
          </a>
          <button
            type="button"
            disabled={takeBack.isPending}
            onClick={() =>
              takeBack.mutate(last.list, {
                onSuccess: ({ count }) => {
                  setLast(null)
                  props.onDone(
                    say("{count, plural, one {# message waits} other {# messages wait}} again.", { count }),
                  )
                },
              })
            }
          >
            {say("Undo: not handed over")}
          </button>
        </div>
      )}
      <div role="alert">{failure && <p className="form-fault">{failureInWords(failure)}</p>}</div>
    </section>
  )
}
