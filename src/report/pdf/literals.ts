/** A text as a literal: nothing in a name or a sentence can become markup. */
export function quoted(text: string): string {
  const escaped = text
    .normalize("NFC")
    .replaceAll("\\", "\\\\")
    .replaceAll('"', '\\"')
    .replaceAll("\n", "\\n")
    // biome-ignore lint/suspicious/noControlCharactersInRegex: taken out, since no font has a sign for them
    .replace(/[\u0000-\u0008\u000b-\u001f\u007f]/g, "")
    .replaceAll("\t", " ")
  return `"${escaped}"`
}

/** Text as content, with the places where a run without a blank may be cut. */
export function content(text: string): string {
  const pieces = cutPieces(text.normalize("NFC"))
  return pieces.length === 1 ? `text(${quoted(text)})` : `[#${pieces.map(quoted).join("#box()#")}]`
}

/** A run this long is longer than any word and than the narrowest column. */
const LONGEST_RUN = 40

// Chinese and Japanese have no blanks, and a line of theirs may be cut by the rules of the script already.
const LONG_RUN = new RegExp(
  `[^\\s\\u200b\\p{Script=Han}\\p{Script=Hiragana}\\p{Script=Katakana}\\u3000-\\u303f\\uff00-\\uffef]{${LONGEST_RUN},}`,
  "gu",
)
const letters = new Intl.Segmenter("en", { granularity: "grapheme" })

/**
 * A text in pieces between which a line may end: a run without a blank that is longer than any word would leave the
 * page. Letters that belong together stay so, and nothing is put into the text that copying would bring along.
 */
function cutPieces(text: string): readonly string[] {
  const pieces: string[] = [""]
  let place = 0
  const add = (more: string) => {
    pieces[pieces.length - 1] += more
  }
  for (const { 0: run, index } of text.matchAll(LONG_RUN)) {
    add(text.slice(place, index))
    // An address is cut after its signs, any other run anywhere.
    const parts = run.includes("/")
      ? (run.match(/[^/?&=_.-]+[/?&=_.-]*|[/?&=_.-]+/g) ?? [run]).flatMap(inShortParts)
      : inShortParts(run)
    parts.forEach((part, count) => {
      if (count > 0) pieces.push("")
      add(part)
    })
    place = index + run.length
  }
  add(text.slice(place))
  return pieces
}

/** Pieces of a few letters each, so that a line is filled nearly to its end. */
function inShortParts(run: string): readonly string[] {
  const all = [...letters.segment(run)].map(({ segment }) => segment)
  return Array.from({ length: Math.ceil(all.length / 4) }, (_, part) =>
    all.slice(part * 4, part * 4 + 4).join(""),
  )
}

/** A day as the typesetter writes it. */
export const typstDate = (date: string): string => {
  const [year, month, day] = date.split("-").map(Number)
  return `datetime(year: ${year}, month: ${month}, day: ${day})`
}
