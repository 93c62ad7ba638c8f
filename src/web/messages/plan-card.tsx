import { Link } from "@tanstack/react-router"
import { say, shortDayInWords } from "../../engine/say.js"
import { failureInWords } from "../client.js"
import { Waiting } from "../parts/waiting.js"
import { CHANNEL_WORDS, KIND_WORDS } from "./messages-words.js"
import { useMessagePlan } from "./use-messages.js"

/** What families are to be told in the coming days, as things stand today. */
export function PlanCard() {
  const plan = useMessagePlan()
  return (
    <section className="card" aria-labelledby="message-plan">
      <h2 id="message-plan">{say("The coming 14 days")}</h2>
      {plan.error && <p className="form-fault">{failureInWords(plan.error)}</p>}
      {!plan.data && !plan.error && <Waiting for={say("the plan")} />}
      {plan.data && plan.data.messages.length === 0 && <p className="soft">{say("Nothing is planned.")}</p>}
      {plan.data && plan.data.messages.length > 0 && (
        <ul className="message-plan">
          {plan.data.messages.map(({ key, on, kind, channel, child }) => (
            <li key={key}>
              <span className="soft">{shortDayInWords(on)}</span>
              <span>
                <Link to="/children/$childId" params={{ childId: child.id }}>
                  <bdi>{child.name}</bdi>
                </Link>
                <span className="soft small">
                  {say("{what}, {channel}", {
                    what: say(KIND_WORDS[kind]),
                    channel: say(CHANNEL_WORDS[channel]),
                  })}
                </span>
              </span>
            </li>
          ))}
        </ul>
      )}
      {plan.data && plan.data.total > plan.data.messages.length && (
        <p className="soft small">
          {say("{more, plural, one {and # more} other {and # more}}", {
            more: plan.data.total - plan.data.messages.length,
          })}
        </p>
      )}
    </section>
  )
}
