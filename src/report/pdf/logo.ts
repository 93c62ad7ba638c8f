import { say } from "../../engine/say.js"
import type { Picture } from "../document.js"

export const LARGEST_LOGO_BYTES = 1_000_000

/** More is no sharper on paper, and a small file can unfold into a picture that fills the memory. */
const MOST_PIXELS_A_SIDE = 4000

/** What a logo is by its first bytes, whatever its name says; null when it is neither. */
export function pictureType(bytes: Uint8Array): Picture["mediaType"] | null {
  const begins = (...start: readonly number[]) => start.every((byte, place) => bytes[place] === byte)
  if (begins(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)) return "image/png"
  if (begins(0xff, 0xd8, 0xff)) return "image/jpeg"
  return null
}

/** What is wrong with a picture for the head of a paper, as "what is allowed", before anything decodes it. */
export function logoFault({ bytes, mediaType }: Picture): string | null {
  if (bytes.length > LARGEST_LOGO_BYTES) {
    return say("a picture of at most {megabytes} MB", { megabytes: LARGEST_LOGO_BYTES / 1_000_000 })
  }
  if (pictureType(bytes) !== mediaType) return say("a PNG or JPEG that can be read; its content is damaged")
  const sides = mediaType === "image/png" ? pngSides(bytes) : jpegSides(bytes)
  return sides === null
    ? say("a PNG or JPEG that can be read; its content is damaged")
    : Math.max(...sides) > MOST_PIXELS_A_SIDE
      ? say("a picture of at most {pixels} pixels a side", { pixels: String(MOST_PIXELS_A_SIDE) })
      : null
}

type Sides = readonly [width: number, height: number]

/** From the header chunk, which comes first (PNG, third edition, 11.2.1). */
function pngSides(bytes: Uint8Array): Sides | null {
  if (bytes.length < 24) return null
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length)
  return positive(view.getUint32(16), view.getUint32(20))
}

/** From the frame header, found by walking the segments (ITU-T T.81, B.2.2). */
function jpegSides(bytes: Uint8Array): Sides | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length)
  for (let place = 2; place + 9 < bytes.length; ) {
    if (bytes[place] !== 0xff) return null
    const marker = bytes[place + 1] ?? 0
    const isFrame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)
    if (isFrame) return positive(view.getUint16(place + 7), view.getUint16(place + 5))
    place += marker === 0xff ? 1 : 2 + view.getUint16(place + 2)
  }
  return null
}

const positive = (width: number, height: number): Sides | null =>
  width > 0 && height > 0 ? [width, height] : null
