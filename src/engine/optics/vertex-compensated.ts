import { type RefractionLike, type SpheroCylinder, spheroCylinder } from "./sphero-cylinder.js"

/**
 * The lens that does the same work from a plane nearer the eye: F / (1 - d F) in each principal meridian, d in metres.
 * `towardEyeMm` is the distance moved; the vertex distance itself when the new plane is the cornea, negative when the
 * lens moves away. The axis stays.
 *
 * @example
 * vertexCompensated({ lens: { sphere: 10 }, towardEyeMm: 20 }).sphere // => 12.5
 */
export function vertexCompensated({
  lens,
  towardEyeMm,
}: {
  lens: RefractionLike
  towardEyeMm: number
}): SpheroCylinder {
  const { sphere, cylinder, axis } = spheroCylinder(lens)
  const moved = (power: number) => {
    const divisor = 1 - (towardEyeMm / 1000) * power
    // At 0 the new plane is the focus itself, and behind the focus no lens does the same work.
    if (!(divisor > 0)) throw new RangeError(`a lens of ${power} D cannot be moved ${towardEyeMm} mm`)
    return power / divisor
  }
  const alongAxis = moved(sphere)
  return spheroCylinder({ sphere: alongAxis, cylinder: moved(sphere + cylinder) - alongAxis, axis })
}
