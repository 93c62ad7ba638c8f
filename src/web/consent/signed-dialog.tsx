import { useQuery } from "@tanstack/react-query"
import { dateWords } from "../../chart/words.js"
import { languageName } from "../../engine/consent/wording-language.js"
import { say } from "../../engine/say.js"
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
      title={say("Consent of {date} to {treatment}", {
        date: dateWords(consent.date),
        treatment: treatmentName(consent.covers),
      })}
      onClose={onClose}
      wide
    >
      <div className="consent-signed">
        <h3>{say("Signature")}</h3>
        <Signature consent={consent} />
        <p className="soft small">{recordedInWords(entry)}</p>
        <h3>{say("What was read")}</h3>
        {sha256 === undefined ? (
          <p className="soft">{say("The text that was read is not in this record.")}</p>
        ) : (
          <StoredText sha256={sha256} language={consent.wording?.language} />
        )}
      </div>
    </Dialog>
  )
}

function recordedInWords({ author, recordedAt, reason }: ConsentRow["entry"]): string {
  const told = { author, date: dateWords(recordedAt.slice(0, 10)) }
  return reason
    ? say("Recorded by {author} on {date}; last changed because: {reason}.", { ...told, reason })
    : say("Recorded by {author} on {date}.", told)
}

function Signature({ consent: { signature, form, by } }: { readonly consent: SignedConsent }) {
  if (!signature)
    return (
      <p>
        {say(
          form === "paper" ? "On paper, which is kept outside of this record." : "None is in this record.",
        )}
      </p>
    )
  if (signature.kind === "typed") return <p className="consent-typed">{signature.name}</p>
  const url = fileUrl(signature.file)
  return (
    <>
      {signature.kind === "drawn" && (
        <img
          className="consent-drawn"
          src={url}
          alt={by?.name ? say("Signature of {name}", { name: by.name }) : say("Signature of who consented")}
        />
      )}
      <p>
        <a href={url} download>
          {say(signature.kind === "drawn" ? "Download the drawing" : "Download the scan of the signed paper")}
        </a>
      </p>
    </>
  )
}

function StoredText({
  sha256,
  language,
}: {
  readonly sha256: string
  readonly language: string | undefined
}) {
  const text = useQuery({
    queryKey: ["file", sha256],
    staleTime: Number.POSITIVE_INFINITY,
    queryFn: () => storedText(sha256),
  })
  if (text.error) return <p className="form-fault">{failureInWords(text.error)}</p>
  if (text.data === undefined) return <Waiting for={say("the text")} />
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a long text scrolls by itself, and the keyboard must reach it */}
      <section className="consent-stored" tabIndex={0} aria-label={say("The text that was read")}>
        <div lang={language}>{text.data}</div>
      </section>
      {language !== undefined && (
        <p className="soft small">{say("Read in: {language}.", { language: languageName(language) })}</p>
      )}
      <p className="soft small consent-hash">
        SHA-256 {sha256}.{" "}
        <a href={fileUrl(sha256)} download>
          {say("Download the text")}
        </a>
      </p>
    </>
  )
}
