import type { Problem } from "../problem.js"
import { nightsOfDrops } from "./drop-volume.js"

/** Days of use of an opened bottle without preservative: thrown away after a month. Common practice, no source. */
export const USUAL_DAYS_AFTER_OPENING = 30

export interface BottlesQuestion {
  readonly volumeMl: number
  readonly eyes: 1 | 2
  /** Nights of the calendar to be covered. */
  readonly nights: number
  /** Nights an opened bottle may be used, as the pharmacy states them. */
  readonly daysAfterOpening: number
  /** Drops an eye gets on a night of treatment; one when absent. */
  readonly dropsPerNight?: number | undefined
  /** For a taper; every night when absent. */
  readonly nightsPerWeek?: number | undefined
}

interface Range {
  readonly low: number
  readonly high: number
}

export interface BottlesNeeded {
  readonly kind: "needed"
  /** Nights of the calendar until the drops of one bottle are used up. */
  readonly nightsByDrops: Range
  readonly nightsByBeyondUse: number
  /** The shorter of the two, which is how long a bottle serves. */
  readonly nightsPerBottle: Range
  /** What ends a bottle: its date, its drops, or either, depending on the size of the drops. */
  readonly binding: "beyond-use" | "drops" | "either"
  /** Bottles for the span; `high` is enough whatever the size of the drops. */
  readonly bottles: Range
}

/**
 * How many bottles a span needs: each lasts until its drops are used up or its days after opening are over, whichever
 * comes first. The range is that of the drop sizes that were measured; nothing is added for drops that miss the eye.
 *
 * @example
 * bottlesNeeded({ volumeMl: 5, eyes: 2, nights: 730, daysAfterOpening: 30 }) // => 25 bottles, bound by beyond-use
 */
export function bottlesNeeded(
  question: BottlesQuestion,
): BottlesNeeded | { readonly kind: "refused"; readonly problems: readonly Problem[] } {
  const problems = questionProblems(question)
  if (problems.length > 0) return { kind: "refused", problems }
  const { volumeMl, eyes, nights, daysAfterOpening, dropsPerNight = 1, nightsPerWeek = 7 } = question
  const treated = nightsOfDrops({ volumeMl, dropsANight: eyes * dropsPerNight })
  const calendarNights = (nightsTreated: number) => Math.floor((nightsTreated * 7) / nightsPerWeek + 1e-9)
  const nightsByDrops = { low: calendarNights(treated.low), high: calendarNights(treated.high) }
  if (nightsByDrops.low < 1) return { kind: "refused", problems: [tooSmall(question)] }
  const nightsPerBottle = {
    low: Math.min(nightsByDrops.low, daysAfterOpening),
    high: Math.min(nightsByDrops.high, daysAfterOpening),
  }
  return {
    kind: "needed",
    nightsByDrops,
    nightsByBeyondUse: daysAfterOpening,
    nightsPerBottle,
    binding:
      daysAfterOpening <= nightsByDrops.low
        ? "beyond-use"
        : daysAfterOpening >= nightsByDrops.high
          ? "drops"
          : "either",
    bottles: {
      low: Math.ceil(nights / nightsPerBottle.high),
      high: Math.ceil(nights / nightsPerBottle.low),
    },
  }
}

/** "25", or "3 to 4" where the size of the drops decides. */
export function rangeInWords({ low, high }: Range): string {
  return low === high ? String(low) : `${low} to ${high}`
}

const BINDING_WORDS: Readonly<Record<BottlesNeeded["binding"], string>> = {
  "beyond-use": "the days of use after opening end it before its drops do",
  drops: "its drops end before the days of use after opening do",
  either: "large drops end it early, small ones last to the end of its days of use",
}

/** The count and what decides it, in sentences for paper, page and terminal. */
export function bottlesInWords(
  { volumeMl, eyes, nights, daysAfterOpening }: BottlesQuestion,
  { bottles, nightsByDrops, binding }: BottlesNeeded,
): readonly string[] {
  return [
    `${rangeInWords(bottles)} bottles of ${volumeMl} mL cover ${nights} nights with drops in ${eyes === 1 ? "one eye" : "both eyes"}.`,
    bottleInWords({ daysAfterOpening }, { nightsByDrops, binding }),
  ]
}

/** How long one bottle serves and what ends it. */
export function bottleInWords(
  { daysAfterOpening }: Pick<BottlesQuestion, "daysAfterOpening">,
  { nightsByDrops, binding }: Pick<BottlesNeeded, "nightsByDrops" | "binding">,
): string {
  return `The drops of one bottle last ${nightsByDrops.low} to ${nightsByDrops.high} nights (drop sizes that were measured, nothing spilled); after opening it is used for ${daysAfterOpening} days at most: ${BINDING_WORDS[binding]}.`
}

function questionProblems(question: BottlesQuestion): readonly Problem[] {
  const { volumeMl, eyes, nights, daysAfterOpening, dropsPerNight, nightsPerWeek } = question
  const isCount = (value: number) => Number.isInteger(value) && value >= 1
  const checks: readonly (readonly [path: string, value: unknown, isSound: boolean, allowed: string])[] = [
    ["volumeMl", volumeMl, Number.isFinite(volumeMl) && volumeMl > 0, "a number above 0 (mL)"],
    ["eyes", eyes, eyes === 1 || eyes === 2, "1 or 2"],
    ["nights", nights, isCount(nights), "a whole number of at least 1"],
    ["daysAfterOpening", daysAfterOpening, isCount(daysAfterOpening), "a whole number of at least 1"],
    [
      "dropsPerNight",
      dropsPerNight,
      dropsPerNight === undefined || isCount(dropsPerNight),
      "a whole number of at least 1",
    ],
    [
      "nightsPerWeek",
      nightsPerWeek,
      nightsPerWeek === undefined || (isCount(nightsPerWeek) && nightsPerWeek <= 7),
      "a whole number from 1 to 7",
    ],
  ]
  return checks
    .filter(([, , isSound]) => !isSound)
    .map(([path, value, , allowed]) => ({
      path,
      value,
      allowed,
      message: `${path} must be ${allowed}; it is ${value}`,
    }))
}

const tooSmall = ({ volumeMl, eyes }: BottlesQuestion): Problem => ({
  path: "volumeMl",
  value: volumeMl,
  allowed: "enough for at least one night of the largest drops that were measured",
  message: `volumeMl must be enough for at least one night of drops in ${eyes === 1 ? "one eye" : "both eyes"}; it is ${volumeMl}`,
})
