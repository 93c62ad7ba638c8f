import type { Reference } from "../../evidence/types.js"
import type { Position } from "../assessment.js"
import type { LengthMethod, Sex } from "../course.js"
import { normalCdf, normalQuantile } from "../numeric/normal.js"
import { msg, say } from "../say.js"
import { cautions } from "./cautions.js"
import type { Distribution } from "./distribution.js"
import { distributionAtAge } from "./distribution-at-age.js"

export type Measure = Reference["measure"]

// A decimal point lost or an instrument misread, not limits of nature (common practice, no source).
const PLAUSIBLE = {
  "axial-length": { low: 15, high: 35, name: msg("axial length"), unit: "mm" },
  "spherical-equivalent": { low: -30, high: 30, name: msg("spherical equivalent"), unit: "D" },
} as const

export interface PositionQuestion {
  readonly measure: Measure
  /** Axial length in mm, or spherical equivalent in dioptres. */
  readonly value: number
  readonly ageYears: number
  readonly sex: Sex
  readonly reference: Reference
  /** How the value was measured, when known, so that unlike instruments are not compared in silence. */
  readonly method?: LengthMethod | undefined
  readonly cycloplegic?: boolean | undefined
}

/**
 * Where a child's eye stands among peers: z and centile (percent), with the reference's id and grade. Beyond the
 * outermost centile of the reference the centile is the text "below p3" or "above p95", and z is null where the
 * method defines none. Outside the ages or sexes of the reference, and for grade D, a refusal says why.
 * A position is not a target, and it never replaces the refraction.
 */
export function position(question: PositionQuestion): Position {
  const { value, ageYears, sex, reference } = question
  const named = { reference: reference.id, grade: reference.grade }
  const refused = unfit(question)
  if (refused !== null) return { refused, ...named }
  const found = distributionAtAge({ reference, sex, ageYears })
  if ("refused" in found) return { refused: found.refused, ...named }
  const z = found.distribution.zAt(value)
  const note = cautions(question).join("; ")
  return {
    z,
    centile: centileOf({ value, z, distribution: found.distribution }),
    ...named,
    ...(note === "" ? {} : { note }),
  }
}

function unfit({ measure, value, reference }: PositionQuestion): string | null {
  if (measure !== reference.measure) {
    return say("the reference {id} measures {measured}, not {asked}", {
      id: reference.id,
      measured: say(PLAUSIBLE[reference.measure].name),
      asked: say(PLAUSIBLE[measure].name),
    })
  }
  const { low, high, name, unit } = PLAUSIBLE[measure]
  if (value >= low && value <= high) return null
  return say("{measure} must be from {low} to {high} {unit} to be placed, not {value}", {
    measure: say(name),
    low,
    high,
    unit,
    value,
  })
}

function centileOf({
  value,
  z,
  distribution,
}: {
  value: number
  z: number | null
  distribution: Distribution
}): number | string {
  const { lowest, highest, valueAt } = distribution
  const lowestValue = valueAt(normalQuantile(lowest / 100))
  // Without a z the value lies beyond a printed table, on the side that its outermost value tells.
  const centile = z === null ? (lowestValue !== null && value < lowestValue ? 0 : 100) : 100 * normalCdf(z)
  // A value that is exactly an outermost centile is still on the table, whatever the last digit says.
  if (centile < lowest - 1e-9) return say("below p{centile}", { centile: lowest })
  if (centile > highest + 1e-9) return say("above p{centile}", { centile: highest })
  return centile
}
