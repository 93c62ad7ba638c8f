import { useQuery } from "@tanstack/react-query"
import { dateWords } from "../../chart/words.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { failureInWords } from "../client.js"
import { Dialog } from "../parts/dialog.js"
import { Waiting } from "../parts/waiting.js"
import type { ConsentRow, SignedConsent } from "./consent-rows.js"
import { fileUrl, storedText } from "./stored-file.js"

/** What was signed, to the letter, and how. */
export function SignedDialog({ row, onClose }: { readonly row: ConsentRow; readonly onClose: () => void }) {
  const { consent, entry } = row
  const sha256 = consent.wording?.sha256
  return (
    <Dialog
      title={`Consent of ${dateWords(consent.date)} to ${treatmentName(consent.covers)}`}
      onClose={onClose}
      wide
    >
      <div className="consent-signed">
        <h3>Signature</h3>
        <Signature consent={consent} />
        <p className="soft small">
          Recorded by {entry.author} on {dateWords(entry.recordedAt.slice(0, 10))}
          {entry.reason && `; last changed because: ${entry.reason}`}.
        </p>
        <h3>What was read</h3>
        {sha256 === undefined ? (
          <p className="soft">The text that was read is not in this record.</p>
        ) : (
          <StoredText sha256={sha256} />
        )}
      </div>
    </Dialog>
  )
}

function Signature({ consent: { signature, form, by } }: { readonly consent: SignedConsent }) {
  if (!signature)
    return (
      <p>
        {form === "paper" ? "On paper, which is kept outside of this record." : "None is in this record."}
      </p>
    )
  if (signature.kind === "typed") return <p className="consent-typed">{signature.name}</p>
  const url = fileUrl(signature.file)
  return (
    <>
      {signature.kind === "drawn" && (
        <img className="consent-drawn" src={url} alt={`Signature of ${by?.name ?? "who consented"}`} />
      )}
      <p>
        <a href={url} download>
          {signature.kind === "drawn" ? "Download the drawing" : "Download the scan of the signed paper"}
        </a>
      </p>
    </>
  )
}

function StoredText({ sha256 }: { readonly sha256: string }) {
  const text = useQuery({
    queryKey: ["file", sha256],
    staleTime: Number.POSITIVE_INFINITY,
    queryFn: () => storedText(sha256),
  })
  if (text.error) return <p className="form-fault">{failureInWords(text.error)}</p>
  if (text.data === undefined) return <Waiting for="the text" />
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a long text scrolls by itself, and the keyboard must reach it */}
      <section className="consent-stored" tabIndex={0} aria-label="The text that was read">
        {text.data}
      </section>
      <p className="soft small consent-hash">
        SHA-256 {sha256}.{" "}
        <a href={fileUrl(sha256)} download>
          Download the text
        </a>
      </p>
    </>
  )
}
