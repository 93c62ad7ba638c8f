import type { AxialLength, CorneaRadius, EyeExamination, Refraction } from "../../engine/course.js"
import { EYE_FIELDS, figureName } from "../../engine/figure-names.js"
import { say, withDecimalSign } from "../../engine/say.js"
import type { Contradiction } from "./merged-visit.js"

/**
 * What two files say otherwise of one figure, in a line a person can read; where the short forms are alike or there is
 * none, only which figure it is.
 *
 * @example
 * contradictionWords({ path: "right.axialLength", recorded: { mm: 24.1 }, offered: { mm: 24.4 } })
 * // => "axial length of the right eye: one file says 24.1 mm, another 24.4 mm; the first was kept"
 */
export function contradictionWords({ path, recorded, offered }: Contradiction): string {
  const figure = figureName(path)
  const [first, second] = [shortForm(path, recorded), shortForm(path, offered)]
  return first === null || second === null || first === second
    ? say("{figure}: two files say otherwise; the first was kept", { figure })
    : say("{figure}: one file says {first}, another {second}; the first was kept", { figure, first, second })
}

function shortForm(path: string, value: unknown): string | null {
  const [, field] = path.split(".")
  if (value === null || value === undefined) return null
  switch (EYE_FIELDS.find((known) => known === field)) {
    case "axialLength":
      return `${written((value as AxialLength).mm)} mm`
    case "refraction":
      return powers(value as Refraction)
    case "spectaclesWorn":
      return powers(value as NonNullable<EyeExamination["spectaclesWorn"]>)
    case "corneaRadius": {
      const { flat, steep } = value as CorneaRadius
      return `${written(flat)} / ${written(steep)} mm`
    }
    case "accommodation":
      return `${written((value as NonNullable<EyeExamination["accommodation"]>).dioptres)} D`
    case "intraocularPressure":
      return `${written((value as NonNullable<EyeExamination["intraocularPressure"]>).mmHg)} mmHg`
    default:
      return null
  }
}

const powers = ({ sphere, cylinder, axis }: Pick<Refraction, "sphere" | "cylinder" | "axis">): string =>
  [
    `${signed(sphere)} D`,
    ...(cylinder ? [`${signed(cylinder)} D${axis === undefined ? "" : ` × ${axis}°`}`] : []),
  ].join(" ")

const signed = (figure: number): string => `${figure > 0 ? "+" : ""}${written(figure)}`
const written = (figure: number): string => withDecimalSign(String(figure).replace("-", "−"))
