import { decimals, el, type SvgElement } from "../svg.js"

/** Where an eye stands: the tip of its cornea, and the direction in which its length runs. */
export interface EyePlace {
  readonly x: number
  readonly y: number
  readonly direction: "down" | "right"
}

/**
 * The cornea as a share of the first eye's length. It hardly grows at school age, so all eyes of a figure get the same
 * one. It is a shape to know an eye by, not a measurement.
 */
const CORNEA = { radius: 0.325, bulge: 0.05 } as const

export interface Cornea {
  readonly radius: number
  readonly bulge: number
}

export const corneaOf = (firstLength: number): Cornea => ({
  radius: CORNEA.radius * firstLength,
  bulge: CORNEA.bulge * firstLength,
})

interface Stroke {
  readonly stroke: string
  readonly width: number
  readonly dash?: string
  readonly fill?: string
}

/** The eyeball from behind the cornea to `length` (px) behind the tip of the cornea. */
export function globe(length: number, place: EyePlace, cornea: Cornea, stroke: Stroke): SvgElement {
  const { bulge } = cornea
  const radius = (length - bulge) / 2
  return el("circle", {
    ...centre(bulge + radius, place),
    r: radius,
    fill: stroke.fill ?? "none",
    stroke: stroke.stroke,
    "stroke-width": stroke.width,
    "stroke-dasharray": stroke.dash,
  })
}

/** The bulge in front, from where it leaves the eyeball to where it meets it again. */
export function corneaMark(length: number, place: EyePlace, cornea: Cornea, stroke: Stroke): SvgElement {
  const { radius, bulge } = cornea
  const globeRadius = (length - bulge) / 2
  const apart = bulge + globeRadius - radius
  // Both circles meet on a chord across the axis; `from` is its distance from the centre of the cornea's circle.
  const from = (radius ** 2 - globeRadius ** 2 + apart ** 2) / (2 * apart)
  const half = Math.sqrt(Math.max(0, radius ** 2 - from ** 2))
  const depth = radius + from
  const [start, end] = [point(-half, depth, place), point(half, depth, place)]
  return el("path", {
    d: `M${start}A${decimals(radius)},${decimals(radius)} 0 0 ${place.direction === "down" ? 1 : 0} ${end}`,
    fill: stroke.fill ?? "none",
    stroke: stroke.stroke,
    "stroke-width": stroke.width,
    "stroke-linecap": "round",
  })
}

/** A point `depth` px behind the tip of the cornea and `aside` px off the axis. */
export const spot = (aside: number, depth: number, { x, y, direction }: EyePlace) =>
  direction === "down" ? { x: x + aside, y: y + depth } : { x: x + depth, y: y + aside }

function point(aside: number, depth: number, place: EyePlace): string {
  const { x, y } = spot(aside, depth, place)
  return `${decimals(x)},${decimals(y)}`
}

function centre(depth: number, place: EyePlace): { readonly cx: number; readonly cy: number } {
  const { x, y } = spot(0, depth, place)
  return { cx: x, cy: y }
}
