/** Sizes used in every figure, px at the figure's own width; nothing is set smaller than `small`. */
export const TEXT = { small: 11, label: 12, title: 13 } as const

/** Distance from baseline to baseline. */
export const LINE_HEIGHT = 14

/**
 * Width of a text in px, from rounded widths of character classes of a wide sans-serif face.
 *
 * No font is at hand when a figure is made, so this errs on the wide side: a label that is judged to fit does fit.
 * @example
 * textWidth("24.12 mm", { size: 12 }) // => 62.4, in the same unit as the size
 */
export function textWidth(text: string, { size, bold = false }: { size: number; bold?: boolean }): number {
  const ems = [...text].reduce((sum, character) => sum + characterWidth(character), 0)
  return Math.round(ems * size * (bold ? 1.12 : 1) * 100) / 100
}

function characterWidth(character: string): number {
  if (/[ijl.,:;'|!·]/.test(character)) return 0.34
  if (character === " ") return 0.33
  if (/[frt()/-]/.test(character)) return 0.42
  if (/[mwMW%]/.test(character)) return 0.97
  if (/[A-Z]/.test(character)) return 0.72
  if (/[\u2E80-\uFFEF]/.test(character)) return 1
  if (/[−±+<>=≤≥→]/.test(character)) return 0.84
  return 0.64
}

/** The text cut at spaces into lines no wider than asked; a single word is never broken. */
export function wrapped(text: string, { width, size }: { width: number; size: number }): readonly string[] {
  const lines: string[] = []
  for (const word of text.split(" ")) {
    const last = lines.at(-1)
    const longer = last === undefined ? word : `${last} ${word}`
    if (last === undefined || textWidth(longer, { size }) > width) lines.push(word)
    else lines[lines.length - 1] = longer
  }
  return lines
}
