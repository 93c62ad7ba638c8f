import type { Frame } from "./frame.js"
import type { Stretch } from "./label-placement.js"
import { TEXT, textWidth } from "./text-size.js"

/** Words next to a bar, and the stretch that bar and words take together. */
export interface WordsBeside {
  readonly text: string
  readonly x: number
  readonly anchor: "start" | "end"
  readonly extent: Stretch
}

const SPACE = 6

/**
 * Right of the bar where the words fit, else left of it; where they fit on neither side they are cut, on the side with
 * more room, with three dots for what is missing.
 */
export function wordsBeside(
  text: string,
  {
    bar: { from, to },
    frame,
    bold = false,
  }: { readonly bar: Stretch; readonly frame: Frame; readonly bold?: boolean },
): WordsBeside {
  const widthOf = (words: string) => textWidth(words, { size: TEXT.label, bold })
  const [roomRight, roomLeft] = [frame.width - to - SPACE, from - SPACE]
  const width = widthOf(text)
  const right = width <= roomRight || (width > roomLeft && roomRight >= roomLeft)
  const words = shortened(text, { room: right ? roomRight : roomLeft, widthOf })
  const taken = SPACE + widthOf(words) + SPACE
  return right
    ? { text: words, x: to + SPACE, anchor: "start", extent: { from, to: to + taken } }
    : { text: words, x: from - SPACE, anchor: "end", extent: { from: from - taken, to } }
}

function shortened(
  text: string,
  { room, widthOf }: { readonly room: number; readonly widthOf: (words: string) => number },
): string {
  if (widthOf(text) <= room) return text
  const characters = [...text]
  const fits = (length: number) => widthOf(`${characters.slice(0, length).join("")}…`) <= room
  let length = characters.length - 1
  while (length > 0 && !fits(length)) length -= 1
  return `${characters.slice(0, length).join("").trimEnd()}…`
}
