import type { Treatment, TreatmentKind } from "./course.js"
import { msg, say, withDecimalSign } from "./say.js"

const NAMES = {
  atropine: msg("atropine"),
  "defocus-spectacles": msg("defocus spectacles"),
  "lenslet-spectacles": msg("lenslet spectacles"),
  "dual-focus-lens": msg("dual-focus lenses"),
  "multifocal-lens": msg("multifocal lenses"),
  orthokeratology: msg("orthokeratology"),
  none: msg("no treatment"),
} as const satisfies Readonly<Record<TreatmentKind, string>>

/**
 * A treatment as a person says it, in the language in force. No two treatments have one name in any language, so that
 * a name also tells them apart; names of different languages are not compared.
 *
 * @example
 * treatmentName({ kind: "atropine", concentrationPercent: 0.05 }) // => "atropine 0.05 %"
 */
export function treatmentName({
  kind,
  concentrationPercent,
}: Pick<Treatment, "kind" | "concentrationPercent">): string {
  const name = say(NAMES[kind])
  if (concentrationPercent === undefined) return name
  return say("{name} {percent} %", { name, percent: withDecimalSign(String(concentrationPercent)) })
}

const IN_THE_PLURAL: readonly TreatmentKind[] = [
  "defocus-spectacles",
  "lenslet-spectacles",
  "dual-focus-lens",
  "multifocal-lens",
]

/**
 * Whether a treatment's name in the language in force takes a verb in the plural: "lenslet spectacles slow", "atropine
 * 0.05 % slows". Of several given together the first is what the verb goes with.
 *
 * @example
 * isPluralName("atropine 0.05 % with lenslet spectacles") // => false
 */
export function isPluralName(name: string): boolean {
  const lower = name.toLowerCase()
  return IN_THE_PLURAL.some((kind) => lower.startsWith(say(NAMES[kind])))
}

/**
 * A treatment with what is special about how it is given.
 *
 * @example
 * prescriptionName({ kind: "atropine", concentrationPercent: 0.05, eye: "right", nightsPerWeek: 3 })
 * // => "atropine 0.05 %, right eye, 3 nights a week"
 */
export function prescriptionName(
  given: Pick<Treatment, "kind" | "concentrationPercent" | "eye" | "nightsPerWeek">,
): string {
  const { eye, nightsPerWeek: nights } = given
  const treatment = treatmentName(given)
  if (nights === undefined) {
    if (eye === undefined) return treatment
    return say("{treatment}, {eye, select, right {right eye} other {left eye}}", { treatment, eye })
  }
  if (eye === undefined)
    return say("{treatment}, {nights, plural, one {# night} other {# nights}} a week", { treatment, nights })
  return say(
    "{treatment}, {eye, select, right {right eye} other {left eye}}, {nights, plural, one {# night} other {# nights}} a week",
    { treatment, eye, nights },
  )
}
