import { minusCylinder } from "../../engine/optics/transposed.js"
import { say } from "../../engine/say.js"
import { limits } from "../course/limits.js"
import { eyeName, inside, note, type Place, quantity, roundedTo, skip } from "./reading.js"

export interface LensPowers {
  readonly sphere: number
  readonly cylinder?: number
  readonly axis?: number
}

/**
 * Sphere, cylinder and axis in minus-cylinder form. The standard leaves the sign of the cylinder open and instruments
 * differ; one form makes two of them comparable, and the lens is the same. No cylinder sequence means no cylinder.
 */
export function lensPowers(place: Place, field: string): LensPowers | undefined {
  const sphere = quantity(place, {
    attribute: "sphere",
    limit: limits.sphereD,
    what: say("sphere"),
    decimals: 3,
  })
  if (sphere === undefined) {
    skip(place, say("{eye}: there is no sphere, so the rest was not taken.", eyeName(place.eye)))
    return undefined
  }
  const inner = inside(place, "cylinder")
  if (!inner) return { sphere }
  const skippedBefore = place.reading.skipped.length
  const cylinder = quantity(inner, {
    attribute: "cylinderPower",
    limit: limits.cylinderD,
    what: say("cylinder"),
    decimals: 3,
  })
  const axis = quantity(inner, {
    attribute: "cylinderAxis",
    limit: limits.axisDegrees,
    what: say("axis of the cylinder"),
    decimals: 1,
  })
  // Half a cylinder is no lens: without it, or with another, the sphere means something else.
  if (place.reading.skipped.length > skippedBefore) return undefined
  if (cylinder === undefined && axis === undefined) return { sphere }
  if (cylinder === 0) return { sphere }
  if (cylinder === undefined || axis === undefined) {
    skip(inner, say("{eye}: a cylinder needs power and axis, and one is missing.", eyeName(place.eye)))
    return undefined
  }
  return inMinusForm(place, { lens: { sphere, cylinder, axis }, field })
}

function inMinusForm(
  place: Place,
  { lens, field }: { readonly lens: Required<LensPowers>; readonly field: string },
): LensPowers | undefined {
  const turned = minusCylinder(lens)
  const sphere = roundedTo(turned.sphere, 3)
  if (lens.cylinder > 0) {
    if (sphere > limits.sphereD.high) {
      skip(
        place,
        say("{eye}: sphere and cylinder together are stronger than a lens can be.", eyeName(place.eye)),
      )
      return undefined
    }
    const why = say("the file gives a plus cylinder; the same lens is written with a minus cylinder")
    note(place, { kind: "cylinder-turned", field, why })
  }
  return { sphere, cylinder: roundedTo(turned.cylinder, 3), axis: roundedTo(turned.axis, 1) }
}
