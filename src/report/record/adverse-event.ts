import { addDays, completedMonths, dayNumber } from "../../engine/calendar.js"
import type { CalendarDate, Course, SafetyConcern, Supply, Treatment } from "../../engine/course.js"
import { isInUse, realTreatments } from "../../engine/protocol/treatment-course.js"
import { type AdverseEvent, adverseEvents } from "../../engine/safety/adverse-events.js"

/** An unwanted effect with what a reporter has to say of it beside what the engine keeps. */
export interface ReportedEvent {
  readonly event: AdverseEvent
  readonly concern: SafetyConcern
  readonly ageMonths: number
  /** In use on the day of the effect; else the one that had ended last. */
  readonly suspected: readonly Treatment[]
  readonly wasInUse: boolean
  /** The bottle of the drops in use that day. */
  readonly bottle: Supply | null
  readonly after: readonly AfterEffect[]
}

/** What became of a suspected treatment after the effect: without it (dechallenge), with it again (rechallenge). */
export interface AfterEffect {
  readonly treatment: Treatment
  /** First day without it at that strength; null while it goes on as it was. */
  readonly ended: CalendarDate | null
  readonly daysToEnd: number | null
  /** What of the same kind followed without a day between. */
  readonly changedTo: Treatment | null
  /** The same kind of treatment begun again after a pause. */
  readonly again: Treatment | null
  /** The same kind of concern opened after it was begun again. */
  readonly cameBack: CalendarDate | null
}

/** The concern an index names; the latest that is kept as an unwanted effect where there is none. */
export function concernOf(
  course: Course,
  index: number | undefined,
  today: CalendarDate,
): SafetyConcern | undefined {
  const concerns = course.concerns ?? []
  if (index !== undefined) return concerns[index]
  return concerns
    .filter(({ adverseEvent, opened }) => adverseEvent === true && opened <= today)
    .toSorted((a, b) => (a.opened < b.opened ? -1 : 1))
    .at(-1)
}

export function reportedEvent({
  course,
  concern,
  number,
  today,
}: {
  readonly course: Course
  readonly concern: SafetyConcern
  readonly number: string | null
  readonly today: CalendarDate
}): ReportedEvent {
  const known = upTo(course, today)
  const { suspected, wasInUse, givenOn } = suspectedOn(known, concern.opened)
  const [given] = adverseEvents({
    course: { ...known, concerns: [{ ...concern, opened: givenOn, adverseEvent: true }] },
    child: { number },
  })
  if (!given) throw new RangeError(`no unwanted effect was opened on ${concern.opened}`)
  const event = { ...given, opened: concern.opened }
  return {
    event,
    concern,
    ageMonths: completedMonths({ from: course.child.born, to: concern.opened }),
    suspected,
    wasInUse,
    bottle: bottleOf(known, event),
    after: suspected.map((treatment) => afterEffect({ course: known, treatment, concern })),
  }
}

/** What is known on a day: a treatment planned for later has not been begun. */
const upTo = (course: Course, today: CalendarDate): Course => ({
  ...course,
  treatments: (course.treatments ?? [])
    .filter(({ from }) => from <= today)
    .map(({ to, ...treatment }) => (to == null || to > today ? treatment : { ...treatment, to })),
})

/** What was given on a day; one left off that very day was given until then. Else what had ended last. */
function suspectedOn(course: Course, on: CalendarDate) {
  const treatments = realTreatments(course)
  const inUse = treatments.filter((treatment) => isInUse(treatment, on))
  if (inUse.length > 0) return { suspected: inUse, wasInUse: true, givenOn: on }
  const ended = treatments
    .flatMap((treatment) =>
      treatment.to != null && treatment.to <= on ? [{ treatment, to: treatment.to }] : [],
    )
    .toSorted((a, b) => (a.to < b.to ? -1 : 1))
  const last = ended.at(-1)?.to
  if (last === undefined) return { suspected: [], wasInUse: false, givenOn: on }
  return {
    suspected: ended.filter(({ to }) => to === last).map(({ treatment }) => treatment),
    wasInUse: last === on,
    givenOn: addDays(last, -1),
  }
}

/** The entry of the bottle the event names: the same lot and the same day of opening. */
function bottleOf(course: Course, { bottleOpened, lot }: AdverseEvent): Supply | null {
  if (bottleOpened === null) return null
  return (
    (course.supplies ?? []).find(
      (supply) => supply.opened === bottleOpened && (supply.lot ?? null) === lot,
    ) ?? null
  )
}

function afterEffect({
  course,
  treatment,
  concern,
}: {
  readonly course: Course
  readonly treatment: Treatment
  readonly concern: SafetyConcern
}): AfterEffect {
  const ended = treatment.to ?? null
  const later = realTreatments(course).filter(
    (other) => other.kind === treatment.kind && ended !== null && other.from >= ended,
  )
  const changedTo = later.find(({ from }) => from === ended) ?? null
  const again = changedTo === null ? (later[0] ?? null) : null
  const cameBack =
    again === null
      ? undefined
      : (course.concerns ?? [])
          .filter(({ kind, opened }) => kind === concern.kind && opened >= again.from)
          .map(({ opened }) => opened)
          .toSorted()[0]
  return {
    treatment,
    ended,
    daysToEnd: ended === null ? null : dayNumber(ended) - dayNumber(concern.opened),
    changedTo,
    again,
    cameBack: cameBack ?? null,
  }
}
