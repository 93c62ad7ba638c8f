import type { Problem } from "../problem.js"
import { msg, say } from "../say.js"
import { nightsOfDrops } from "./drop-volume.js"
import { fault } from "./fault.js"

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
  return low === high ? String(low) : say("{low} to {high}", { low, high })
}

const BINDING_WORDS: Readonly<Record<BottlesNeeded["binding"], string>> = {
  "beyond-use": msg(
    "The drops of one bottle last {low} to {high} nights (drop sizes that were measured, nothing spilled); after opening it is used for {days, plural, one {# day} other {# days}} at most: the days of use after opening end it before its drops do.",
  ),
  drops: msg(
    "The drops of one bottle last {low} to {high} nights (drop sizes that were measured, nothing spilled); after opening it is used for {days, plural, one {# day} other {# days}} at most: its drops end before the days of use after opening do.",
  ),
  either: msg(
    "The drops of one bottle last {low} to {high} nights (drop sizes that were measured, nothing spilled); after opening it is used for {days, plural, one {# day} other {# days}} at most: large drops end it early, small ones last to the end of its days of use.",
  ),
}

/** The count and what decides it, in sentences for paper, page and terminal. */
export function bottlesInWords(
  { volumeMl, eyes, nights, daysAfterOpening }: BottlesQuestion,
  { bottles, nightsByDrops, binding }: BottlesNeeded,
): readonly string[] {
  return [
    say(
      "{most, plural, one {# bottle of {volume} mL covers} other {{range} bottles of {volume} mL cover}} {nights, plural, one {# night} other {# nights}} with drops in {eyes, plural, =1 {one eye} other {both eyes}}.",
      { most: bottles.high, range: rangeInWords(bottles), volume: volumeMl, nights, eyes },
    ),
    bottleInWords({ daysAfterOpening }, { nightsByDrops, binding }),
  ]
}

/** How long one bottle serves and what ends it. */
export function bottleInWords(
  { daysAfterOpening }: Pick<BottlesQuestion, "daysAfterOpening">,
  { nightsByDrops, binding }: Pick<BottlesNeeded, "nightsByDrops" | "binding">,
): string {
  return say(BINDING_WORDS[binding], { ...nightsByDrops, days: daysAfterOpening })
}

function questionProblems(question: BottlesQuestion): readonly Problem[] {
  const { volumeMl, eyes, nights, daysAfterOpening, dropsPerNight, nightsPerWeek } = question
  const isCount = (value: number) => Number.isInteger(value) && value >= 1
  const aCount = say("a whole number of at least 1")
  const checks: readonly (readonly [path: string, value: unknown, isSound: boolean, allowed: string])[] = [
    ["volumeMl", volumeMl, Number.isFinite(volumeMl) && volumeMl > 0, say("a number above 0 (mL)")],
    ["eyes", eyes, eyes === 1 || eyes === 2, say("1 or 2")],
    ["nights", nights, isCount(nights), aCount],
    ["daysAfterOpening", daysAfterOpening, isCount(daysAfterOpening), aCount],
    ["dropsPerNight", dropsPerNight, dropsPerNight === undefined || isCount(dropsPerNight), aCount],
    [
      "nightsPerWeek",
      nightsPerWeek,
      nightsPerWeek === undefined || (isCount(nightsPerWeek) && nightsPerWeek <= 7),
      say("a whole number from 1 to 7"),
    ],
  ]
  return checks
    .filter(([, , isSound]) => !isSound)
    .map(([path, value, , allowed]) => fault({ path, value, allowed }))
}

const tooSmall = ({ volumeMl, eyes }: BottlesQuestion): Problem => ({
  path: "volumeMl",
  value: volumeMl,
  allowed: say("enough for at least one night of the largest drops that were measured"),
  message: say(
    "volumeMl must be enough for at least one night of drops in {eyes, plural, =1 {one eye} other {both eyes}}; it is {volume}",
    { eyes, volume: volumeMl },
  ),
})
