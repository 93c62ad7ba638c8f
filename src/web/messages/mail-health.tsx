import { Link } from "@tanstack/react-router"
import { type FormEvent, useState } from "react"
import { say } from "../../engine/say.js"
import type { MessagesAnswer } from "../../server/contract/messages.js"
import { failureInWords } from "../client.js"
import { faultsOf } from "../faults.js"
import { Dialog } from "../parts/dialog.js"
import { Field } from "../parts/field.js"
import { Said } from "../parts/said.js"
import { instantInWords, lookInWords, serverProblemInWords, testInWords } from "./messages-words.js"
import { useLook, useTestMail } from "./use-messages.js"

/** Whether messages leave: one line, and what can be tried. */
export function MailHealth(props: {
  readonly answer: MessagesAnswer
  readonly onDone: (message: string) => void
}) {
  const { health } = props.answer
  const look = useLook()
  const [testing, setTesting] = useState(false)
  const isWell = health.isOn && health.server !== null && health.failure === null
  return (
    <section className="card mail-health" aria-label={say("Mail server")}>
      <p className={isWell ? undefined : "caution"}>
        <HealthLine health={health} />
      </p>
      {health.lastAcceptedAt && (
        <p className="soft small">
          {say("Last e-mail taken: {when}.", { when: instantInWords(health.lastAcceptedAt) })}
        </p>
      )}
      <div className="form-actions">
        <button
          type="button"
          disabled={look.isPending || !health.isOn}
          onClick={() => look.mutate(undefined, { onSuccess: (answer) => props.onDone(lookInWords(answer)) })}
        >
          {say("Look and send now")}
        </button>
        {health.server !== null && (
          <button type="button" onClick={() => setTesting(true)}>
            {say("Send a test to me …")}
          </button>
        )}
      </div>
      <div role="alert">{look.error && <p className="form-fault">{failureInWords(look.error)}</p>}</div>
      {testing && <TestMail onClose={() => setTesting(false)} onDone={props.onDone} />}
    </section>
  )
}

function HealthLine({ health }: { readonly health: MessagesAnswer["health"] }) {
  const { isOn, server, failure, isQuiet, quietTo, nextAttemptAt } = health
  const settings = (
    <Link to="/settings/$part" params={{ part: "messages" }}>
      {say("Settings")}
    </Link>
  )
  if (!isOn)
    return (
      <Said
        message="Messages are turned off: nothing is planned and nothing sent. {settings}"
        values={{ settings }}
      />
    )
  if (server === null)
    return say(
      "No mail server was named when Lengthwise was started (LENGTHWISE_SMTP): e-mails wait here until there is one.",
    )
  if (failure) {
    const problem = serverProblemInWords(failure.problem)
    const when = instantInWords(failure.at)
    return (
      <>
        {problem}{" "}
        {say("Nothing is lost; everything waits. Since {when}, through {server}.", { when, server })}
        {nextAttemptAt && <> {say("Next attempt: {when}", { when: instantInWords(nextAttemptAt) })}</>}
      </>
    )
  }
  if (isQuiet && quietTo)
    return say("Quiet hours: e-mails go from {time} on, through {server}.", { time: quietTo, server })
  return say("E-mails go through {server}.", { server })
}

function TestMail({
  onClose,
  onDone,
}: {
  readonly onClose: () => void
  readonly onDone: (message: string) => void
}) {
  const [to, setTo] = useState("")
  const test = useTestMail()
  const faults = faultsOf(test.error, ["to"])
  const submit = (event: FormEvent) => {
    event.preventDefault()
    test.mutate(to.trim(), {
      onSuccess: (answer) => {
        onDone(testInWords(answer))
        onClose()
      },
    })
  }
  return (
    <Dialog title={say("Send a test")} onClose={onClose} failure={test.error}>
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <Field
          label={say("Your e-mail address")}
          note={say("It gets a line that says nothing of any child.")}
          fault={faults.at("to")}
        >
          {(control) => (
            <input {...control} type="email" value={to} onChange={(event) => setTo(event.target.value)} />
          )}
        </Field>
        <div className="form-actions">
          <button type="submit" className="primary" disabled={test.isPending}>
            {say("Send a test")}
          </button>
        </div>
      </form>
    </Dialog>
  )
}
