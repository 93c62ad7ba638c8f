import type { CalendarDate, SafetyConcern } from "../course.js"
import { type ConcernsInput, raisedConcerns } from "./raised.js"
import { type RaisedConcern, RED_FLAG } from "./raised-concern.js"

/** Something about a child's safety that is not settled: raised by the figures, kept as a record, or both. */
export interface OpenConcern {
  /** The kind it is recorded under: red-flag, pupil, light-sensitivity ... */
  readonly kind: string
  readonly isRedFlag: boolean
  /** Day of the visit that raised it, or the day its record was opened when that came first. */
  readonly since: CalendarDate
  /** In words, with figures: what raised it, else what was recorded. */
  readonly what: string
  /** What in the figures raises it now; empty for one that only a record holds. */
  readonly raised: readonly RaisedConcern[]
  /** Null while nobody has taken it up. */
  readonly recorded: SafetyConcern | null
  readonly owner: string | null
}

/**
 * Everything unsettled about a child's safety, once each, red flags first, then the oldest.
 *
 * A record of the same kind stands for what the figures raise when it is still open, or was closed on or after the day of
 * the visit that raised it. A red flag is stood for by a record of its own day only.
 *
 * @example
 * openConcerns({ course, today, protocol, switches: rules.examinationSwitches })
 */
export function openConcerns(input: ConcernsInput): readonly OpenConcern[] {
  const { course, today } = input
  const recorded = (course.concerns ?? []).filter(({ opened }) => opened <= today)
  const isOpen = ({ closed }: SafetyConcern) => closed === undefined || closed > today
  const raised = grouped(raisedConcerns(input))
  const unsettled = raised.filter(
    (group) =>
      !recorded.some((record) => !isOpen(record) && isOf(record, group[0]) && isSince(record, group[0])),
  )
  const open = recorded.filter(isOpen)
  const kept = open.map((record) =>
    fromRecord(record, unsettled.filter((group) => isOf(record, group[0])).flat()),
  )
  const rest = unsettled.filter((group) => !open.some((record) => isOf(record, group[0])))
  return [...kept, ...rest.map(fromFigures)].toSorted(
    (a, b) =>
      Number(b.isRedFlag) - Number(a.isRedFlag) || (a.since < b.since ? -1 : a.since > b.since ? 1 : 0),
  )
}

type Group = readonly [RaisedConcern, ...RaisedConcern[]]

/** Both eyes of one kind on one day are one concern. */
function grouped(raised: readonly RaisedConcern[]): readonly Group[] {
  const groups = new Map<string, [RaisedConcern, ...RaisedConcern[]]>()
  for (const concern of raised) {
    const key = `${concern.recordKind} ${concern.on}`
    const group = groups.get(key)
    if (group) group.push(concern)
    else groups.set(key, [concern])
  }
  return [...groups.values()]
}

/** A record filed under "symptom" stands for every symptom. */
function isOf(record: SafetyConcern, concern: RaisedConcern): boolean {
  if (concern.kind === RED_FLAG) return record.kind === RED_FLAG && record.opened === concern.on
  return record.kind === concern.recordKind || record.kind === concern.kind
}

const isSince = ({ closed }: SafetyConcern, { on }: RaisedConcern): boolean =>
  closed !== undefined && closed >= on

function fromRecord(record: SafetyConcern, raised: readonly RaisedConcern[]): OpenConcern {
  return {
    kind: record.kind,
    isRedFlag: record.kind === RED_FLAG,
    since: record.opened,
    what: raised.length > 0 ? wordsOf(raised) : record.what,
    raised,
    recorded: record,
    owner: record.owner ?? null,
  }
}

function fromFigures(raised: Group): OpenConcern {
  return {
    kind: raised[0].recordKind,
    isRedFlag: raised[0].kind === RED_FLAG,
    since: raised[0].on,
    what: wordsOf(raised),
    raised,
    recorded: null,
    owner: null,
  }
}

const wordsOf = (raised: readonly RaisedConcern[]): string => raised.map(({ why }) => why).join(" ")
