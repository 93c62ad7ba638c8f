import { inLanguage, say } from "../engine/say.js"
import type { PaperDocument } from "../report/document.js"
import type { ShownDocument } from "./contract/documents.js"

/** A document as it goes to a page, which takes a picture by an address that holds its bytes. */
export function shownDocument({ letterhead, ...content }: PaperDocument): ShownDocument {
  // A page learns only the language of its reader, which need not be the paper's.
  const signatureHead = inLanguage(content.language, () => [say("Name"), say("Signature"), say("Date")])
  const document = { ...content, signatureHead }
  const { logo, ...head } = letterhead
  if (!logo) return { ...document, letterhead: head }
  const base64 = Buffer.from(logo.bytes).toString("base64")
  return { ...document, letterhead: { ...head, logo: `data:${logo.mediaType};base64,${base64}` } }
}
