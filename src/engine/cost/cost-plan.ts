import { addMonths } from "../calendar.js"
import type { CalendarDate, Course, Treatment, TreatmentChoice } from "../course.js"
import type { Coverage, Fee, FeeOccasion, FeeSchedule, PracticeRules } from "../practice-rules.js"
import { protocolFor } from "../protocol/choose-protocol.js"
import { chosen } from "../protocol/planned-examinations.js"
import type { Measure, Protocol } from "../protocol/protocol.js"
import { realTreatments } from "../protocol/treatment-course.js"
import { listed, say } from "../say.js"
import { treatmentName } from "../treatment-name.js"
import { bottleDays, bottleStarts, bottlesOf } from "./bottles.js"
import { costAssumptions } from "./cost-assumptions.js"
import { type CoverageTotals, totalsOf } from "./coverage.js"
import { titleInWords } from "./known-titles.js"
import { type PlannedVisit, plannedVisits } from "./planned-visits.js"
import { scheduleOn, whyNotPriced } from "./schedules.js"

/** How far a plan looks ahead: the seven visits of a standard course take 30 months (common practice, no source). */
export const PLAN_MONTHS = 30

export interface CostPlanInput {
  readonly course: Course
  /**
   * The option: this treatment alone from today on, gone on with where it is in use; null for observation without any.
   * The course as it is recorded, with everything in use, when absent.
   */
  readonly treatment?: TreatmentChoice | null | undefined
  readonly rules: Pick<PracticeRules, "feeSchedules" | "pharmacies"> &
    Partial<Pick<PracticeRules, "protocols">>
  /** The one that fits the option when absent. */
  readonly protocol?: Protocol | undefined
  readonly today: CalendarDate
  readonly months?: number | undefined
}

export interface CostLine {
  readonly date: CalendarDate
  readonly kind: FeeOccasion["kind"]
  readonly what: string
  /** Of a bottle: the drops in it. */
  readonly drops?: string | undefined
  /** In the smallest unit of the currency. */
  readonly cents: number
  readonly coverage: Coverage
  /** Id of the fee in the schedule in force on that day. */
  readonly fee: string
}

export interface CostPlan {
  readonly kind: "plan"
  /** The option in words. */
  readonly option: string
  readonly currency: string
  /** The schedule in force today. */
  readonly schedule: { readonly title: string; readonly from: CalendarDate }
  readonly from: CalendarDate
  readonly to: CalendarDate
  readonly months: number
  /** First day without treatment as recorded or planned; null where none is used or no end is in sight. */
  readonly plannedStop: CalendarDate | null
  /** In order of date; on one day the examination first, then what is measured. */
  readonly lines: readonly CostLine[]
  readonly totals: CoverageTotals
  /** What is planned but has no fee in the schedule: not counted, and not free of charge. */
  readonly withoutFee: readonly string[]
  readonly assumptions: readonly string[]
}

export type CostPlanAnswer = CostPlan | { readonly kind: "refused"; readonly why: string }

/**
 * What an option costs in the coming months: examinations and measurements as the protocol plans them, bottles by their
 * days of use, devices by their interval, each by the fee schedule in force on its day. What is covered, uncertain and
 * not covered is kept apart. Refused, with the reason, where no schedule prices these days in one currency.
 *
 * @example
 * costPlan({ course, treatment: { kind: "atropine", concentrationPercent: 0.05 }, rules, protocol, today: "2026-01-10" })
 */
export function costPlan(input: CostPlanInput): CostPlanAnswer {
  const { today, rules, months = PLAN_MONTHS } = input
  if (!Number.isInteger(months) || months < 1)
    throw new RangeError(`months must be a whole number from 1: ${months}`)
  const until = addMonths(today, months)
  const why = whyNotPriced(rules.feeSchedules, { from: today, to: until })
  const schedule = scheduleOn(rules.feeSchedules, today)
  if (why !== null || !schedule) return { kind: "refused", why: why ?? say("No fee schedule is in force.") }

  const { treatment } = input
  const course = treatment === undefined ? input.course : chosen({ course: input.course, treatment, today })
  const protocol = input.protocol ?? protocolFor({ course, today, rules: { protocols: [], ...rules } })
  const { visits, decidedStop } = plannedVisits({ course, protocol, today, until, months })
  const ending = decidedStop !== null && decidedStop < until ? decidedStop : until
  const used = usedTogether(course, { today, ending })
  const plannedStop = decidedStop ?? recordedStop(used)
  const bottles = new Map(
    used
      .filter(({ kind }) => kind === "atropine")
      .map((drops) => [drops, bottleDays({ course, drops, rules, protocol })]),
  )
  const wanted = [
    ...visits.flatMap(visitWants),
    ...used.flatMap((one) => {
      const last = one.to != null && one.to < ending ? one.to : ending
      const bottle = bottles.get(one)
      if (!bottle) return deviceWants({ treatment: one, schedule, today, until: last })
      const starts = bottleStarts({ course, protocol, drops: one, today, until: last, days: bottle.days })
      return starts.map((date) => bottleWant(date, one))
    }),
  ]
  const lines: CostLine[] = []
  const withoutFee: string[] = []
  for (const want of wanted) {
    const { date, kind, what, drops } = want
    const fee = want.feeIn(scheduleOn(rules.feeSchedules, date)?.fees ?? [])
    if (fee)
      lines.push({
        date,
        kind,
        what: what ?? titleInWords(fee.title),
        ...(drops === undefined ? {} : { drops }),
        cents: fee.cents,
        coverage: fee.coverage,
        fee: fee.id,
      })
    // A measurement without a fee of its own is part of its examination.
    else if (kind !== "measure") withoutFee.push(what ?? "")
  }
  const period = { from: today, to: until, months, plannedStop }
  return {
    kind: "plan",
    option: used.length === 0 ? say("observation without treatment") : listed(used.map(treatmentName)),
    currency: schedule.currency,
    schedule: { title: schedule.title, from: schedule.from },
    ...period,
    lines: lines.toSorted(inOrder),
    totals: totalsOf(lines),
    withoutFee: countedWords(withoutFee),
    assumptions: costAssumptions({
      ...period,
      schedule,
      schedules: rules.feeSchedules,
      protocol,
      isTreated: used.length > 0,
      lines,
      visits,
      bottles: [...bottles].map(([drops, bottle]) => ({ ...bottle, drops })),
    }),
  }
}

/** Something that will be needed on a day, and which fee is asked for it. */
interface Want {
  readonly date: CalendarDate
  readonly kind: FeeOccasion["kind"]
  /** What it is; the title of its fee where absent. */
  readonly what?: string
  /** Of a bottle: the drops in it. */
  readonly drops?: string
  readonly feeIn: (fees: readonly Fee[]) => Fee | undefined
}

function visitWants({ date, title, stage, measures, hasBegun }: PlannedVisit): readonly Want[] {
  const examination: Want = {
    date,
    kind: "examination",
    what: titleInWords(title),
    feeIn: (fees) =>
      fees.find(({ charged }) => charged.kind === "examination" && charged.stages.includes(stage)),
  }
  const measured = measures.map(
    (measure): Want => ({ date, kind: "measure", feeIn: (fees) => measureFee(measure, { fees, measures }) }),
  )
  return hasBegun ? measured : [examination, ...measured]
}

/** A refraction with cycloplegia is a refraction: charged as one where it has no fee of its own, and not twice. */
function measureFee(
  measure: Measure,
  { fees, measures }: { readonly fees: readonly Fee[]; readonly measures: readonly Measure[] },
): Fee | undefined {
  const feeOf = (wanted: Measure) =>
    fees.find(({ charged }) => charged.kind === "measure" && charged.measure === wanted)
  const isAlsoPlain = measure === "cycloplegic-refraction" && !measures.includes("refraction")
  return feeOf(measure) ?? (isAlsoPlain ? feeOf("refraction") : undefined)
}

function bottleWant(date: CalendarDate, drops: Treatment): Want {
  const bottles = (fees: readonly Fee[], percent: number | undefined) =>
    fees.find(
      ({ charged }) => charged.kind === "bottle" && (charged.concentrationPercent ?? undefined) === percent,
    )
  const name = treatmentName(drops)
  return {
    date,
    kind: "bottle",
    what: bottlesOf(name, 1),
    drops: name,
    feeIn: (fees) => bottles(fees, drops.concentrationPercent) ?? bottles(fees, undefined),
  }
}

/** Each device at the start of its use and then again after its months, for as long as it is used. */
function deviceWants({
  treatment,
  schedule,
  today,
  until,
}: {
  readonly treatment: Treatment
  readonly schedule: FeeSchedule
  readonly today: CalendarDate
  readonly until: CalendarDate
}): readonly Want[] {
  const { from, kind } = treatment
  const rhythms = schedule.fees.flatMap(({ charged }) =>
    charged.kind === "device" && charged.treatment === kind ? [charged.everyMonths] : [],
  )
  if (rhythms.length === 0) {
    return [{ date: today, kind: "device", what: treatmentName(treatment), feeIn: () => undefined }]
  }
  return rhythms.flatMap((everyMonths) => {
    const wants: Want[] = []
    for (let n = 0; addMonths(from, n * everyMonths) < until; n++) {
      const date = addMonths(from, n * everyMonths)
      if (date < today) continue
      const feeIn = (fees: readonly Fee[]) =>
        fees.find(
          ({ charged }) =>
            charged.kind === "device" && charged.treatment === kind && charged.everyMonths === everyMonths,
        )
      const title = feeIn(schedule.fees)?.title
      const what = title === undefined ? treatmentName(treatment) : titleInWords(title)
      wants.push({ date, kind: "device", what, feeIn })
    }
    return wants
  })
}

/** What is used from today on, entries for the two eyes taken together: one bottle and one pair serve both. */
function usedTogether(
  course: Course,
  { today, ending }: { readonly today: CalendarDate; readonly ending: CalendarDate },
): readonly Treatment[] {
  const byName = new Map<string, Treatment>()
  for (const treatment of realTreatments(course)) {
    if (treatment.from >= ending || (treatment.to != null && treatment.to <= today)) continue
    const before = byName.get(treatmentName(treatment))
    const eye = before?.eye === treatment.eye ? treatment.eye : undefined
    const together = before && { ...before, eye, to: lastEnd(before.to, treatment.to) }
    byName.set(treatmentName(treatment), together ?? treatment)
  }
  return [...byName.values()]
}

/** First day without treatment where every one in use has an end. */
const recordedStop = (used: readonly Treatment[]): CalendarDate | null =>
  used.map(({ to }) => to).reduce<CalendarDate | null | undefined>((a, b) => lastEnd(a, b), used[0]?.to) ??
  null

const lastEnd = (a: CalendarDate | null | undefined, b: CalendarDate | null | undefined) =>
  a == null || b == null ? null : a > b ? a : b

const KINDS: readonly FeeOccasion["kind"][] = ["examination", "measure", "device", "bottle"]

const inOrder = (a: CostLine, b: CostLine) =>
  a.date === b.date ? KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind) : a.date < b.date ? -1 : 1

/** "bottle of atropine 0.05 %" twelve times over becomes one "bottle of atropine 0.05 % (12 times)". */
function countedWords(words: readonly string[]): readonly string[] {
  const counts = new Map<string, number>()
  for (const word of words) counts.set(word, (counts.get(word) ?? 0) + 1)
  return [...counts].map(([what, count]) =>
    count === 1 ? what : say("{what} ({count, plural, one {# time} other {# times}})", { what, count }),
  )
}
