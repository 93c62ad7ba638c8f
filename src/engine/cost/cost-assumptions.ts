import type { CalendarDate, Treatment } from "../course.js"
import type { FeeOccasion, FeeSchedule } from "../practice-rules.js"
import type { Protocol } from "../protocol/protocol.js"
import { say } from "../say.js"
import { treatmentName } from "../treatment-name.js"
import { inDigits } from "../words.js"
import type { BottleDays } from "./bottles.js"
import { titleInWords } from "./known-titles.js"
import type { PlannedVisit } from "./planned-visits.js"

/** What a plan takes for granted, in sentences: whoever pays should be able to say where it will not hold. */
export function costAssumptions({
  from,
  to,
  months,
  schedules,
  schedule,
  protocol,
  plannedStop,
  isTreated,
  lines,
  visits,
  bottles,
}: {
  readonly from: CalendarDate
  readonly to: CalendarDate
  readonly months: number
  readonly schedules: readonly FeeSchedule[]
  /** The one in force on the first day. */
  readonly schedule: FeeSchedule
  readonly protocol: Protocol
  readonly plannedStop: CalendarDate | null
  readonly isTreated: boolean
  readonly lines: readonly { readonly kind: FeeOccasion["kind"] }[]
  readonly visits: readonly PlannedVisit[]
  readonly bottles: readonly (BottleDays & { readonly drops: Treatment })[]
}): readonly string[] {
  const hasDevices = lines.some(({ kind }) => kind === "device")
  const begun = visits.filter(({ hasBegun }) => hasBegun)
  return [
    say("{months, plural, one {# month} other {# months}}, from {from} to {to}.", { months, from, to }),
    feesInForce({ schedule, schedules, to }),
    say('Examinations as the protocol "{title}" plans them, each on its due date; no further visits.', {
      title: titleInWords(protocol.title),
    }),
    say("A measurement without a fee of its own is part of its examination."),
    ...begun.map(({ title }) =>
      say("The {visit} has begun: only what is still to be measured is counted.", {
        visit: titleInWords(title),
      }),
    ),
    isTreated
      ? goingOnUntil(plannedStop === null || plannedStop > to ? null : plannedStop)
      : say("No treatment is begun."),
    ...bottles.map(bottleLasts),
    ...(hasDevices
      ? [
          say(
            "Spectacles and lenses are replaced when their months are over; loss and breakage are not counted.",
          ),
        ]
      : []),
    say("Whether something uncertain is paid for is decided by the insurer."),
  ]
}

function feesInForce({
  schedule,
  schedules,
  to,
}: {
  readonly schedule: FeeSchedule
  readonly schedules: readonly FeeSchedule[]
  readonly to: CalendarDate
}): string {
  const later = schedules
    .filter((one) => one.from > schedule.from && one.from <= to)
    .toSorted((a, b) => (a.from < b.from ? -1 : 1))
    .map((one) => say('from {day} by "{title}"', named(one)))
  if (later.length === 0) {
    return say(
      'Fees by "{title}", in force from {day}; later changes of fees are not known yet.',
      named(schedule),
    )
  }
  const changes = later.reduce((before, next) => say("{before}; {next}", { before, next }))
  return say('Fees by "{title}", in force from {day}; {changes}.', { ...named(schedule), changes })
}

const named = ({ title, from }: FeeSchedule) => ({ title: titleInWords(title), day: from })

const goingOnUntil = (stop: CalendarDate | null): string =>
  stop === null
    ? say("Treatment goes on through all of these months, without a change of strength.")
    : say(
        "Treatment ends on {day}, as planned, without a change of strength; if growth returns and treatment is taken up again, that is not counted.",
        { day: stop },
      )

function bottleLasts({ drops, days, by }: BottleDays & { readonly drops: Treatment }): string {
  const values = { drops: treatmentName(drops), eye: drops.eye ?? "both", days }
  switch (by.kind) {
    case "protocol":
      return say(
        'One bottle of {drops} serves {eye, select, right {the right eye} left {the left eye} other {both eyes}} for {days, plural, one {# day} other {# days}} after opening, as stated by the protocol "{title}".',
        { ...values, title: titleInWords(by.title) },
      )
    case "pharmacy":
      return say(
        "One bottle of {drops} serves {eye, select, right {the right eye} left {the left eye} other {both eyes}} for {days, plural, one {# day} other {# days}} after opening, as stated by the pharmacy {name}.",
        { ...values, name: by.name },
      )
    case "volume":
      return say(
        "One bottle of {drops} serves {eye, select, right {the right eye} left {the left eye} other {both eyes}} for {days, plural, one {# day} other {# days}} until {ml} mL of large drops are used up.",
        { ...values, ml: inDigits(by.bottleMl) },
      )
  }
}
