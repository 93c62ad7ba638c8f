import { msg, say } from "../../engine/say.js"
import "../consent/consent.css"
import { useState } from "react"
import { dateWords } from "../../chart/words.js"
import {
  defaultWordings,
  WORDING_IDS,
  type WordingId,
  wordingsFor,
} from "../../engine/consent/default-wording.js"
import { languageName } from "../../engine/consent/wording-language.js"
import type { ConsentWording } from "../../engine/practice-rules.js"
import { draftOf, type WordingDraft } from "../consent/wording-draft.js"
import { WordingEditor } from "../consent/wording-editor.js"
import { WordingPreview } from "../consent/wording-preview.js"
import { Dialog } from "../parts/dialog.js"
import type { SettingsPartProps } from "./settings-part-props.js"

const ABOUT = { drops: msg("Eye drops"), optical: msg("Glasses and lenses") } as const

/** The versions of what families read before they consent, and the way to a new one. */
export function WordingPart({ practice, rules: { rules, papers }, onDone }: SettingsPartProps) {
  const [draft, setDraft] = useState<WordingDraft | null>(null)
  const [shown, setShown] = useState<ConsentWording | null>(null)
  const used = papers
    .filter(({ kind }) => kind === "wording")
    .map(({ body }) => (body as ConsentWording).version)
  if (draft)
    return (
      <WordingEditor
        draft={draft}
        rules={rules}
        onClose={() => setDraft(null)}
        onDone={(message) => {
          onDone(message)
          setDraft(null)
        }}
      />
    )
  return (
    <div className="consent-part">
      <p className="soft">
        {say(
          "The wording that ships is a sound beginning, and not legal advice: local law may ask for more. Changing it makes a version of your own. Consents keep the very text that was signed.",
        )}
      </p>
      {WORDING_IDS.map((wordingId) => (
        <section className="card" key={wordingId} aria-labelledby={`wording-${wordingId}`}>
          <h2 id={`wording-${wordingId}`}>{say(ABOUT[wordingId])}</h2>
          <Versions
            id={wordingId}
            inForce={wordingsFor({
              kind: wordingId === "drops" ? "atropine" : "lenslet-spectacles",
              on: practice.today,
              wordings: rules.consentWordings,
            })}
            own={rules.consentWordings.filter(({ id }) => id === wordingId)}
            today={practice.today}
            onShow={setShown}
            onCopy={(wording) => setDraft(draftOf(wording, { from: practice.today, used }))}
          />
        </section>
      ))}
      {shown && (
        <Dialog
          title={say("Version {version}", { version: shown.version })}
          onClose={() => setShown(null)}
          wide
        >
          <WordingPreview wording={shown} rules={rules} />
        </Dialog>
      )}
    </div>
  )
}

function Versions(props: {
  readonly id: WordingId
  /** What families read today, one for each language. */
  readonly inForce: readonly ConsentWording[]
  readonly own: readonly ConsentWording[]
  readonly today: string
  readonly onShow: (wording: ConsentWording) => void
  readonly onCopy: (wording: ConsentWording) => void
}) {
  const { id, inForce, own, today, onShow, onCopy } = props
  const latestFirst = own.toSorted((a, b) => b.from.localeCompare(a.from))
  const stateOf = (wording: ConsentWording): string => {
    if (wording.from > today) return say("from {date}", { date: dateWords(wording.from) })
    return inForce.includes(wording) ? say("in force") : say("earlier")
  }
  const rows = [
    ...latestFirst.map((wording) => ({ wording, state: stateOf(wording), by: say("yours") })),
    ...defaultWordings
      .filter((shipped) => shipped.id === id)
      .map((wording) => ({
        wording,
        state: inForce.includes(wording) ? say("in force") : say("replaced by yours"),
        by: say("ships with the program"),
      })),
  ]
  const label = say("{id, select, drops {Versions of drops} other {Versions of optical}}", { id })
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by itself, and the keyboard must reach it
    <section className="scroll" tabIndex={0} aria-label={label}>
      <table className="data">
        <thead>
          <tr>
            <th scope="col">{say("Version")}</th>
            <th scope="col">{say("In force from")}</th>
            <th scope="col">{say("State")}</th>
            <th scope="col">{say("Language")}</th>
            <th scope="col">{say("Families asked again")}</th>
            <th scope="col">{say("Whose")}</th>
            <th scope="col">
              <span className="unseen">{say("Look at it or copy it")}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ wording, state, by }) => (
            <tr key={`${by} ${wording.version} ${wording.language}`}>
              <th scope="row">{wording.version}</th>
              <td className="day">{dateWords(wording.from)}</td>
              <td>{state}</td>
              <td>{languageName(wording.language)}</td>
              <td>{wording.isMaterial ? say("yes") : say("no")}</td>
              <td>{by}</td>
              <td>
                <span className="row-actions">
                  <button
                    type="button"
                    className="link"
                    aria-label={say(
                      "{id, select, drops {show version {version} of drops in {language}} other {show version {version} of optical in {language}}}",
                      {
                        id,
                        version: wording.version,
                        language: languageName(wording.language),
                      },
                    )}
                    onClick={() => onShow(wording)}
                  >
                    {say("show")}
                  </button>
                  <button
                    type="button"
                    className="link"
                    aria-label={say(
                      "{id, select, drops {change a copy of version {version} of drops in {language}} other {change a copy of version {version} of optical in {language}}}",
                      {
                        id,
                        version: wording.version,
                        language: languageName(wording.language),
                      },
                    )}
                    onClick={() => onCopy(wording)}
                  >
                    {say("change a copy")}
                  </button>
                </span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
