import { inflateSync } from "node:zlib"

/** A picture of grey dots, 0 black to 255 white. */
export interface GreyPicture {
  readonly width: number
  readonly height: number
  readonly dots: Uint8Array
}

/** Reads a PNG as pdftoppm writes it: 8 bits a channel, grey or of three colours, not interlaced (PNG, third edition, 9 and 11). */
export function greyPicture(png: Uint8Array): GreyPicture {
  const view = new DataView(png.buffer, png.byteOffset, png.length)
  const [width, height] = [view.getUint32(16), view.getUint32(20)]
  const channels = { 0: 1, 2: 3 }[png[25] ?? -1]
  if (png[24] !== 8 || channels === undefined || png[28] !== 0) {
    throw new RangeError("a PNG of 8 bits a channel, grey or of three colours, was expected")
  }
  const parts: Uint8Array[] = []
  for (let at = 8; at < png.length; ) {
    const length = view.getUint32(at)
    const kind = String.fromCharCode(...png.subarray(at + 4, at + 8))
    if (kind === "IDAT") parts.push(png.subarray(at + 8, at + 8 + length))
    at += 12 + length
  }
  const bytes = unfiltered(inflateSync(Buffer.concat(parts)), {
    rowBytes: width * channels,
    height,
    channels,
  })
  const dots = Uint8Array.from({ length: width * height }, (_, dot) => {
    const colours = bytes.subarray(dot * channels, (dot + 1) * channels)
    return colours.reduce((sum, colour) => sum + colour, 0) / channels
  })
  return { width, height, dots }
}

function unfiltered(
  lines: Uint8Array,
  {
    rowBytes,
    height,
    channels,
  }: { readonly rowBytes: number; readonly height: number; readonly channels: number },
): Uint8Array {
  const bytes = new Uint8Array(rowBytes * height)
  for (let y = 0; y < height; y += 1) {
    const filter = lines[y * (rowBytes + 1)] ?? 0
    for (let x = 0; x < rowBytes; x += 1) {
      const raw = lines[y * (rowBytes + 1) + 1 + x] ?? 0
      const here = y * rowBytes + x
      const hasLeft = x >= channels
      const left = hasLeft ? (bytes[here - channels] ?? 0) : 0
      const above = y > 0 ? (bytes[here - rowBytes] ?? 0) : 0
      const corner = hasLeft && y > 0 ? (bytes[here - rowBytes - channels] ?? 0) : 0
      const predicted = [0, left, above, Math.floor((left + above) / 2), nearest(left, above, corner)][filter]
      bytes[here] = raw + (predicted ?? 0)
    }
  }
  return bytes
}

function nearest(left: number, above: number, corner: number): number {
  const guess = left + above - corner
  const [a, b, c] = [left, above, corner].map((dot) => Math.abs(guess - dot)) as [number, number, number]
  return a <= b && a <= c ? left : b <= c ? above : corner
}

/** Share of the dots that are clearly another grey: what a new version of the rasteriser does to edges is not. */
export function shareChanged(one: GreyPicture, other: GreyPicture): number {
  if (one.width !== other.width || one.height !== other.height) return 1
  const changed = one.dots.reduce(
    (count, dot, place) => count + (Math.abs(dot - (other.dots[place] ?? 0)) > 64 ? 1 : 0),
    0,
  )
  return changed / one.dots.length
}
