import { say } from "../../engine/say.js"
import { type ListenerAnswer, STORED_CLASSES } from "../../server/contract/instruments.js"

/** What is typed into the instrument, and what it may send. */
export function InstrumentsHow({ listener }: { readonly listener: ListenerAnswer }) {
  const { title, host, port, isTls, isForThisMachineOnly } = listener
  const isEverywhere = host === "0.0.0.0" || host === "::"
  return (
    <section className="card" aria-label={say("How to set up an instrument")}>
      <h2>{say("How to set up an instrument")}</h2>
      <p>
        {say(
          "On the instrument, look for DICOM, export or network, and add a storage destination with these figures. Then press its test button and look above whether it was heard.",
        )}
      </p>
      <dl className="instrument-facts">
        <dt>{say("Title (called AE title)")}</dt>
        <dd>{title ?? say("none yet: turn receiving on above")}</dd>
        <dt>{say("Host")}</dt>
        <dd>
          {isForThisMachineOnly
            ? say("{host} (this machine only)", { host })
            : isEverywhere || host === ""
              ? say("the address of this machine in the practice’s network")
              : host}
        </dd>
        <dt>{say("Port")}</dt>
        <dd>{port ?? say("none yet: turn receiving on above")}</dd>
        <dt>{say("Its own title")}</dt>
        <dd>{say("any; add it above under the instruments that may send")}</dd>
        <dt>{say("Encryption")}</dt>
        <dd>{isTls ? say("TLS, 1.2 or later") : say("none")}</dd>
        <dt>{say("Transfer syntax")}</dt>
        <dd>{say("explicit or implicit little endian, uncompressed")}</dd>
      </dl>
      <details>
        <summary>{say("What it may send")}</summary>
        <ul>
          {Object.entries(STORED_CLASSES).map(([uid, name]) => (
            <li key={uid}>
              {say(name)} <span className="soft small">{uid}</span>
            </li>
          ))}
        </ul>
        <p className="soft small">
          {say("Everything else, such as pictures, is refused: the instrument keeps it.")}
        </p>
      </details>
    </section>
  )
}
