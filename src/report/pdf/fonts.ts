import { readFileSync } from "node:fs"
import { createRequire } from "node:module"
import { dirname, join } from "node:path"
import { heldRanges } from "./held-letters.js"

/** The families a document is set in, in the order they are asked for a letter: Latin, Greek, Cyrillic and Devanagari first. */
export const FAMILIES = ["Noto Sans", "Noto Sans S Chinese", "Noto Naskh Arabic", "Noto Sans Hebrew"] as const

const FILES = [
  ["@embedpdf/fonts-latin", "NotoSans-Regular.ttf", "NotoSans-SemiBold.ttf", "NotoSans-Bold.ttf"],
  ["@embedpdf/fonts-sc", "NotoSansHans-Regular.otf", "NotoSansHans-Bold.otf"],
  ["@embedpdf/fonts-arabic", "NotoNaskhArabic-Regular.ttf", "NotoNaskhArabic-Bold.ttf"],
  ["@embedpdf/fonts-hebrew", "NotoSansHebrew-Regular.ttf", "NotoSansHebrew-Bold.ttf"],
] as const

/** The font files as they were installed, so that a document looks the same on every machine. */
export function fontBlobs(): readonly Buffer[] {
  const { resolve } = createRequire(import.meta.url)
  // The packages name their code only; the fonts stand beside it.
  kept ??= FILES.flatMap(([name, ...files]) =>
    files.map((file) => readFileSync(join(dirname(resolve(name)), "../fonts", file))),
  )
  return kept
}

let kept: readonly Buffer[] | null = null
let held: ReadonlySet<number> | null = null

/** Whether any of the fonts has a sign for a code point. */
export function isHeld(codePoint: number): boolean {
  held ??= new Set(
    fontBlobs()
      .flatMap(heldRanges)
      .flatMap(([first, last]) => Array.from({ length: last - first + 1 }, (_, place) => first + place)),
  )
  return held.has(codePoint)
}
