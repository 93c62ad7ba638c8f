import { say } from "../engine/say.js"
import type { DocumentRefused, PaperDocument } from "./document.js"
import type { Pdf, PdfRefused } from "./pdf/pdf.js"

/** A document of a batch, or why there is none, with what its child is called on the last page. */
export interface BatchItem {
  readonly label: string
  readonly document: PaperDocument | DocumentRefused
}

export interface NotPrinted {
  readonly label: string
  readonly why: string
}

export interface Batch extends Pdf {
  readonly printed: number
  readonly notPrinted: readonly NotPrinted[]
}

interface BatchOptions {
  /** The last page is written under this head, on this day. */
  readonly page: Pick<PaperDocument, "kind" | "language" | "date" | "letterhead">
  readonly title: string
  readonly set: (documents: readonly PaperDocument[], title: string) => Promise<Pdf | PdfRefused>
}

/** Documents of many children as one PDF. Whoever has none stands on a last page with the reason, never left out in silence. */
export async function batchOf(
  items: readonly BatchItem[],
  options: BatchOptions,
): Promise<Batch | (DocumentRefused & { readonly notPrinted: readonly NotPrinted[] })> {
  const { page, title, set } = options
  const printed = items.flatMap(({ document }) => (document.kind === "refused" ? [] : [document]))
  const notPrinted = items.flatMap(({ label, document }) =>
    document.kind === "refused" ? [{ label, why: document.why }] : [],
  )
  if (printed.length === 0) {
    return { kind: "refused", why: say("there is nothing to print for any of these children"), notPrinted }
  }
  const last = notPrinted.length === 0 ? [] : [notPrintedPage(notPrinted, { ...page, ofAll: items.length })]
  const pdf = await set([...printed, ...last], title)
  if (pdf.kind === "made") return { ...pdf, printed: printed.length, notPrinted }
  const fewer = pdf.about === "letters" ? withoutLetters(items, pdf) : items
  const isSmaller = fewer.some(({ document }, place) => document !== items[place]?.document)
  return isSmaller ? batchOf(fewer, options) : { kind: "refused", why: pdf.why, notPrinted }
}

/** The batch with the documents refused that hold a letter no font has; such letters are told by their number. */
function withoutLetters(
  items: readonly BatchItem[],
  { letters }: Extract<PdfRefused, { readonly about: "letters" }>,
): readonly BatchItem[] {
  const told = (text: string) =>
    letters.reduce((before, letter) => before.replaceAll(letter, codesOf(letter)), text.normalize("NFC"))
  return items.map(({ label, document }) => {
    if (document.kind === "refused") {
      const [shown, why] = [told(label), told(document.why)]
      const isSame = shown === label.normalize("NFC") && why === document.why.normalize("NFC")
      return { label: shown, document: isSame ? document : { kind: "refused", why } }
    }
    const text = JSON.stringify(document.blocks).normalize("NFC") + document.title.normalize("NFC")
    const held = letters.filter((letter) => text.includes(letter))
    if (held.length === 0) return { label: told(label), document }
    const why = say("no font at hand holds {letters}: write it in other letters, or leave it out", {
      letters: held.map(codesOf).join(", "),
    })
    return { label: told(label), document: { kind: "refused", why } }
  })
}

const codesOf = (letter: string): string =>
  [...letter]
    .map((point) => `U+${(point.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}`)
    .join(" ")

function notPrintedPage(
  notPrinted: readonly NotPrinted[],
  { ofAll, ...page }: BatchOptions["page"] & { readonly ofAll: number },
): PaperDocument {
  return {
    ...page,
    title: say("Not printed, and why"),
    foot: say("For the practice; it belongs to no family."),
    blocks: [
      {
        kind: "text",
        text: say(
          "{missing, plural, one {# of the {all} papers asked for could not be made.} other {# of the {all} papers asked for could not be made.}}",
          { missing: notPrinted.length, all: String(ofAll) },
        ),
      },
      {
        kind: "table",
        head: [say("Child"), say("Why")],
        rows: notPrinted.map(({ label, why }) => [label, why]),
      },
    ],
  }
}
