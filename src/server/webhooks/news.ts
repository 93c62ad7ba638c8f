import type { WebhookEvent } from "../../engine/access/webhook-events.js"
import { addDays } from "../../engine/calendar.js"
import type { CalendarDate } from "../../engine/course.js"
import type { ChildReading } from "../child-readings.js"

/** One row of Today without its words. */
interface ToldOwed {
  readonly what: string
  readonly since: CalendarDate
  readonly isOverdue: boolean
}

/** What a child is known by to those who are told of it: states, no figures. */
export interface ToldChild {
  readonly growth: string
  readonly finding: string
  readonly owed: readonly ToldOwed[]
}

/** Of whom nothing was read yet nothing is known and nothing is owed. */
const NOTHING_YET: ToldChild = { growth: "unclear", finding: "no-treatment", owed: [] }

/** What opens up to this many days apart is still the same thing: a visit moves it. Ours; common practice, no source. */
const SAME_THING_DAYS = 14

export function toldChild({ summary, owed }: Pick<ChildReading, "summary" | "owed">): ToldChild {
  return {
    growth: summary.growth.state,
    finding: summary.finding.state,
    owed: owed.map(({ group, action, since, state }) => ({
      what: `${group} ${action}`,
      since,
      isOverdue: state === "overdue",
    })),
  }
}

/**
 * What is new about a child since it was last told of: each kind of news once, however many things it is about.
 *
 * @example
 * newsOf(null, { growth: "faster", finding: "no-treatment", owed: [] }) // => ["finding-new"]
 */
export function newsOf(before: ToldChild | null, now: ToldChild): readonly WebhookEvent[] {
  const known = before ?? NOTHING_YET
  const news: WebhookEvent[] = []
  if (known.growth !== now.growth || known.finding !== now.finding) news.push("finding-new")
  if (unmatched(now.owed, known.owed)) news.push("duty-open")
  const late = (owed: readonly ToldOwed[]) => owed.filter(({ isOverdue }) => isOverdue)
  if (unmatched(late(now.owed), late(known.owed))) news.push("duty-overdue")
  return news
}

/** Whether one of these has no counterpart of its own among those before. */
function unmatched(owed: readonly ToldOwed[], before: readonly ToldOwed[]): boolean {
  const left = [...before]
  return owed.some(({ what, since }) => {
    const at = left.findIndex(
      (earlier) =>
        earlier.what === what &&
        addDays(earlier.since, SAME_THING_DAYS) >= since &&
        addDays(since, SAME_THING_DAYS) >= earlier.since,
    )
    if (at < 0) return true
    left.splice(at, 1)
    return false
  })
}
