import type { DutyState } from "../assessment.js"
import { addDays } from "../calendar.js"
import type { CalendarDate, Course, Eye } from "../course.js"
import type { Pharmacy } from "../practice-rules.js"
import type { Protocol } from "../protocol/protocol.js"
import { dropsOfEyes, lastDayOfSupply, situationOn } from "../protocol/situation.js"
import { say } from "../say.js"
import { prescriptionName, treatmentName } from "../treatment-name.js"
import { type Bottle, type BottleFault, bottleFaults, bottlesOn } from "./bottles.js"
import { nightRuns, type PrescribedNights, prescribedNights, type Run } from "./covered-days.js"
import { PDC_DEFINITION, POOR_COVERAGE } from "./definition.js"
import { type LeadTime, leadTime } from "./lead-time.js"
import { missedNightsTold, sharesWithDrop } from "./missed-nights.js"

export interface SupplyInput {
  readonly course: Course
  readonly asOf: CalendarDate
  readonly protocol: Protocol
  readonly pharmacies?: readonly Pharmacy[] | undefined
}

/** Coverage of one prescription, or of all of them. */
export interface Coverage {
  readonly daysPrescribed: number
  readonly daysCovered: number
  /** By the bottles alone, as `definition` says; null where no bottle is recorded. */
  readonly proportionOfDaysCovered: number | null
  /** The same with the missed nights that the family told of taken off: what the growth model counts. */
  readonly proportionWithDrop: number | null
}

export interface PrescriptionCoverage extends Coverage {
  /** In words, e.g. "atropine 0.05 %". */
  readonly treatment: string
  /** With what is special about it, e.g. "atropine 0.05 %, right eye, 3 nights a week". */
  readonly prescription: string
  readonly eye: Eye | null
  readonly from: CalendarDate
  /** First day no longer prescribed; null while it goes on. */
  readonly to: CalendarDate | null
  readonly nightsPerWeek: number | null
}

export interface Gap {
  readonly from: CalendarDate
  /** Last night of it, included. */
  readonly to: CalendarDate
  readonly nights: number
}

export interface NextBottle {
  readonly treatment: string
  readonly state: Extract<DutyState, "open" | "overdue" | "upcoming">
  /** Day by which it has to be asked for, so that it comes in time. */
  readonly orderBy: CalendarDate
  /** Last day that the bottles in hand cover; the first day of the treatment where there is none. */
  readonly due: CalendarDate
  readonly lead: LeadTime
}

/** Bottles and nights of one child's drops as of a day. */
export interface SupplyReport extends Coverage {
  readonly asOf: CalendarDate
  /** What the proportion of days covered means here. */
  readonly definition: string
  readonly poorBelow: number
  /** Null where no proportion is known. */
  readonly isPoor: boolean | null
  /** First and last night counted; null where no drops were prescribed. */
  readonly window: { readonly from: CalendarDate; readonly to: CalendarDate } | null
  readonly prescriptions: readonly PrescriptionCoverage[]
  readonly gaps: readonly Gap[]
  readonly nightsReportedMissed: number
  readonly nextBottles: readonly NextBottle[]
  readonly bottles: readonly Bottle[]
  readonly faults: readonly BottleFault[]
  /** Every night of the window, in runs. */
  readonly nights: readonly Run[]
}

/**
 * Which nights had a bottle in date, which had none, how well the prescription was covered, and the next bottle.
 *
 * A prescription of whose strength no bottle is recorded tells nothing and is left out of the whole.
 *
 * @example
 * supplyReport({ course, asOf: "2025-07-01", protocol: standardProtocol }).proportionOfDaysCovered // => 0.83
 */
export function supplyReport(input: SupplyInput): SupplyReport {
  const { course, asOf } = input
  const prescriptions = prescribedNights(course, asOf)
  const withDrop = sharesWithDrop({ course, asOf, prescriptions }).map(sumOf)
  const told = missedNightsTold(course, asOf)
  const nights = prescriptions.length === 0 ? [] : nightRuns(prescriptions)
  const bottles = bottlesOn(course, asOf)
  const whole = wholeOf({ prescriptions, withDrop, nights, isTold: told.length > 0 })
  const share = whole.proportionWithDrop ?? whole.proportionOfDaysCovered
  const [first, last] = [nights[0], nights.at(-1)]
  return {
    asOf,
    definition: say(PDC_DEFINITION),
    poorBelow: POOR_COVERAGE,
    isPoor: share === null ? null : share < POOR_COVERAGE,
    window: first && last ? { from: first.from, to: last.to } : null,
    ...whole,
    prescriptions: prescriptions.map((one, i) => ({
      treatment: treatmentName(one.drops),
      prescription: prescriptionName(one.drops),
      eye: one.drops.eye ?? null,
      from: one.drops.from,
      to: one.drops.to ?? null,
      nightsPerWeek: one.drops.nightsPerWeek ?? null,
      ...coverageOf({
        prescribed: one.end - one.from,
        covered: one.covered?.filter(Boolean).length ?? null,
        withDrop: one.covered === null && told.length === 0 ? null : (withDrop[i] as number),
      }),
    })),
    gaps: nights
      .filter(({ state }) => state === "not-covered")
      .map(({ from, to, nights: count }) => ({ from, to, nights: count })),
    nightsReportedMissed: told.reduce((sum, { nights: count }) => sum + count, 0),
    nextBottles: nextBottles(input),
    bottles,
    faults: bottleFaults(course, { bottles, asOf }),
    nights,
  }
}

const sumOf = (shares: readonly number[]): number => shares.reduce((sum, share) => sum + share, 0)

function coverageOf(input: {
  readonly prescribed: number
  readonly covered: number | null
  readonly withDrop: number | null
}): Coverage {
  const { prescribed, covered, withDrop } = input
  const share = (nights: number | null) => (nights === null || prescribed === 0 ? null : nights / prescribed)
  return {
    daysPrescribed: prescribed,
    daysCovered: covered ?? 0,
    proportionOfDaysCovered: share(covered),
    proportionWithDrop: share(withDrop),
  }
}

/** Days that two prescriptions share (one for each eye, or entered twice) count once. */
function wholeOf({
  prescriptions,
  withDrop,
  nights,
  isTold,
}: {
  readonly prescriptions: readonly PrescribedNights[]
  readonly withDrop: readonly number[]
  readonly nights: readonly Run[]
  readonly isTold: boolean
}): Coverage {
  const count = (...states: readonly Run["state"][]) =>
    nights.filter(({ state }) => states.includes(state)).reduce((sum, run) => sum + run.nights, 0)
  const covered = count("covered")
  const prescribed = covered + count("not-covered")
  const isRecorded = prescribed > 0
  if (!isRecorded) {
    const days = count("not-recorded")
    const none = { prescribed: days, covered: null, withDrop: null }
    return coverageOf(isTold ? { ...none, withDrop: shareOf(prescriptions, withDrop) * days } : none)
  }
  const known = prescriptions.flatMap((one, i) => (one.covered === null ? [] : [i]))
  const bottleNights = known.reduce(
    (sum, i) => sum + (prescriptions[i]?.covered?.filter(Boolean).length ?? 0),
    0,
  )
  const kept =
    bottleNights === 0 ? 1 : known.reduce((sum, i) => sum + (withDrop[i] as number), 0) / bottleNights
  return coverageOf({ prescribed, covered, withDrop: covered * kept })
}

function shareOf(prescriptions: readonly PrescribedNights[], withDrop: readonly number[]): number {
  const all = prescriptions.reduce((sum, { from, end }) => sum + end - from, 0)
  return all === 0 ? 1 : withDrop.reduce((sum, nights) => sum + nights, 0) / all
}

function nextBottles({ course, asOf, protocol, pharmacies = [] }: SupplyInput): readonly NextBottle[] {
  const situation = situationOn({ course, protocol, today: asOf, pharmacies })
  return dropsOfEyes(situation).flatMap((drops): NextBottle[] => {
    const last = lastDayOfSupply(situation, drops)
    if (last !== undefined && drops.to != null && drops.to <= addDays(last, 1)) return []
    const lead = leadTime({ supplies: situation.course.supplies ?? [], drops, pharmacies, protocol })
    const due = last === undefined || last < drops.from ? drops.from : last
    const orderBy = addDays(due, -lead.days)
    const state = asOf > due ? "overdue" : asOf >= orderBy ? "open" : "upcoming"
    return [{ treatment: treatmentName(drops), state, orderBy, due, lead }]
  })
}
