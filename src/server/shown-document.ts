import type { PaperDocument } from "../report/document.js"
import type { ShownDocument } from "./contract/documents.js"

/** A document as it goes to a page, which takes a picture by an address that holds its bytes. */
export function shownDocument({ letterhead, ...document }: PaperDocument): ShownDocument {
  const { logo, ...head } = letterhead
  if (!logo) return { ...document, letterhead: head }
  const base64 = Buffer.from(logo.bytes).toString("base64")
  return { ...document, letterhead: { ...head, logo: `data:${logo.mediaType};base64,${base64}` } }
}
