import { el, type SvgElement, svgText } from "./svg.js"

/**
 * A whole figure. It carries its own type settings, so that it needs no style sheet, and no width and height, so that
 * it fills what holds it and keeps its proportions. The message in words is its accessible description.
 */
export function svgDocument({
  width,
  height,
  title,
  description,
  content,
}: {
  readonly width: number
  readonly height: number
  readonly title: string
  readonly description: string
  readonly content: readonly SvgElement[]
}): string {
  const root = el(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${width} ${height}`,
      role: "img",
      "font-family": "system-ui, 'DejaVu Sans', sans-serif",
      "font-variant": "tabular-nums",
    },
    [el("title", {}, title), el("desc", {}, description), ...content],
  )
  return svgText(root)
}
