import { label } from "../marks.js"
import type { SvgElement } from "../svg.js"
import { textWidth } from "../text-size.js"

/** Sizes of the figures for families, px at 760 wide: read at arm's length, and nothing smaller than `small`. */
export const LARGE = { small: 15, text: 16, strong: 18 } as const

export interface FamilyFigure {
  readonly svg: string
  /** The same in words: the accessible description of the drawing, and the alternative text on paper. */
  readonly description: string
}

export interface FamilyFigureOptions {
  /** Width of the figure, px; text keeps its size, so a phone is laid out anew instead of shrunk. Default 760. */
  readonly width?: number | undefined
  /** `plain` (default) for paper; `themed` takes the inks of the page that holds the figure. */
  readonly colours?: "plain" | "themed" | undefined
}

export const FAMILY_WIDTH = 760

/** Refuses what leaves no room for words of this size. */
export function checkedWidth(width: number): number {
  if (!(width >= 320)) throw new RangeError(`width of a family figure must be at least 320: ${width}`)
  return width
}

interface TextLook {
  readonly size: number
  readonly fill: string
  readonly bold?: boolean
}

interface TextRow extends TextLook {
  readonly text: string
}

/** Lines of text that stand under one another. */
export interface TextBlock {
  readonly rows: readonly TextRow[]
  readonly width: number
  readonly height: number
}

const lineHeight = (size: number) => Math.round(size * 1.3)

/** A text cut into the lines that a width holds; an empty text takes no line. */
export function block(text: string, { width, ...look }: TextLook & { readonly width: number }): TextBlock {
  const measure = { size: look.size, bold: look.bold ?? false }
  const rows = text === "" ? [] : balanced(text, { ...measure, width }).map((row) => ({ ...look, text: row }))
  return {
    rows,
    width: Math.max(0, ...rows.map((row) => textWidth(row.text, measure))),
    height: rows.length * lineHeight(look.size),
  }
}

export function stacked(...blocks: readonly TextBlock[]): TextBlock {
  return {
    rows: blocks.flatMap(({ rows }) => rows),
    width: Math.max(0, ...blocks.map(({ width }) => width)),
    height: blocks.reduce((sum, { height }) => sum + height, 0),
  }
}

interface Place {
  readonly x: number
  /** Upper edge of the first line. */
  readonly top: number
  readonly anchor?: "start" | "middle" | "end"
  readonly halo?: string
}

export function blockMarks({ rows }: TextBlock, { x, top, ...style }: Place): readonly SvgElement[] {
  let y = top
  return rows.map(({ text, ...look }) => {
    y += lineHeight(look.size)
    return label(text, { x, y: y - Math.round(0.3 * look.size) }, { ...look, ...style })
  })
}

/**
 * Lines no wider than asked. A text is cut at blanks, and between Chinese characters where no closing sign would begin
 * the line after; a word wider than a whole line is cut inside, since running out of the picture would be worse.
 */
export function largeLines(
  text: string,
  { width, ...face }: { readonly width: number; readonly size: number; readonly bold?: boolean },
): readonly string[] {
  const fits = (line: string) => textWidth(line.trimEnd(), face) <= width
  const lines: string[] = []
  const add = (piece: string, last: string | undefined) => {
    if (last !== undefined && fits(last + piece)) lines[lines.length - 1] = last + piece
    else lines.push(piece)
  }
  for (const whole of pieces(text)) {
    if (fits(whole)) add(whole, lines.at(-1))
    else for (const [i, letter] of [...whole].entries()) add(letter, i === 0 ? undefined : lines.at(-1))
  }
  return lines.map((line) => line.trim()).filter((line) => line !== "")
}

/** As many lines as the width needs, about equally long, so that no word or character is left alone on the last. */
function balanced(text: string, { width, ...face }: Parameters<typeof largeLines>[1]): readonly string[] {
  let lines = largeLines(text, { ...face, width })
  const widths = pieces(text).map((piece) => textWidth(piece.trimEnd(), face))
  // Never so narrow that a word is cut which the whole width holds.
  const least = Math.max(width / 2, ...widths.filter((wide) => wide <= width))
  for (let narrower = width - 6; narrower >= least; narrower -= 6) {
    const tried = largeLines(text, { ...face, width: narrower })
    if (tried.length > lines.length) break
    lines = tried
  }
  return lines
}

/** What may not be torn apart: a word with the blank after it, a Chinese character with the signs that close it. */
const PIECE =
  /[（《“‘「【]*[\u2E80-\u9FFF\uF900-\uFAFF][，。、；：？！）》”’」】％]*\s*|[^\s\u2E80-\u9FFF\uF900-\uFAFF（《「【]+[，。、；：？！）》”’」】％]*\s*/gu

function pieces(text: string): readonly string[] {
  return text.replace(/\s+/g, " ").match(PIECE) ?? [text]
}
