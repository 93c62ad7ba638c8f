import "../styles/today.css"
import "./instruments.css"
import { useDeferredValue, useState } from "react"
import type { InstrumentRules } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"
import { failureInWords } from "../client.js"
import { Waiting } from "../parts/waiting.js"
import { firstRules } from "./first-rules.js"
import { InstrumentsEarlier } from "./instruments-earlier.js"
import { InstrumentsForm } from "./instruments-form.js"
import { InstrumentsHeard } from "./instruments-heard.js"
import { InstrumentsHow } from "./instruments-how.js"
import { InstrumentsLog } from "./instruments-log.js"
import { InstrumentsState } from "./instruments-state.js"
import type { SettingsPartProps } from "./settings-part-props.js"
import { type AskedInstruments, useInstruments } from "./use-instruments.js"

/** How instruments send what they measured: the settings, whether it works, and what came. */
export function InstrumentsPart({ practice, rules, onDone }: SettingsPartProps) {
  const papers = rules.papers.filter(({ kind }) => kind === "instruments")
  const paper = papers.findLast(({ supersededBy }) => supersededBy === null)
  const [asked, setAsked] = useState<AskedInstruments>({ search: "", only: null, page: 1 })
  const search = useDeferredValue(asked.search.trim())
  const { data, error } = useInstruments({ ...asked, search })
  // A title that was heard, or settings of an earlier day, are put into the form for a person to look at and record.
  const [proposed, setProposed] = useState<{ readonly turn: number; readonly rules: InstrumentRules | null }>(
    {
      turn: 0,
      rules: null,
    },
  )
  const propose = (next: InstrumentRules | null) =>
    setProposed(({ turn }) => ({ turn: turn + 1, rules: next }))
  const set = practice.rules.instruments
  const allow = (title: string) => {
    const before = set ?? firstRules(data?.listener.port ?? null)
    propose({ ...before, isOn: true, allowed: [...new Set([...before.allowed, title])] })
  }
  return (
    <div className="instruments">
      {error && <p className="form-fault">{failureInWords(error)}</p>}
      {!data && !error && <Waiting for={say("the state of the receiver")} />}
      {data && <InstrumentsState listener={data.listener} />}
      <InstrumentsForm
        key={proposed.turn}
        set={set}
        proposed={proposed.rules}
        supersedes={paper?.id ?? null}
        onSaved={(message) => {
          propose(null)
          onDone(message)
        }}
        onForget={() => propose(null)}
      />
      {data && <InstrumentsHeard heard={data.heard} listener={data.listener} onAllow={allow} />}
      {data && <InstrumentsLog answer={data} asked={asked} onAsk={setAsked} />}
      {data && <InstrumentsHow listener={data.listener} />}
      <InstrumentsEarlier
        papers={papers.filter(({ supersededBy }) => supersededBy !== null)}
        onAgain={propose}
      />
    </div>
  )
}
