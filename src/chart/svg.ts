/** A piece of a drawing. Text is a leaf: its white space is kept as given. */
export interface SvgElement {
  readonly tag: string
  readonly attributes: Attributes
  readonly children: readonly SvgElement[] | string
}

type Attributes = Readonly<Record<string, string | number | undefined>>

/** An element with children or text; an attribute that is undefined is left out. */
export function el(
  tag: string,
  attributes: Attributes = {},
  children: readonly SvgElement[] | string = [],
): SvgElement {
  return { tag, attributes, children }
}

/**
 * Markup, one element a line and indented, so that a changed figure can be read as a changed text.
 *
 * @example
 * svgText(el("text", { x: 1.005 }, "a < b")) // => '<text x="1.01">a &lt; b</text>\n'
 */
export function svgText(element: SvgElement, indent = ""): string {
  const { tag, attributes, children } = element
  const open = Object.entries(attributes)
    .filter((entry): entry is [string, string | number] => entry[1] !== undefined)
    .map(([name, value]) => ` ${name}="${escaped(typeof value === "number" ? decimals(value) : value)}"`)
    .join("")
  if (children.length === 0) return `${indent}<${tag}${open}/>\n`
  if (typeof children === "string") return `${indent}<${tag}${open}>${escaped(children)}</${tag}>\n`
  const inner = children.map((child) => svgText(child, `${indent}  `)).join("")
  return `${indent}<${tag}${open}>\n${inner}${indent}</${tag}>\n`
}

/** A number as written in the drawing: two decimals at most, and never a minus zero. */
export function decimals(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`a coordinate must be a finite number: ${value}`)
  const rounded = Math.round((value + Math.sign(value) * 1e-9) * 100) / 100
  return String(rounded === 0 ? 0 : rounded)
}

/** A path of straight lines through the points, closed when asked. */
export function polygon(points: readonly Point[], { closed }: { closed: boolean }): string {
  const steps = points.map(({ x, y }, i) => `${i === 0 ? "M" : "L"}${decimals(x)},${decimals(y)}`)
  return steps.join("") + (closed ? "Z" : "")
}

export interface Point {
  readonly x: number
  readonly y: number
}

/** A rectangle of the drawing. */
export interface Rectangle extends Point {
  readonly width: number
  readonly height: number
}

// Characters that XML forbids even as references would make the whole figure unreadable, so they are dropped.
function escaped(text: string): string {
  return text
    .replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, "")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;")
}
