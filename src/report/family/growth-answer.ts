import type { KnownGrowthState } from "../../engine/assessment.js"
import { yearsBetween } from "../../engine/calendar.js"
import type { CalendarDate, Eye } from "../../engine/course.js"
import type { FamilyReading } from "./family-reading.js"

/** What there is to say of the growth: one of the states, or why there is none. */
export const GROWTH_ANSWERS = [
  "near-normal",
  "slowed-growth",
  "as-untreated",
  "faster",
  "unsure",
  "too-early",
  "ending",
  "in-doubt",
  "not-myopic",
  "once",
  "never",
  "outside-ages",
] as const
export type GrowthAnswer = (typeof GROWTH_ANSWERS)[number]

/** What the eyes had while they grew as they did. */
export type Care = "treated" | "stopped" | "untreated"

/** Growth of the window that the answer is about, in mm over its dates; never per year. */
export interface GrownMm {
  readonly from: CalendarDate
  readonly to: CalendarDate
  readonly months: number
  readonly mm: number
  readonly low95: number
  readonly high95: number
  /** Over the same dates; absent for a child who is not myopic. */
  readonly naturalMm?: number
  readonly emmetropicMm: number
  /** Set where the figure is of one eye only. */
  readonly eye?: Eye
}

const MONTHS_PER_YEAR = 12
/** As in the engine: from here on a gap too small to tell means that growth is ending. */
const ENDING_AGE_YEARS = 14

/** Growth over the window, or null where no growth is told: too few lengths, or one of them in doubt. */
export function grownMm({ assessment: { growth }, isInDoubt }: FamilyReading): GrownMm | null {
  const { mmPerYear, low95, high95, naturalMmPerYear, emmetropicMmPerYear, from, to, eye } = growth
  if (isInDoubt || mmPerYear === null || from === undefined || to === undefined) return null
  if (low95 === undefined || high95 === undefined || emmetropicMmPerYear === undefined) return null
  const years = yearsBetween({ from, to })
  return {
    from,
    to,
    months: Math.max(1, Math.round(MONTHS_PER_YEAR * years)),
    mm: mmPerYear * years,
    low95: low95 * years,
    high95: high95 * years,
    ...(naturalMmPerYear === undefined ? {} : { naturalMm: naturalMmPerYear * years }),
    emmetropicMm: emmetropicMmPerYear * years,
    ...(eye === undefined ? {} : { eye }),
  }
}

export function growthAnswer(reading: FamilyReading): GrowthAnswer {
  const { assessment, isInDoubt, myopia, lengths } = reading
  const { growth } = assessment
  if (isInDoubt) return "in-doubt"
  if (myopia === "not-myopic") return "not-myopic"
  if (lengths.length === 0) return "never"
  if (assessment.refused !== undefined) return isMeasuredTwice(reading) ? "outside-ages" : "once"
  if (growth.mmPerYear === null) return "once"
  if (growth.state !== "unclear") return growth.state
  const grown = grownMm(reading)
  if (grown === null || !isGapTooSmall(reading, grown)) return "unsure"
  return ageAtEnd(reading, grown) >= ENDING_AGE_YEARS ? "ending" : "too-early"
}

const isMeasuredTwice = ({ lengths }: FamilyReading): boolean =>
  lengths.some(({ eye, date }) => lengths.some((other) => other.eye === eye && other.date < date))

/** Usual growth with and without myopia lie closer than the instrument can tell apart over these dates. */
function isGapTooSmall({ assessment, lengths }: FamilyReading, grown: GrownMm): boolean {
  const asked = grown.eye ?? (lengths.some(({ eye }) => eye === "right") ? "right" : "left")
  const eyes = assessment.eyes
  const detectable = (eyes[asked].rate === null ? eyes.left : eyes[asked]).detectableChangeMm
  return detectable !== null && (grown.naturalMm ?? grown.emmetropicMm) - grown.emmetropicMm < detectable
}

const ageAtEnd = ({ lengths }: FamilyReading, { to }: GrownMm): number =>
  lengths.findLast(({ date }) => date === to)?.ageYears ?? 0

/** What was given while the eyes grew so: over the window of growth, or now where none is told. */
export function careOf(reading: FamilyReading): Care {
  const { everTreated, today } = reading
  const { from = today, to = today } = reading.assessment.growth
  const isDuring = everTreated.some(
    (treatment) =>
      (treatment.from < to || (from === to && treatment.from <= to)) &&
      (treatment.to == null || treatment.to > from),
  )
  if (isDuring) return "treated"
  return everTreated.some((treatment) => treatment.to != null && treatment.to <= from)
    ? "stopped"
    : "untreated"
}

/** Two neighbouring states that together are certain enough, where neither is alone. */
export function sureOfTwo({
  assessment: { growth },
  input: { settings },
}: FamilyReading): "slower" | "not-faster" | "not-slower" | null {
  const { probabilities } = growth
  if (growth.state !== "unclear" || probabilities === null) return null
  const pairs = [
    ["slower", "near-normal", "slowed-growth"],
    ["not-faster", "slowed-growth", "as-untreated"],
    ["not-slower", "as-untreated", "faster"],
  ] as const satisfies readonly (readonly [string, KnownGrowthState, KnownGrowthState])[]
  const best = pairs
    .map(([name, one, other]) => ({ name, share: probabilities[one] + probabilities[other] }))
    .sort((a, b) => b.share - a.share)[0]
  return best && best.share >= settings.certainty ? best.name : null
}
