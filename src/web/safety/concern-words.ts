import type { SafetyConcern } from "../../engine/course.js"
import { msg, say } from "../../engine/say.js"
import { capitalised, kindInWords } from "../format.js"

const TITLES: Readonly<Record<string, string>> = {
  "red-flag": msg("Red flag: care on the same day"),
  contraindication: msg("Contraindication while drops are in use"),
  "systemic-effects": msg("Effects outside the eye"),
  pupil: msg("Wide pupil in daylight"),
  accommodation: msg("Low accommodation"),
  "near-acuity": msg("Near acuity has fallen"),
  "distance-acuity": msg("Distance acuity"),
  "intraocular-pressure": msg("Pressure in the eye"),
  washout: msg("Not back after the stop"),
  "light-sensitivity": msg("Light sensitivity"),
  "near-blur": msg("Near blur"),
  stinging: msg("Stinging"),
  redness: msg("Redness"),
  itching: msg("Itching"),
  headache: msg("Headache"),
  allergy: msg("Allergy"),
  vision: msg("Vision"),
  "wrong-drops": msg("Wrong drops"),
  "swallowed-drops": msg("Swallowed drops"),
  "something-else": msg("Something else"),
  other: msg("Other|concern"),
}

/** What a concern is about; a kind that a course file brought along stands as it was written. */
export function concernTitle(kind: string): string {
  const title = Object.hasOwn(TITLES, kind) ? TITLES[kind] : undefined
  return title === undefined ? capitalised(kindInWords(kind)) : say(title)
}

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

type Seriousness = NonNullable<SafetyConcern["seriousness"]>
type Relatedness = NonNullable<SafetyConcern["relatedness"]>

const SERIOUSNESS: Readonly<Record<Seriousness, string>> = {
  mild: msg("mild"),
  moderate: msg("moderate"),
  serious: msg("serious"),
}
const RELATEDNESS: Readonly<Record<Relatedness, string>> = {
  unlikely: msg("unlikely"),
  possible: msg("possible"),
  probable: msg("probable"),
}

export const seriousnessOptions = (): readonly (readonly [Seriousness, string])[] => [
  ["mild", say(SERIOUSNESS.mild)],
  ["moderate", say(SERIOUSNESS.moderate)],
  ["serious", say(SERIOUSNESS.serious)],
]
export const relatednessOptions = (): readonly (readonly [Relatedness, string])[] => [
  ["unlikely", say(RELATEDNESS.unlikely)],
  ["possible", say(RELATEDNESS.possible)],
  ["probable", say(RELATEDNESS.probable)],
]

export const seriousnessInWords = (seriousness: Seriousness | null | undefined): string =>
  seriousness == null ? say("seriousness not said") : say(SERIOUSNESS[seriousness])

/** How an unwanted effect hangs together with the treatment, short. */
export const relatednessInWords = (relatedness: Relatedness | null | undefined): string =>
  relatedness == null ? say("cause not said") : say(RELATEDNESS[relatedness])
