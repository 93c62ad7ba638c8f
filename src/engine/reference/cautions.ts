import type { Reference } from "../../evidence/types.js"
import type { LengthMethod, Sex } from "../course.js"
import { msg, say } from "../say.js"

/**
 * What must be said beside a position: that it is approximate (grade C), that the reference mixes the sexes, that it was
 * measured by another kind of instrument than the value. Nothing is said of a method that is not known.
 */
export function cautions({
  sex,
  reference,
  method,
  cycloplegic,
}: {
  readonly sex: Sex
  readonly reference: Reference
  readonly method?: LengthMethod | undefined
  readonly cycloplegic?: boolean | undefined
}): readonly string[] {
  const sexesMixed = !reference.rows.some((row) => row.sex === sex)
  // A practice's own words for an instrument are free text, so the kinds are looked for, never assumed.
  const byUltrasound = /ultrasound/i.test(reference.instrument)
  const byOptics = /optical|interferometr|reflectometr/i.test(reference.instrument)
  const withoutCycloplegia = /without cycloplegia|non-?cycloplegic/i.test(reference.instrument)
  const withCycloplegia = !withoutCycloplegia && /cyclopleg/i.test(reference.instrument)
  const all: readonly (readonly [applies: boolean, caution: string])[] = [
    [reference.grade === "C", msg("approximate")],
    [sexesMixed && reference.measure === "axial-length", mixedSexes[sex]],
    [sexesMixed && reference.measure === "spherical-equivalent", msg("the reference mixes the sexes")],
    [byUltrasound && method === "optical-biometry", msg("measured optically, the reference by ultrasound")],
    [byOptics && method === "ultrasound", msg("measured by ultrasound, the reference optically")],
    [withoutCycloplegia && cycloplegic === true, msg("with cycloplegia, the reference without")],
    [withCycloplegia && cycloplegic === false, msg("without cycloplegia, the reference with")],
  ]
  return all.filter(([applies]) => applies).map(([, caution]) => say(caution))
}

const mixedSexes: Readonly<Record<Sex, string>> = {
  female: msg("the reference mixes the sexes: a girl reads too low"),
  male: msg("the reference mixes the sexes: a boy reads too high"),
}
