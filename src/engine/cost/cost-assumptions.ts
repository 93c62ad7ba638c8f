import type { CalendarDate, Treatment } from "../course.js"
import type { FeeOccasion, FeeSchedule } from "../practice-rules.js"
import type { Protocol } from "../protocol/protocol.js"
import { treatmentName } from "../treatment-name.js"
import { counted } from "../words.js"
import type { BottleDays } from "./bottles.js"
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
  const later = schedules
    .filter((one) => one.from > from && one.from <= to)
    .toSorted((a, b) => (a.from < b.from ? -1 : 1))
  const hasDevices = lines.some(({ kind }) => kind === "device")
  const begun = visits.filter(({ hasBegun }) => hasBegun)
  return [
    `${counted(months, "month")}, from ${from} to ${to}.`,
    [
      `Fees by "${schedule.title}", in force from ${schedule.from}`,
      ...later.map((one) => `from ${one.from} by "${one.title}"`),
    ].join("; ") + (later.length > 0 ? "." : "; later changes of fees are not known yet."),
    `Examinations as the protocol "${protocol.title}" plans them, each on its due date; no further visits.`,
    "A measurement without a fee of its own is part of its examination.",
    ...begun.map(({ title }) => `The ${title} has begun: only what is still to be measured is counted.`),
    ...(!isTreated
      ? ["No treatment is begun."]
      : [
          plannedStop === null || plannedStop > to
            ? `Treatment goes on through all of these months, without a change of strength.`
            : `Treatment ends on ${plannedStop}, as planned, without a change of strength; if growth returns and treatment is taken up again, that is not counted.`,
        ]),
    ...bottles.map(
      ({ drops, days, why }) =>
        `One bottle of ${treatmentName(drops)} serves ${drops.eye ? `the ${drops.eye} eye` : "both eyes"} for ${counted(days, "day")} ${why}.`,
    ),
    ...(hasDevices
      ? ["Spectacles and lenses are replaced when their months are over; loss and breakage are not counted."]
      : []),
    "Whether something uncertain is paid for is decided by the insurer.",
  ]
}
