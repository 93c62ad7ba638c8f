import { setImmediate as nextTurn } from "node:timers/promises"
import { OWED_GROUPS, type Owed, type Role } from "../engine/today/owed.js"
import type { ListedChild } from "../record/index.js"
import type { ChildReadings, ReadingDay } from "./child-readings.js"
import type { Context } from "./context.js"
import { FIRST_ROWS, GROUP_PAGE, type OwedRow, type TodayAnswer } from "./contract/today.js"

/** Children read in one go: about 20 ms of work, after which whoever else asks has a turn. */
const IN_ONE_GO = 25

interface TodayQuestion {
  readonly role?: Role | undefined
  readonly search: string
  readonly group?: Owed["group"] | undefined
  readonly page: number
}

interface Sorted {
  readonly key: string
  readonly rules: ReadingDay["rules"]
  readonly rows: readonly { readonly child: ListedChild; readonly owed: Owed }[]
  readonly read: number
}

/**
 * Who is owed what today. The children's readings are kept, so that after the first time only those whose entries
 * changed are read again. At a start and at midnight they are read in the background, a few at a time, and the
 * list says how far it has come.
 */
export function todayList({ record, clock, rules }: Context, readings: ChildReadings) {
  let reading: Promise<void> | null = null
  let sorted: Sorted | null = null
  let listed: { readonly head: string; readonly children: readonly ListedChild[] } | null = null

  const everyChild = async (): Promise<readonly ListedChild[]> => {
    const head = await record.head()
    if (listed?.head !== head) listed = { head, children: await record.everyChild() }
    return listed.children
  }

  const readAll = async (children: readonly ListedChild[], day: ReadingDay): Promise<void> => {
    for (let at = 0; at < children.length; at += IN_ONE_GO) {
      await readings.read(children.slice(at, at + IN_ONE_GO), day)
      await nextTurn()
    }
  }

  const startReading = (children: readonly ListedChild[], day: ReadingDay): Promise<void> => {
    reading ??= readAll(children, day).finally(() => {
      reading = null
    })
    return reading
  }

  const rowsOf = (children: readonly ListedChild[], day: ReadingDay): Sorted => {
    const known = children.flatMap((child) => {
      const found = readings.known(child, day)
      return found ? [{ child, owed: found.owed }] : []
    })
    const key = `${listed?.head} ${day.today} ${known.length}`
    if (sorted?.key === key && sorted.rules === day.rules) return sorted
    const rows = known.flatMap(({ child, owed }) => owed.map((one) => ({ child, owed: one })))
    sorted = { key, rules: day.rules, read: known.length, rows: rows.sort(byUrgency) }
    return sorted
  }
  return {
    /** Reads every child in the background, so that the first question of the day need not wait. */
    async warm(): Promise<void> {
      await startReading(await everyChild(), { today: clock.today(), rules: await rules.now() })
    },

    async ask({ role, search, group, page }: TodayQuestion): Promise<TodayAnswer> {
      const day = { today: clock.today(), rules: await rules.now() }
      const children = await everyChild()
      const missing = children.filter((child) => readings.known(child, day) === undefined)
      // A few changed children are read at once; a whole practice is not waited for.
      if (missing.length > 0 && missing.length <= 2 * IN_ONE_GO) await readings.read(missing, day)
      else if (missing.length > 0) void startReading(missing, day)
      const { rows, read } = rowsOf(children, day)
      const found = search.trim() === "" ? null : await record.childrenMatching(search)
      const shown = rows.filter(
        ({ child, owed }) => (role === undefined || owed.role === role) && (!found || found.has(child.id)),
      )
      return {
        today: day.today,
        read,
        total: children.length,
        things: shown.length,
        children: new Set(shown.map(({ child }) => child.id)).size,
        groups: OWED_GROUPS.map((name) => {
          const all = shown.filter(({ owed }) => owed.group === name)
          const wanted =
            group === undefined
              ? all.slice(0, FIRST_ROWS)
              : group === name
                ? all.slice((page - 1) * GROUP_PAGE, page * GROUP_PAGE)
                : []
          return { group: name, count: all.length, rows: wanted.map(rowOf) }
        }),
      }
    },
  }
}

function rowOf({ child, owed }: Sorted["rows"][number]): OwedRow {
  const { id, name, number, born } = child
  return { child: { id, name, number, born }, ...owed }
}

/** What is overdue first, then by the day it is due or waits since; the name settles what is left. */
function byUrgency(a: Sorted["rows"][number], b: Sorted["rows"][number]): number {
  const late = Number(b.owed.state === "overdue") - Number(a.owed.state === "overdue")
  if (late !== 0) return late
  const [dayA, dayB] = [a.owed.due ?? a.owed.since, b.owed.due ?? b.owed.since]
  return dayA < dayB ? -1 : dayA > dayB ? 1 : a.child.name < b.child.name ? -1 : 1
}
