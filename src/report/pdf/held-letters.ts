/**
 * The code points a font has a sign for, from its `cmap` table (OpenType 1.9.1, "cmap"): format 12 where there is one,
 * else format 4. Ranges from first to last, both included.
 */
export function heldRanges(font: Uint8Array): readonly (readonly [first: number, last: number])[] {
  const view = new DataView(font.buffer, font.byteOffset, font.length)
  const cmap = tableAt(view, "cmap")
  const subtables = Array.from({ length: view.getUint16(cmap + 2) }, (_, record) => {
    const at = cmap + 4 + 8 * record
    return {
      platform: view.getUint16(at),
      encoding: view.getUint16(at + 2),
      at: cmap + view.getUint32(at + 4),
    }
  })
    .filter(({ platform, encoding }) => platform === 0 || (platform === 3 && [1, 10].includes(encoding)))
    .map(({ at }) => ({ at, format: view.getUint16(at) }))
  const wide = subtables.find(({ format }) => format === 12)
  if (wide) return rangesOfFormat12(view, wide.at)
  const narrow = subtables.find(({ format }) => format === 4)
  return narrow ? rangesOfFormat4(view, narrow.at) : []
}

function tableAt(view: DataView, name: string): number {
  for (let record = 0; record < view.getUint16(4); record += 1) {
    const at = 12 + 16 * record
    const tag = String.fromCharCode(...[0, 1, 2, 3].map((place) => view.getUint8(at + place)))
    if (tag === name) return view.getUint32(at + 8)
  }
  throw new RangeError(`the font has no table ${name}`)
}

const rangesOfFormat12 = (view: DataView, at: number): readonly (readonly [number, number])[] =>
  Array.from({ length: view.getUint32(at + 12) }, (_, group) => {
    const start = at + 16 + 12 * group
    return [view.getUint32(start), view.getUint32(start + 4)] as const
  })

/** A range may hold a code point that has no sign after all; one in a thousand, which the typesetter then refuses. */
function rangesOfFormat4(view: DataView, at: number): readonly (readonly [number, number])[] {
  const segments = view.getUint16(at + 6) / 2
  const ends = at + 14
  const starts = ends + 2 * segments + 2
  return Array.from(
    { length: segments },
    (_, segment) => [view.getUint16(starts + 2 * segment), view.getUint16(ends + 2 * segment)] as const,
  ).filter(([first]) => first !== 0xffff)
}

// They steer what stands beside them and are never drawn themselves.
const NEVER_DRAWN = /\p{Default_Ignorable_Code_Point}|\p{Control}|\s/u

/** Letters of a text that none of the fonts holds, each once, in order. */
export function missingLetters(text: string, isHeld: (codePoint: number) => boolean): readonly string[] {
  const held = (letter: string) =>
    NEVER_DRAWN.test(letter) ||
    isHeld(letter.codePointAt(0) ?? 0) ||
    // A letter with its mark can be drawn from the two.
    (letter.normalize("NFD") !== letter &&
      [...letter.normalize("NFD")].every((part) => isHeld(part.codePointAt(0) ?? 0)))
  return [...new Set(text.normalize("NFC"))].filter((letter) => !held(letter))
}
