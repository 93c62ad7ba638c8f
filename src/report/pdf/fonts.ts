import { readFileSync } from "node:fs"
import { createRequire } from "node:module"
import { dirname, join } from "node:path"

/** The families a document is set in, in the order they are asked for a letter: Latin, Greek, Cyrillic and Devanagari first. */
export const FAMILIES = ["Noto Sans", "Noto Sans S Chinese", "Noto Naskh Arabic", "Noto Sans Hebrew"] as const

const FILES = [
  ["@embedpdf/fonts-latin", "NotoSans-Regular.ttf", "NotoSans-SemiBold.ttf", "NotoSans-Bold.ttf"],
  ["@embedpdf/fonts-sc", "NotoSansHans-Regular.otf", "NotoSansHans-Bold.otf"],
  ["@embedpdf/fonts-arabic", "NotoNaskhArabic-Regular.ttf", "NotoNaskhArabic-Bold.ttf"],
  ["@embedpdf/fonts-hebrew", "NotoSansHebrew-Regular.ttf", "NotoSansHebrew-Bold.ttf"],
] as const

/** The font files as they were installed, so that a document looks the same on every machine. */
export function fontBlobs(): Buffer[] {
  const { resolve } = createRequire(import.meta.url)
  // The packages name their code only; the fonts stand beside it.
  return FILES.flatMap(([name, ...files]) =>
    files.map((file) => readFileSync(join(dirname(resolve(name)), "../fonts", file))),
  )
}
