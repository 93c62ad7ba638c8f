import type { Frame } from "./frame.js"
import { spread } from "./label-placement.js"
import { label } from "./marks.js"
import type { Rectangle, SvgElement } from "./svg.js"
import { LINE_HEIGHT, TEXT, wrapped } from "./text-size.js"

/** A name for a line, written right of the plot at the height where the line ends. */
export interface EndLabel {
  readonly y: number
  readonly name: string
  /** A figure under the name. */
  readonly figure?: string | undefined
  readonly strong?: boolean
}

/** Names right of the plot, moved apart where they would overlap. */
export function endLabels(frame: Frame, plot: Rectangle, labels: readonly EndLabel[]): readonly SvgElement[] {
  const x = frame.right + 8
  const texts = labels.map(({ name, figure, strong = false }) => [
    ...wrapped(name, { width: frame.width - x, size: TEXT.label }).map((text) => ({
      text,
      style: { fill: strong ? frame.colours.ink : frame.colours.soft, bold: strong },
    })),
    ...(figure === undefined
      ? []
      : [{ text: figure, style: { fill: frame.colours.soft, size: TEXT.small } }]),
  ])
  const middles = spread(
    labels.map(({ y }, i) => ({ at: y, size: (texts[i]?.length ?? 0) * LINE_HEIGHT })),
    { low: plot.y - 8, high: plot.y + plot.height + 8, gap: 2 },
  )
  return texts.flatMap((lines, i) =>
    lines.map(({ text, style }, row) => {
      const top = (middles[i] as number) - (lines.length * LINE_HEIGHT) / 2
      return label(text, { x, y: top + row * LINE_HEIGHT + 11 }, style)
    }),
  )
}
