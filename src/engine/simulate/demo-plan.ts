import { addDays, addMonths, calendarDate, dayNumber } from "../calendar.js"
import type { CalendarDate, Consent, Course, Supply, Treatment } from "../course.js"
import { examination, habitsOf, type PlannedVisit } from "./demo-examination.js"
import type { Scenario } from "./demo-scenarios.js"
import type { Random } from "./random.js"

/** An invented town as far north as this; the season of growth depends on it. */
const LATITUDE_DEGREES = 51.5
const DAYS_PER_MONTH = 30.4375

/**
 * A scenario on the calendar, ending today: who came when, what was looked at, which bottles and consents there are.
 * Lengths and refractions are asked for and left at zero; the growth model fills them.
 */
export function demoPlan({
  scenario,
  today,
  random,
}: {
  readonly scenario: Scenario
  readonly today: CalendarDate
  readonly random: Random
}): Course {
  const first = workingDay(addDays(today, -Math.round(scenario.months * DAYS_PER_MONTH)))
  const born = addDays(first, -Math.round(scenario.ageYears * 365.25))
  const reviews = growthVisits({ scenario, first, random })
  const treatments = treatmentsOf({ scenario, first, reviews, random })
  const visits = [...reviews, ...checks({ scenario, treatments, random })]
    .filter(({ month, date }) => date <= today && !scenario.missed.includes(month))
    .toSorted((a, b) => (a.date < b.date ? -1 : 1))
  const supplies = treatments.flatMap((treatment) => bottles({ treatment, scenario, first, today, random }))
  const consents = scenario.noConsent ? [] : treatments.map((treatment) => consentOf(treatment, visits))
  const habits = habitsOf(random)
  return {
    lengthwise: 1,
    child: {
      born,
      sex: scenario.sex === "girl" ? "female" : "male",
      ancestry: scenario.ancestry,
      myopicParents: random.pick([0, 1, 1, 2, 2]),
    },
    practice: { latitude: LATITUDE_DEGREES },
    visits: visits.map((visit) => examination({ visit, born, scenario, treatments, habits, random })),
    ...(treatments.length > 0 ? { treatments } : {}),
    ...(supplies.length > 0 ? { supplies } : {}),
    ...(consents.length > 0 ? { consents } : {}),
  }
}

/** Old glasses, the first full examination and one every 6 months, give or take some days. */
function growthVisits({
  scenario,
  first,
  random,
}: {
  scenario: Scenario
  first: CalendarDate
  random: Random
}): readonly PlannedVisit[] {
  const near = (month: number) => between(addMonths(first, month), { fewest: -8, most: 9 }, random)
  const halfYears = Array.from({ length: Math.floor(scenario.months / 6) + 1 }, (_, i) => 6 * (i + 1))
  return [
    ...scenario.glassesBefore.map((m) => ({ month: -m, date: near(-m), kind: "glasses" as const })),
    { month: 0, date: first, kind: "review" },
    ...halfYears.map((month) => ({ month, date: near(month), kind: "review" as const })),
  ]
}

/** A month after drops were begun or made stronger. */
function checks({
  scenario,
  treatments,
  random,
}: {
  scenario: Scenario
  treatments: readonly Treatment[]
  random: Random
}): readonly PlannedVisit[] {
  return treatments.flatMap(({ kind, from }, index) => {
    if (kind !== "atropine") return []
    const month = (scenario.treatments[index]?.fromMonth ?? 0) + 1
    return [{ month, date: between(addMonths(from, 1), { fewest: -3, most: 6 }, random), kind: "check" }]
  })
}

function between(date: CalendarDate, days: { fewest: number; most: number }, random: Random): CalendarDate {
  const { fewest, most } = days
  return workingDay(addDays(date, Math.round(fewest + (most - fewest) * random.uniform())))
}

/** A practice is closed at the weekend: the Friday before. Day 0 of the calendar was a Thursday. */
function workingDay(date: CalendarDate): CalendarDate {
  const day = dayNumber(date)
  const sinceSaturday = (((day - 2) % 7) + 7) % 7
  return calendarDate(sinceSaturday <= 1 ? day - sinceSaturday - 1 : day)
}

/** Drops and lenses are begun some days after the visit that decided on them; an end is on the day of a visit. */
function treatmentsOf({
  scenario,
  first,
  reviews,
  random,
}: {
  scenario: Scenario
  first: CalendarDate
  reviews: readonly PlannedVisit[]
  random: Random
}): readonly Treatment[] {
  const lagDays = 4 + Math.round(5 * random.uniform())
  const visitAt = (month: number) =>
    reviews.find((visit) => visit.month === month)?.date ?? addMonths(first, month)
  const begins = (month: number) => scenario.treatments.some(({ fromMonth }) => fromMonth === month)
  // Where one strength follows another, the old bottle is used until the new one is there.
  const changeAt = (month: number) => (begins(month) ? addDays(visitAt(month), lagDays) : visitAt(month))
  return scenario.treatments.map(({ kind, concentrationPercent, fromMonth, toMonth }) => ({
    from: changeAt(fromMonth),
    to: toMonth === undefined ? null : changeAt(toMonth),
    kind,
    ...(concentrationPercent === undefined ? {} : { concentrationPercent }),
  }))
}

function consentOf(
  { from, kind, concentrationPercent }: Treatment,
  visits: readonly PlannedVisit[],
): Consent {
  const date = visits.findLast((visit) => visit.date <= from && visit.kind !== "glasses")?.date ?? from
  return {
    date,
    covers: { kind, ...(concentrationPercent === undefined ? {} : { concentrationPercent }) },
  }
}

/** A bottle a month, dispensed some days before it is opened, each good for 30 days. */
function bottles({
  treatment,
  scenario,
  first,
  today,
  random,
}: {
  treatment: Treatment
  scenario: Scenario
  first: CalendarDate
  today: CalendarDate
  random: Random
}): readonly Supply[] {
  const { concentrationPercent, from, to } = treatment
  if (treatment.kind !== "atropine" || concentrationPercent === undefined) return []
  const { bottlesUntilMonth, gapDays } = scenario
  const lapse = Number.isFinite(bottlesUntilMonth) ? addMonths(first, bottlesUntilMonth) : today
  const supplies: Supply[] = []
  let opened = from
  while (opened <= today && opened <= lapse && (to == null || opened < to)) {
    supplies.push({
      dispensed: addDays(opened, -1 - Math.round(2 * random.uniform())),
      opened,
      concentrationPercent,
      volumeMl: 5,
      beyondUse: addDays(opened, 29),
      pharmacy: "Ninth Well Pharmacy",
      lot: `LT${opened.slice(2, 4)}${opened.slice(5, 7)}-${String(Math.ceil(90 * random.uniform())).padStart(2, "0")}`,
    })
    const idle =
      gapDays === 0 ? Math.max(0, Math.round(2 * random.normal())) : gapDays * (0.5 + random.uniform())
    opened = addDays(opened, 30 + Math.round(idle))
  }
  return supplies
}
