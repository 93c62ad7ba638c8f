import { textWidth } from "../../src/chart/text-size.js"

export interface TextBox {
  readonly text: string
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** The boxes that the texts of a figure take, by the same judgement of width that placed them. */
export function textBoxes(svg: string): readonly TextBox[] {
  let groups: readonly { readonly x: number; readonly y: number; readonly indent: number }[] = []
  return svg.split("\n").flatMap((markup) => {
    const indent = markup.search(/\S/)
    const moved = /<g transform="translate\((-?[\d.]+),(-?[\d.]+)\)">/.exec(markup)
    groups = groups.filter((group) => group.indent < indent)
    if (moved) groups = [...groups, { x: Number(moved[1]), y: Number(moved[2]), indent }]
    const shift = groups.reduce((sum, { x, y }) => ({ x: sum.x + x, y: sum.y + y }), { x: 0, y: 0 })
    const found = /<text x="(-?[\d.]+)" y="(-?[\d.]+)" font-size="([\d.]+)"(.*?)>(.*)<\/text>/.exec(markup)
    if (!found) return []
    const [, x, y, size, rest = "", escaped = ""] = found
    const text = escaped.replace(/&(lt|gt|quot|amp);/g, "&")
    const width = textWidth(text, { size: Number(size), bold: rest.includes("font-weight") })
    const start = Number(x) + shift.x
    const left = rest.includes('"end"')
      ? start - width
      : rest.includes('"middle"')
        ? start - width / 2
        : start
    const baseline = Number(y) + shift.y
    return [{ text, left, right: left + width, top: baseline - 0.72 * Number(size), bottom: baseline }]
  })
}

export function overlapping(boxes: readonly TextBox[]): readonly string[] {
  return boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter((b) => a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom && b.top < a.bottom)
      .map((b) => `${a.text} | ${b.text}`),
  )
}
