import { el, type Point, type SvgElement } from "./svg.js"
import { TEXT } from "./text-size.js"

/** What marks mean, drawn rightwards along a baseline at y = 0. */
export interface Key {
  readonly width: number
  readonly marks: readonly SvgElement[]
}

interface TextStyle {
  readonly fill: string
  readonly size?: number
  readonly anchor?: "start" | "middle" | "end"
  readonly bold?: boolean
  /** Colour around the letters, for words that a line may cross. */
  readonly halo?: string
}

export function label(
  text: string,
  at: Point,
  { fill, size = TEXT.label, anchor, bold = false, halo }: TextStyle,
): SvgElement {
  return el(
    "text",
    {
      x: at.x,
      y: at.y,
      "font-size": size,
      fill,
      "text-anchor": anchor === "start" ? undefined : anchor,
      "font-weight": bold ? 600 : undefined,
      ...(halo === undefined
        ? {}
        : { stroke: halo, "stroke-width": 3, "stroke-linejoin": "round", "paint-order": "stroke" }),
    },
    text,
  )
}

export function line(
  from: Point,
  to: Point,
  stroke: { readonly stroke: string; readonly width?: number; readonly dash?: string },
): SvgElement {
  return el("line", {
    x1: from.x,
    y1: from.y,
    x2: to.x,
    y2: to.y,
    stroke: stroke.stroke,
    "stroke-width": stroke.width ?? 1,
    "stroke-dasharray": stroke.dash,
  })
}
