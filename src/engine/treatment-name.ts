import type { Treatment, TreatmentKind } from "./course.js"
import { counted } from "./words.js"

const NAMES: Readonly<Record<TreatmentKind, string>> = {
  atropine: "atropine",
  "defocus-spectacles": "defocus spectacles",
  "lenslet-spectacles": "lenslet spectacles",
  "dual-focus-lens": "dual-focus lenses",
  "multifocal-lens": "multifocal lenses",
  orthokeratology: "orthokeratology",
  none: "no treatment",
}

/**
 * A treatment as a person says it.
 *
 * @example
 * treatmentName({ kind: "atropine", concentrationPercent: 0.05 }) // => "atropine 0.05 %"
 */
export function treatmentName({
  kind,
  concentrationPercent,
}: Pick<Treatment, "kind" | "concentrationPercent">): string {
  return concentrationPercent === undefined ? NAMES[kind] : `${NAMES[kind]} ${concentrationPercent} %`
}

/**
 * Whether a treatment's name takes a verb in the plural: "lenslet spectacles slow", "atropine 0.05 % slows". Of several
 * given together the first is what the verb goes with.
 *
 * @example
 * isPluralName("atropine 0.05 % with lenslet spectacles") // => false
 */
export const isPluralName = (name: string): boolean =>
  /(spectacles|lenses)$/.test((name.split(" with ")[0] ?? name).replace(/ in the (right|left) eye$/, ""))

/**
 * A treatment with what is special about how it is given.
 *
 * @example
 * prescriptionName({ kind: "atropine", concentrationPercent: 0.05, eye: "right", nightsPerWeek: 3 })
 * // => "atropine 0.05 %, right eye, 3 nights a week"
 */
export function prescriptionName(
  treatment: Pick<Treatment, "kind" | "concentrationPercent" | "eye" | "nightsPerWeek">,
): string {
  const { eye, nightsPerWeek } = treatment
  return [
    treatmentName(treatment),
    ...(eye === undefined ? [] : [`${eye} eye`]),
    ...(nightsPerWeek === undefined ? [] : [`${counted(nightsPerWeek, "night")} a week`]),
  ].join(", ")
}
