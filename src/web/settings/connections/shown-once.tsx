import { useState } from "react"
import { say } from "../../../engine/say.js"

/** A secret that is shown this once, and a way to copy it. */
export function ShownOnce({
  label,
  note,
  secret,
  onClose,
}: {
  readonly label: string
  readonly note: string
  readonly secret: string
  readonly onClose: () => void
}) {
  const [copied, setCopied] = useState(false)
  const copy = async () => {
    await navigator.clipboard.writeText(secret)
    setCopied(true)
  }
  return (
    <div className="form">
      <p>{note}</p>
      <input
        className="connection-secret"
        readOnly
        value={secret}
        aria-label={label}
        onFocus={({ target }) => target.select()}
      />
      <div className="form-actions">
        <button type="button" className="primary" onClick={copy}>
          {copied ? say("Copied") : say("Copy")}
        </button>
        <button type="button" onClick={onClose}>
          {say("I have kept it")}
        </button>
      </div>
      <p className="unseen" role="status">
        {copied && say("Copied")}
      </p>
    </div>
  )
}
