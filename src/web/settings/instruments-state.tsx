import type { ReactNode } from "react"
import { msg, say } from "../../engine/say.js"
import type { ListenerAnswer } from "../../server/contract/instruments.js"
import { instantInWords } from "../messages/messages-words.js"

const PROBLEMS: Readonly<Record<NonNullable<ListenerAnswer["problem"]>, string>> = {
  "port-taken": msg("Another program of this machine has port {port}. Choose another port below."),
  "port-not-allowed": msg("This machine does not let Lengthwise have port {port}. Choose one from 1024 on."),
  "address-not-here": msg("This machine has no address {host}, where it was to listen."),
  other: msg("Port {port} at {host} could not be opened; the log of the server says more."),
}

/** Whether it listens, and why not. */
export function InstrumentsState({ listener }: { readonly listener: ListenerAnswer }) {
  const { state, isTls, isOpenToThisMachine, isForThisMachineOnly, isPortFromStart } = listener
  return (
    <section className="card instrument-state" aria-label={say("State of the receiver")}>
      <div role="status">
        <p className={state === "listening" ? undefined : "caution"}>
          <strong>{stateInWords(listener)}</strong>
        </p>
      </div>
      {state === "listening" && (
        <>
          {isOpenToThisMachine && (
            <Caution>
              {say(
                "Nothing is set yet: any program of this machine may send, under any title. Once you record settings below, they alone decide.",
              )}
            </Caution>
          )}
          {isForThisMachineOnly ? (
            <p className="soft">
              {say(
                "Only programs of this machine can reach it. To let instruments of the network in, start Lengthwise with --dicom-host and the address of this machine.",
              )}
            </p>
          ) : (
            !isTls && (
              <Caution>
                {say(
                  "What instruments send crosses the network unencrypted. Keep it to a network of its own, or start Lengthwise with --dicom-cert and --dicom-key.",
                )}
              </Caution>
            )
          )}
          {isTls && <p className="soft">{say("Encrypted: instruments must use TLS 1.2 or later.")}</p>}
        </>
      )}
      {isPortFromStart && (
        <p className="soft">
          {say(
            "The port was named when Lengthwise was started (--dicom-port) and stands above the one below.",
          )}
        </p>
      )}
    </section>
  )
}

const Caution = ({ children }: { readonly children: ReactNode }) => <p className="caution">{children}</p>

function stateInWords({ state, host, port, title, problem, since }: ListenerAnswer): string {
  const place = { host, port: String(port ?? "") }
  switch (state) {
    case "listening":
      return say("Listens as {title} at {host}, port {port}, since {when}.", {
        ...place,
        title: title ?? "",
        when: since ? instantInWords(since) : "",
      })
    case "failed":
      return say(PROBLEMS[problem ?? "other"], place)
    case "off":
      return say("Turned off: instruments get no answer.")
    case "unset":
      return say("Not set up: instruments get no answer.")
    case "stopped":
      return say("The receiver is not running here.")
  }
}
