import { say } from "../../engine/say.js"
import "./protocols.css"
import { useState } from "react"
import { dateWords } from "../../chart/words.js"
import type { Protocol } from "../../engine/protocol/protocol.js"
import { shippedProtocols } from "../../engine/protocol/shipped.js"
import { counted } from "../../engine/words.js"
import type { RulesAnswer } from "../../server/contract/rules.js"
import { capitalised, sentence } from "../format.js"
import { nextVersion } from "./protocols-draft.js"
import { type Editing, ProtocolEditor } from "./protocols-editor.js"
import { stepInOneLine } from "./protocols-words.js"
import type { SettingsPartProps } from "./settings-part-props.js"

/** Who follows a protocol that no child names. */
const FOLLOWED_BY: Readonly<Record<string, string>> = {
  standard: "Followed by every child for whom no other is chosen or fits.",
  optical: "Followed by children on spectacles, contact lenses or orthokeratology and on no drops.",
  watchful: "Followed by children who are not myopic and were never treated.",
  "step-down": "Followed by children it is chosen for.",
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
            aria-label={`Edit ${protocol.title}`}
            onClick={() =>
              setEditing({
                from: { ...protocol, version: nextVersion(protocol.version) },
                heading: `Edit ${protocol.title}`,
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
              ? "Followed by nobody: the practice’s own takes its place."
              : followsOf(protocol)
          }
        >
          {!isReplaced(protocol) && (
            <button
              type="button"
              aria-label={`Copy and edit ${protocol.title}`}
              onClick={() =>
                setEditing({
                  heading: `A copy of ${protocol.title}`,
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

const followsOf = ({ id }: Protocol): string => FOLLOWED_BY[id] ?? "Followed by children it is chosen for."

const copyOf = (protocol: Protocol): Protocol => ({
  ...protocol,
  title: `${protocol.title}, ours`,
  version: "1",
})

function ProtocolCard({
  protocol: { title, version, source, steps },
  paper,
  follows,
  children,
}: {
  readonly protocol: Protocol
  readonly paper?: Paper
  readonly follows: string
  readonly children: React.ReactNode
}) {
  return (
    <article className="card">
      <div className="protocol-head">
        <h2>{title}</h2>
        {children}
      </div>
      <p>{follows}</p>
      <p className="soft">
        {paper
          ? `Version ${version}, recorded on ${dateWords(paper.recordedAt.slice(0, 10))} by ${paper.author}${paper.reason ? `: ${sentence(paper.reason)}` : "."} `
          : "Ships with the program. "}
        {sentence(source)}
      </p>
      <details>
        <summary>{counted(steps.length, "step")}</summary>
        <ul>
          {steps.map((step) => (
            <li key={step.id}>
              <strong>{capitalised(step.title)}</strong>: {stepInOneLine(step)}
            </li>
          ))}
        </ul>
      </details>
    </article>
  )
}
