import { useState } from "react"
import { LANGUAGE_NAMES, msg, say } from "../../engine/say.js"
import type { LinksAnswer } from "../../server/contract/family-links.js"
import { inWords } from "../format.js"
import { Dialog } from "../parts/dialog.js"

type FamilyLink = LinksAnswer["links"][number]

const STATES: Readonly<Record<FamilyLink["state"], string>> = {
  open: msg("open until {day}"),
  expired: msg("expired on {day}"),
  revoked: msg("taken back"),
  locked: msg("locked after wrong dates"),
}

/** One link: where it leads, how long, whether it was opened, and the way to take it back. */
export function LinkRow({ link, onRevoke }: { readonly link: FamilyLink; readonly onRevoke: () => void }) {
  const { url, state, language, expiresAt, createdAt, createdBy, openedCount, lastOpenedAt } = link
  const [isAsking, setAsking] = useState(false)
  const [copied, setCopied] = useState(false)
  const day = (instant: string) => inWords(instant.slice(0, 10))
  const copy = async () => {
    if (url === null) return
    await navigator.clipboard.writeText(url)
    setCopied(true)
  }
  return (
    <li className="link-row">
      <p>
        <strong lang={language}>{LANGUAGE_NAMES[language]}</strong>,{" "}
        {say(STATES[state], { day: day(expiresAt) })}
        <span className="soft small">
          {" "}
          {say("Made {day} by {who}.", { day: day(createdAt), who: createdBy })}{" "}
          {openedCount === 0 || lastOpenedAt === null
            ? say("Not opened yet.")
            : say("{times, plural, one {Opened once, on {day}.} other {Opened # times, last on {day}.}}", {
                times: openedCount,
                day: day(lastOpenedAt),
              })}
        </span>
      </p>
      {url !== null && (
        <>
          <input className="link-url" readOnly value={url} aria-label={say("Address of the page")} />
          <p className="form-actions">
            <button type="button" onClick={copy}>
              {copied ? say("Copied") : say("Copy the address")}
            </button>
            <button type="button" className="link" onClick={() => setAsking(true)}>
              {say("Take back")}
            </button>
          </p>
        </>
      )}
      {isAsking && (
        <Dialog title={say("Take this link back?")} onClose={() => setAsking(false)}>
          <div className="form">
            <p>{say("Whoever has it can open the page no more. A new link can be made at any time.")}</p>
            <div className="form-actions">
              <button
                type="button"
                className="primary"
                onClick={() => {
                  setAsking(false)
                  onRevoke()
                }}
              >
                {say("Take it back")}
              </button>
              <button type="button" onClick={() => setAsking(false)}>
                {say("Keep it")}
              </button>
            </div>
          </div>
        </Dialog>
      )}
    </li>
  )
}
