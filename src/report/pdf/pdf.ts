import { mkdtempSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { NodeCompiler } from "@myriaddreamin/typst-ts-node-compiler"
import { inLanguage } from "../../engine/say.js"
import type { DocumentRefused, PaperDocument, PaperSize } from "../document.js"
import { fontBlobs } from "./fonts.js"
import { typstSource } from "./typst-source.js"

export interface Pdf {
  readonly kind: "made"
  readonly bytes: Uint8Array
  readonly pages: number
}

/**
 * Documents as one PDF: tagged by PDF/UA-1's rules, fonts embedded, title and language set.
 *
 * A letter that none of the fonts holds is refused by name: a document with a box in a child's name is not right.
 */
export function pdfOf(documents: readonly PaperDocument[], paper: PaperSize): Pdf | DocumentRefused {
  const [first] = documents
  if (first === undefined) throw new RangeError("at least one document is set")
  const { source, files } = inLanguage(first.language, () => typstSource(documents, paper))
  const compiler = typesetter()
  for (const [name, bytes] of files) compiler.mapShadow(join(folder, name), Buffer.from(bytes))
  try {
    const result = compiler.compile({ mainFileContent: source })
    const fault = result.takeError()
    if (fault || !result.result) {
      throw new Error(
        `the document could not be set: ${JSON.stringify(fault && compiler.fetchDiagnostics(fault))}`,
      )
    }
    const pages = result.result.numOfPages
    return { kind: "made", bytes: compiler.pdf(result.result, { pdfStandard: "ua-1" }), pages }
  } catch (cause) {
    const missing = missingLetters(cause)
    if (missing.length === 0) throw cause
    return {
      kind: "refused",
      why: `no font at hand holds ${missing.map((text) => `"${text}"`).join(", ")}: write it in other letters, or leave it out`,
    }
  } finally {
    compiler.resetShadow()
    // What one document laid out is of no use to the next but for the fonts, which are kept apart.
    compiler.evictCache(10)
  }
}

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
function missingLetters(cause: unknown): readonly string[] {
  const said = cause instanceof Error ? cause.message : String(cause)
  const found = [...said.matchAll(/the text `\\?"(.+?)\\?"` could not be displayed/g)]
  return [...new Set(found.map(([, text = ""]) => text))]
}
