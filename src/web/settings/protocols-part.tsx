import { msg, say } from "../../engine/say.js"
import "./protocols.css"
import { useState } from "react"
import { dateWords } from "../../chart/words.js"
import type { Protocol } from "../../engine/protocol/protocol.js"
import { shippedProtocols } from "../../engine/protocol/shipped.js"
import { protocolSource, protocolTitle, stepTitle } from "../../engine/protocol/titles.js"
import type { RulesAnswer } from "../../server/contract/rules.js"
import { capitalised, sentence } from "../format.js"
import { nextVersion } from "./protocols-draft.js"
import { type Editing, ProtocolEditor } from "./protocols-editor.js"
import { stepInOneLine } from "./protocols-words.js"
import type { SettingsPartProps } from "./settings-part-props.js"

/** Who follows a protocol that no child names. */
const FOLLOWED_BY: Readonly<Record<string, string>> = {
  standard: msg("Followed by every child for whom no other is chosen or fits."),
  optical: msg("Followed by children on spectacles, contact lenses or orthokeratology and on no drops."),
  watchful: msg("Followed by children who are not myopic and were never treated."),
  "step-down": msg("Followed by children it is chosen for."),
}

type Paper = RulesAnswer["papers"][number]

/** The protocols: what ships and what the practice made of it. A change is a new version, and the old one stays. */
export function ProtocolsPart({ practice, rules, onDone }: SettingsPartProps) {
  const [editing, setEditing] = useState<Editing | null>(null)
  const papers = rules.papers.filter(({ kind, supersededBy }) => kind === "protocol" && supersededBy === null)
  const own = papers.map((paper) => ({ paper, protocol: paper.body as Protocol }))
  const isReplaced = ({ id }: Protocol) => own.some(({ protocol }) => protocol.id === id)
  const taken = [...shippedProtocols, ...own.map(({ protocol }) => protocol)].map(({ id }) => id)
  if (editing) {
    return (
      <ProtocolEditor
        {...editing}
        today={practice.today}
        onClose={() => setEditing(null)}
        onDone={(message) => {
          setEditing(null)
          onDone(message)
        }}
      />
    )
  }
  return (
    <div className="protocols">
      <p className="soft">
        {say(
          "A protocol says what is examined and decided, and when. Those that ship are common practice without a source; copy one to fit it to the practice. A child’s own page can name the one it follows.",
        )}
      </p>
      {own.map(({ paper, protocol }) => (
        <ProtocolCard key={paper.id} protocol={protocol} paper={paper} follows={followsOf(protocol)}>
          <button
            type="button"
            aria-label={say("Edit {name}", { name: protocolTitle(protocol) })}
            onClick={() =>
              setEditing({
                from: { ...protocol, version: nextVersion(protocol.version) },
                heading: say("Edit {name}", { name: protocolTitle(protocol) }),
                supersedes: paper.id,
                taken,
              })
            }
          >
            {say("Edit")}
          </button>
        </ProtocolCard>
      ))}
      {shippedProtocols.map((protocol) => (
        <ProtocolCard
          key={protocol.id}
          protocol={protocol}
          follows={
            isReplaced(protocol)
              ? say("Followed by nobody: the practice’s own takes its place.")
              : followsOf(protocol)
          }
        >
          {!isReplaced(protocol) && (
            <button
              type="button"
              aria-label={say("Copy and edit {name}", { name: protocolTitle(protocol) })}
              onClick={() =>
                setEditing({
                  heading: say("A copy of {name}", { name: protocolTitle(protocol) }),
                  from: copyOf(protocol),
                  supersedes: null,
                  taken,
                })
              }
            >
              {say("Copy and edit")}
            </button>
          )}
        </ProtocolCard>
      ))}
    </div>
  )
}

const followsOf = ({ id }: Protocol): string =>
  say(FOLLOWED_BY[id] ?? msg("Followed by children it is chosen for."))

const copyOf = (protocol: Protocol): Protocol => ({
  ...protocol,
  title: say("{name}, ours", { name: protocolTitle(protocol) }),
  version: "1",
})

function ProtocolCard({
  protocol,
  paper,
  follows,
  children,
}: {
  readonly protocol: Protocol
  readonly paper?: Paper
  readonly follows: string
  readonly children: React.ReactNode
}) {
  const { version, steps } = protocol
  return (
    <article className="card">
      <div className="protocol-head">
        <h2>{protocolTitle(protocol)}</h2>
        {children}
      </div>
      <p>{follows}</p>
      <p className="soft">
        {paper ? recordedInWords(paper, version) : say("Ships with the program.")}{" "}
        {sentence(protocolSource(protocol))}
      </p>
      <details>
        <summary>{say("{count, plural, one {# step} other {# steps}}", { count: steps.length })}</summary>
        <ul>
          {steps.map((step) => (
            <li key={step.id}>
              <strong>{capitalised(stepTitle(step))}</strong>: {stepInOneLine(step)}
            </li>
          ))}
        </ul>
      </details>
    </article>
  )
}

function recordedInWords({ recordedAt, author, reason }: Paper, version: string): string {
  const said = { version, date: dateWords(recordedAt.slice(0, 10)), author }
  return reason
    ? say("Version {version}, recorded on {date} by {author}: {reason}", {
        ...said,
        reason: sentence(reason),
      })
    : say("Version {version}, recorded on {date} by {author}.", said)
}
