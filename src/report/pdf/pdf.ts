import { mkdtempSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { NodeCompiler } from "@myriaddreamin/typst-ts-node-compiler"
import { say } from "../../engine/say.js"
import type { DocumentRefused, PaperDocument, PaperSize } from "../document.js"
import { fontBlobs } from "./fonts.js"
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
    const missing = missingLetters(said)
    if (missing.length > 0) {
      const letters = missing.map((text) => `“${text}”`).join(", ")
      const why = say("no font at hand holds {letters}: write it in other letters, or leave it out", {
        letters,
      })
      return { kind: "refused", about: "letters", letters: missing, why }
    }
    // Figures are our own and sound; the only other picture is the practice's.
    const hasLogo = documents.some(({ letterhead }) => letterhead.logo)
    if (hasLogo && /failed to decode image/.test(said))
      return logoRefused(say("a PNG or JPEG that can be read; its content is damaged"))
    throw cause
  } finally {
    compiler.resetShadow()
    // What one document laid out is of no use to the next but for the fonts, which are kept apart.
    // What one document laid out helps the next a little; after a batch it would only fill the memory.
    compiler.evictCache(documents.length > 1 ? 0 : 10)
  }
}

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
    kept = NodeCompiler.create({ workspace: folder, fontArgs: [{ fontBlobs: fontBlobs() }] })
  }
  return kept
}

/** The letters that the typesetter named in its refusal. */
function missingLetters(said: string): readonly string[] {
  const found = [...said.matchAll(/the text `\\?"(.+?)\\?"` could not be displayed/g)]
  return [...new Set(found.map(([, text = ""]) => text))]
}
