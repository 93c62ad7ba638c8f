import type { CalendarDate, Eye } from "../course.js"
import type { Contacts } from "../practice-rules.js"
import { say } from "../say.js"
import { inDigits } from "../words.js"

/** To be filled in by hand. */
export const BLANK = "________"

export interface LabelInput {
  readonly concentrationPercent: number
  readonly volumeMl: number
  readonly isPreserved: boolean
  readonly daysAfterOpening: number
  /** Set where one eye is treated. */
  readonly eye?: Eye | undefined
  /** For a taper; every night when absent. */
  readonly nightsPerWeek?: number | undefined
  /** Without a name a blank is left for it. */
  readonly child?: { readonly name: string | null; readonly born: CalendarDate } | undefined
  /** Null where a blank is left for it. */
  readonly pharmacy?: string | null | undefined
  readonly contacts?: Contacts | undefined
}

/**
 * The words asked for on each bottle, a line at a time; blanks are filled in by hand. The pharmacist's own rules for labels
 * come first. Bedtime, reach of children and the poison centre: evidence clinical/duties.json, CD-065, CD-069, CD-070.
 *
 * @example
 * labelText({ concentrationPercent: 0.01, volumeMl: 5, isPreserved: false, daysAfterOpening: 30 })[0]
 * // => "Atropine sulfate eye drops 0.01 % w/v (0.1 mg in 1 mL), 5 mL"
 */
export function labelText(label: LabelInput): readonly string[] {
  const { concentrationPercent, volumeMl, child, pharmacy, daysAfterOpening } = label
  return [
    say("Atropine sulfate eye drops {percent} % w/v ({milligrams} mg in 1 mL), {volume} mL", {
      percent: inDigits(concentrationPercent),
      milligrams: inDigits(concentrationPercent * 10),
      volume: inDigits(volumeMl),
    }),
    ...(child ? [say("For {name}, born {born}", { name: child.name ?? BLANK, born: child.born })] : []),
    usage(label),
    label.isPreserved ? say("Contains a preservative") : say("Without preservative"),
    say("Lot {blank}  Beyond use {blank}", { blank: BLANK }),
    say("Opened on {blank}  Throw away {days, plural, one {# day} other {# days}} after opening", {
      blank: BLANK,
      days: daysAfterOpening,
    }),
    poison(label.contacts?.poisonCentre),
    ...(pharmacy === undefined ? [] : [say("Made by {pharmacy}", { pharmacy: pharmacy ?? BLANK })]),
  ]
}

function usage({ eye: one, nightsPerWeek: nights }: LabelInput): string {
  const eye = one ?? "each"
  if (nights === undefined)
    return say(
      "One drop in {eye, select, right {the right eye} left {the left eye} other {each eye}} at bedtime. For the eyes only.",
      { eye },
    )
  return say(
    "One drop in {eye, select, right {the right eye} left {the left eye} other {each eye}} at bedtime, {nights, plural, one {# night} other {# nights}} a week. For the eyes only.",
    { eye, nights },
  )
}

const poison = (number: string | undefined): string =>
  number
    ? say("Poisonous when swallowed. Keep out of sight and reach of children. Poison centre: {number}", {
        number,
      })
    : say("Poisonous when swallowed. Keep out of sight and reach of children.")
