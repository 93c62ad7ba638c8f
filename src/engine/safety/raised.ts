import type { CalendarDate, Course } from "../course.js"
import { seenHere } from "../protocol/measured.js"
import type { Protocol } from "../protocol/protocol.js"
import { standardProtocol } from "../protocol/standard.js"
import { currentTreatmentCourse, type TreatmentCourse } from "../protocol/treatment-course.js"
import { comfortConcerns, symptomConcerns } from "./comfort-concerns.js"
import { type ComfortLimits, usualComfortLimits } from "./comfort-limits.js"
import { visitsBeforeDrops } from "./compared.js"
import { contraindications } from "./contraindications.js"
import type { RaisedConcern } from "./raised-concern.js"
import { redFlags } from "./red-flags.js"
import { type Switches, switchedConcerns } from "./switched-concerns.js"
import { systemicConcerns } from "./systemic.js"

export interface ConcernsInput {
  readonly course: Course
  readonly today: CalendarDate
  /** Says how long a gap in treatment may be before what follows is a new course. */
  readonly protocol?: Pick<Protocol, "longestPauseDays"> | undefined
  /** Duties the practice has turned on or off (`rules.examinationSwitches`). */
  readonly switches?: Switches | undefined
  readonly limits?: ComfortLimits | undefined
}

/**
 * What the record raises about a child's safety, each with its figures and dates: red flags of any visit first, then what
 * the latest visit says of how the treatment is borne.
 *
 * Symptoms and answers of any child; pupil, accommodation and near acuity once atropine was begun, against the last
 * measurement of the same eye on or before the day it was begun. Empty is not proof of safety: what was not measured
 * raises no concern.
 */
export function raisedConcerns({
  course,
  today,
  protocol = standardProtocol,
  switches = {},
  limits = usualComfortLimits,
}: ConcernsInput): readonly RaisedConcern[] {
  const flags = redFlags({ course, today })
  const visits = course.visits
    .filter((visit) => visit.date <= today && seenHere(visit))
    .toSorted((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
  const visit = visits.at(-1)
  if (!visit) return flags
  const drops = dropsOf({ course, today, protocol })
  const before = drops ? visitsBeforeDrops({ course, begun: drops.begun }) : []
  const looked = { visit, before, limits }
  const isAfterStart = drops !== null && visit.date > drops.begun
  return [
    ...flags,
    ...contraindications({ course, today }),
    ...systemicConcerns(visit),
    ...symptomConcerns(looked),
    ...(isAfterStart ? comfortConcerns(looked) : []),
    ...switchedConcerns({ ...looked, stopped: isAfterStart ? drops.stopped : null, switches }),
  ]
}

/** First day of atropine in the current course, and the first day after all of it. */
export function dropsOf({
  course,
  today,
  protocol,
}: {
  readonly course: Course
  readonly today: CalendarDate
  readonly protocol: Pick<Protocol, "longestPauseDays">
}): { readonly begun: CalendarDate; readonly stopped: CalendarDate | null } | null {
  const { longestPauseDays } = protocol
  const current = currentTreatmentCourse({ course, today, longestPauseDays })
  const drops = current?.treatments.filter(({ kind }) => kind === "atropine") ?? []
  const begun = drops[0]?.from
  if (begun === undefined || begun > today) return null
  return { begun, stopped: lastDayOf(drops) }
}

function lastDayOf(drops: TreatmentCourse["treatments"]): CalendarDate | null {
  const ends = drops.map(({ to }) => to ?? null)
  return ends.includes(null) ? null : (ends.toSorted().at(-1) ?? null)
}
