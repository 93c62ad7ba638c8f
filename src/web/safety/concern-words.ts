import type { SafetyConcern } from "../../engine/course.js"
import { capitalised, kindInWords } from "../format.js"

const TITLES: Readonly<Record<string, string>> = {
  "red-flag": "Red flag: care on the same day",
  contraindication: "Contraindication while drops are in use",
  "systemic-effects": "Effects outside the eye",
  pupil: "Wide pupil in daylight",
  accommodation: "Low accommodation",
  "near-acuity": "Near acuity has fallen",
  "distance-acuity": "Distance acuity",
  "intraocular-pressure": "Pressure in the eye",
  washout: "Not back after the stop",
}

export const concernTitle = (kind: string): string => TITLES[kind] ?? capitalised(kindInWords(kind))

/** Kinds that can be chosen for what no figure raised. */
export const KINDS_BY_HAND = [
  "light-sensitivity",
  "near-blur",
  "stinging",
  "redness",
  "itching",
  "headache",
  "systemic-effects",
  "allergy",
  "vision",
  "wrong-drops",
  "swallowed-drops",
  "something-else",
] as const

export const SERIOUSNESS_WORDS: readonly (readonly [NonNullable<SafetyConcern["seriousness"]>, string])[] = [
  ["mild", "mild"],
  ["moderate", "moderate"],
  ["serious", "serious"],
]
export const RELATEDNESS_WORDS: readonly (readonly [NonNullable<SafetyConcern["relatedness"]>, string])[] = [
  ["unlikely", "unlikely"],
  ["possible", "possible"],
  ["probable", "probable"],
]
