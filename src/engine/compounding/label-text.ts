import type { CalendarDate } from "../course.js"
import type { Contacts } from "../practice-rules.js"
import { inDigits } from "../words.js"

export interface LabelInput {
  readonly concentrationPercent: number
  readonly volumeMl: number
  readonly isPreserved: boolean
  readonly daysAfterOpening: number
  readonly eyes: string
  readonly child?: { readonly name: string; readonly born: CalendarDate } | undefined
  readonly pharmacy?: string | undefined
  readonly contacts?: Contacts | undefined
}

/**
 * The words asked for on each bottle, a line at a time; blanks are filled in by hand. The pharmacist's own rules for labels
 * come first. Bedtime, reach of children and the poison centre: evidence clinical/duties.json, CD-065, CD-069, CD-070.
 *
 * @example
 * labelText({ concentrationPercent: 0.01, volumeMl: 5, isPreserved: false, daysAfterOpening: 30, eyes: "each eye" })[0]
 * // => "Atropine sulfate eye drops 0.01 % w/v (0.1 mg in 1 mL), 5 mL"
 */
export function labelText(label: LabelInput): readonly string[] {
  const { concentrationPercent, volumeMl, child, pharmacy, contacts, daysAfterOpening } = label
  const mgPerMl = inDigits(concentrationPercent * 10)
  const poisonCentre = contacts?.poisonCentre
  return [
    `Atropine sulfate eye drops ${inDigits(concentrationPercent)} % w/v (${mgPerMl} mg in 1 mL), ${inDigits(volumeMl)} mL`,
    ...(child ? [`For ${child.name}, born ${child.born}`] : []),
    `One drop in ${label.eyes} at bedtime. For the eyes only.`,
    label.isPreserved ? "Contains a preservative" : "Without preservative",
    "Lot ________  Beyond use ________",
    `Opened on ________  Throw away ${daysAfterOpening} days after opening`,
    `Poisonous when swallowed. Keep out of sight and reach of children.${poisonCentre ? ` Poison centre: ${poisonCentre}` : ""}`,
    ...(pharmacy ? [`Made by ${pharmacy}`] : []),
  ]
}
