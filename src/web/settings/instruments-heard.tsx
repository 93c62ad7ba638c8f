import { say } from "../../engine/say.js"
import type { HeardInstrument, ListenerAnswer } from "../../server/contract/instruments.js"
import { instantInWords } from "../messages/messages-words.js"

/** Who was heard since the start: the first thing to look at when an instrument does not get through. */
export function InstrumentsHeard(props: {
  readonly heard: readonly HeardInstrument[]
  readonly listener: ListenerAnswer
  readonly onAllow: (title: string) => void
}) {
  const { heard, listener, onAllow } = props
  return (
    <section className="card" aria-label={say("Was it heard?")}>
      <h2>{say("Was it heard?")}</h2>
      {heard.length === 0 ? (
        <p className="soft">
          {say(
            "No instrument was heard since Lengthwise was started. Press the test button of the instrument (often called echo or verify): it appears here within seconds. If it does not, the host, the port or a firewall in between is wrong.",
          )}
        </p>
      ) : (
        <table className="instrument-table">
          <thead>
            <tr>
              <th scope="col">{say("Instrument")}</th>
              <th scope="col">{say("Last heard")}</th>
              <th scope="col">{say("Last test (echo)")}</th>
              <th scope="col">{say("Last object")}</th>
              <th scope="col">{say("May send")}</th>
            </tr>
          </thead>
          <tbody>
            {heard.map(({ title, address, lastAt, lastEchoAt, lastObjectAt, isAllowed }) => (
              <tr key={title}>
                <th scope="row">
                  {title}
                  <span className="soft small"> {address}</span>
                </th>
                <td>{instantInWords(lastAt)}</td>
                <td>{lastEchoAt ? instantInWords(lastEchoAt) : say("never")}</td>
                <td>{lastObjectAt ? instantInWords(lastObjectAt) : say("never")}</td>
                <td>
                  {isAllowed && listener.isSet && say("yes")}
                  {isAllowed && !listener.isSet && say("yes, while nothing is set")}
                  {!isAllowed && say("no")}
                  {!(isAllowed && listener.isSet) && (
                    <>
                      {" "}
                      <button
                        type="button"
                        className="link"
                        aria-label={say("Allow {title} …", { title })}
                        onClick={() => onAllow(title)}
                      >
                        {say("Allow …")}
                      </button>
                    </>
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  )
}
