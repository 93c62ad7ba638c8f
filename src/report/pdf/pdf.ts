import { mkdtempSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { NodeCompiler } from "@myriaddreamin/typst-ts-node-compiler"
import { say } from "../../engine/say.js"
import type { DocumentRefused, PaperDocument, PaperSize } from "../document.js"
import { fontBlobs, isHeld } from "./fonts.js"
import { missingLetters } from "./held-letters.js"
import { logoFault } from "./logo.js"
import { typstSource } from "./typst-source.js"

export interface Pdf {
  readonly kind: "made"
  readonly bytes: Uint8Array
  readonly pages: number
}

export type PdfRefused = DocumentRefused &
  ({ readonly about: "logo" } | { readonly about: "letters"; readonly letters: readonly string[] })

/**
 * Documents as one PDF: tagged by PDF/UA-1's rules, fonts embedded, title and language set.
 *
 * A letter that none of the fonts holds is refused by name: a document with a box in a child's name is not right.
 */
export function pdfOf(
  documents: readonly PaperDocument[],
  paper: PaperSize,
  { title }: { readonly title?: string | undefined } = {},
): Pdf | PdfRefused {
  const unfit = documents.flatMap(({ letterhead }) => (letterhead.logo ? [logoFault(letterhead.logo)] : []))
  const fault = unfit.find((found) => found !== null)
  if (fault) return logoRefused(fault)
  const missing = missingLetters(documents.map(shownText).join(""), isHeld)
  if (missing.length > 0) return lettersRefused(missing)
  const { source, files } = typstSource(documents, { paper, title })
  const compiler = typesetter()
  for (const [name, bytes] of files) compiler.mapShadow(join(folder, name), Buffer.from(bytes))
  try {
    const result = compiler.compile({ mainFileContent: source })
    const error = result.takeError()
    if (error || !result.result) {
      throw new Error(
        `the document could not be set: ${JSON.stringify(error && compiler.fetchDiagnostics(error))}`,
      )
    }
    const pages = result.result.numOfPages
    return { kind: "made", bytes: compiler.pdf(result.result, { pdfStandard: "ua-1" }), pages }
  } catch (cause) {
    const said = cause instanceof Error ? cause.message : String(cause)
    // Not every letter of a font's table can be set; what the typesetter names may be of a document it set before.
    const names = /the text `.*?` could not be displayed/s.test(said)
    if (names) return lettersRefused([])
    // Figures are our own and sound; the only other picture is the practice's.
    const hasLogo = documents.some(({ letterhead }) => letterhead.logo)
    if (hasLogo && /failed to decode image/.test(said))
      return logoRefused(say("a PNG or JPEG that can be read; its content is damaged"))
    throw cause
  } finally {
    compiler.resetShadow()
    // What one document laid out helps the next a little; after a batch it would only fill the memory.
    compiler.evictCache(documents.length > 1 ? 0 : 10)
  }
}

const lettersRefused = (letters: readonly string[]): PdfRefused => ({
  kind: "refused",
  about: "letters",
  letters,
  why:
    letters.length === 0
      ? say("no font at hand holds some letter of this document")
      : say("no font at hand holds {letters}: write it in other letters, or leave it out", {
          letters: letters.map((letter) => `“${letter}”`).join(", "),
        }),
})

const logoRefused = (allowed: string): PdfRefused => ({
  kind: "refused",
  about: "logo",
  why: say("the logo must be {allowed}", { allowed }),
})

/** An empty folder for the typesetter to stand in: it reads nothing but what it is given. */
let folder = ""
let kept: NodeCompiler | null = null

function typesetter(): NodeCompiler {
  if (kept === null) {
    folder = mkdtempSync(join(tmpdir(), "lengthwise-paper-"))
    kept = NodeCompiler.create({ workspace: folder, fontArgs: [{ fontBlobs: [...fontBlobs()] }] })
  }
  return kept
}

/** All that is drawn of a document; what a figure shows is told beside it and not drawn. */
const shownText = (document: PaperDocument): string =>
  JSON.stringify({ ...document, letterhead: { ...document.letterhead, logo: undefined } }, (key, value) =>
    key === "alt" ? undefined : value,
  )
