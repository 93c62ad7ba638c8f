import type { InstrumentRules } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"
import type { RulesAnswer } from "../../server/contract/rules.js"
import { instantInWords } from "../messages/messages-words.js"

/** What was set before, to go back to. */
export function InstrumentsEarlier(props: {
  readonly papers: RulesAnswer["papers"]
  readonly onAgain: (rules: InstrumentRules) => void
}) {
  const { papers, onAgain } = props
  if (papers.length === 0) return null
  return (
    <details className="card">
      <summary>{say("Earlier settings")}</summary>
      <ul>
        {[...papers].reverse().map(({ id, recordedAt, author, body }) => {
          const rules = body as InstrumentRules
          const said = {
            when: instantInWords(recordedAt),
            author,
            title: rules.title,
            port: String(rules.port),
            allowed: rules.allowed.join(", "),
          }
          return (
            <li key={id}>
              {rules.isOn
                ? say("{when}, {author}: {title}, port {port}, allowed {allowed}", said)
                : say("{when}, {author}: turned off; {title}, port {port}, allowed {allowed}", said)}{" "}
              <button
                type="button"
                className="link"
                aria-label={say("Put the settings of {when} into the form", { when: said.when })}
                onClick={() => onAgain(rules)}
              >
                {say("Use again …")}
              </button>
            </li>
          )
        })}
      </ul>
    </details>
  )
}
